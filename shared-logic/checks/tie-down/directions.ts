import type { DirectionHold } from '../../lashing/direction-hold'
import { pullDirections } from '../../lashing/geometry'
import { commercialRule, fromMemory } from '../../rules/cite'
import { measured } from '../../units/quantity'
import { carriesBoat } from '../applies'
import { advisory, passed, textOf, unseen } from '../builders'
import type { Check, Found, JudgeContext, Outcome } from '../check'
import { workedOut } from '../worked-out'

const found = (outcome: string, { heldN, neededN, share }: DirectionHold): Found => ({
  outcome, values: { held: measured('force', heldN), needed: measured('force', neededN), share: measured('ratio', Math.round(share * 100) / 100) },
})

/** The worst of the five directions decides: short, then waiting for a number, then left to the bow stop. */
const judgePlan = (context: JudgeContext): Found => {
  const { plan } = workedOut(context)
  const directions = plan.methods[0]?.directions.toSorted((a, b) => a.share - b.share) ?? []
  const [weakest] = directions
  const short = directions.find(({ standing }) => standing === 'short')
  if (plan.straps.length === 0 || weakest === undefined) return { outcome: 'waits' }
  if (short) return found(`short ${short.direction}`, short)
  if (directions.some(({ standing }) => standing === 'waits')) return { outcome: 'waits' }
  const stop = directions.find(({ standing }) => standing === 'rests on the bow stop')
  if (stop) return { outcome: 'rests on the bow stop', values: { force: measured('force', stop.stopMustBearN ?? 0) } }
  return found('holds', weakest)
}

const shortOutcomes: Readonly<Record<string, Outcome>> = Object.fromEntries(pullDirections.map((direction) => [`short ${direction}`, advisory('before it is towed')]))

/** Whether the straps as recorded hold the boat each way. A benchmark, so a shortfall is an advisory. */
export const tieDownDirectionChecks: readonly Check[] = [
  {
    id: 'tie-down.directions',
    station: 'tie-down',
    positions: 'once',
    applies: carriesBoat,
    drawing: 'transom straps',
    fields: [{ kind: 'choice', id: 'straps', options: ['as recorded', 'differ from the record'] }],
    outcomes: { holds: passed, 'rests on the bow stop': advisory('before next trip'), ...shortOutcomes, waits: unseen, differ: unseen },
    judge: (values, context) => {
      const straps = textOf(values, 'straps')
      if (straps === undefined) return undefined
      return straps === 'as recorded' ? judgePlan(context) : { outcome: 'differ' }
    },
    sources: {
      us: [commercialRule('393.102', 'forces a load must be held against')],
      eu: [fromMemory('EN 12195-1, direct and over-top lashing, read in a restatement')],
    },
  },
]
