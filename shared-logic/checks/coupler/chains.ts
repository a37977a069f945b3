import { judgeChains, chainNeedFor } from '../../rules/chains'
import { isOver, isUnder } from '../../rules/beyond'
import { commercialRule, commonPractice, law, published, tradeLiterature } from '../../rules/cite'
import { lashingScrapping, towBallGuides, ukBrakeGuide } from '../../rules/running-gear-sources'
import { chainLimitN } from '../../rules/tie-down-capacity'
import type { FieldValues } from '../../survey/answer'
import { measured } from '../../units/quantity'
import { underEu, underUs } from '../applies'
import { advisory, choiceCheck, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found } from '../check'

const force = (n: number) => measured('force', n)
const chainCount = 2

/** Wear of a link beyond which a chain is scrapped. Source: lashing equipment scrapping guidelines of a vehicle shipping line. */
const linkWearLimit = 0.1

const judgeMarked = (breakingN: number, maximumKg: number): Found => {
  const need = chainNeedFor(maximumKg)
  const standing = judgeChains(breakingN, chainCount, need)
  const values = { marked: force(breakingN), each: force(need.eachN), combined: force(breakingN * chainCount), together: force(need.togetherN) }
  if (standing.eachEnough) return { outcome: 'each holds', values }
  return { outcome: standing.togetherEnough ? 'together only' : 'too weak', values }
}

/** A working load limit is a cautious stand-in: whatever the design factor, the breaking strength lies above it. */
const judgeLimit = (limitN: number | undefined, maximumKg: number): Found => {
  const need = chainNeedFor(maximumKg)
  if (limitN === undefined) return { outcome: 'strength unknown', values: { each: force(need.eachN) } }
  const values = { limit: force(limitN), each: force(need.eachN) }
  return { outcome: isUnder(limitN, need.eachN) ? 'limit below need' : 'limit holds', values }
}

const judgeStrength = (values: FieldValues, maximumKg: number | undefined, recordedN: number | undefined): Found | undefined => {
  const marking = textOf(values, 'marking')
  const strengthN = numberOf(values, 'strength')
  const sizeM = numberOf(values, 'size')
  if (marking === undefined) return undefined
  if (maximumKg === undefined) return { outcome: 'rating unknown' }
  if (marking === 'as recorded') return recordedN === undefined ? { outcome: 'not recorded' } : judgeMarked(recordedN, maximumKg)
  if (marking === 'nothing') return sizeM === undefined ? undefined : judgeLimit(chainLimitN(sizeM), maximumKg)
  if (strengthN === undefined) return undefined
  return marking === 'breaking strength' ? judgeMarked(strengthN, maximumKg) : judgeLimit(strengthN, maximumKg)
}

const judgeCondition = (values: FieldValues): Found | undefined => {
  const condition = textOf(values, 'condition')
  const newM = numberOf(values, 'new')
  const nowM = numberOf(values, 'now')
  if (condition !== 'worn') return condition === undefined ? undefined : { outcome: condition }
  if (newM === undefined || nowM === undefined) return undefined
  const wear = Math.max(0, 1 - nowM / newM)
  return { outcome: isOver(wear, linkWearLimit) ? 'worn out' : 'worn', values: { wear: measured('ratio', wear), limit: measured('ratio', linkWearLimit) } }
}

const chainSources = [commercialRule('393.70(d)', 'agency guidance: two chains count together'), law('one place', 'New Hampshire RSA 266:63', 'each chain'), published('SAE J684 (2005) classes, as restated', 'least breaking force of each chain')]

export const couplerChainChecks: readonly Check[] = [
  {
    id: 'coupler.chain-strength',
    station: 'coupler',
    positions: 'chain',
    applies: underUs,
    drawing: 'chains',
    photograph: true,
    fields: [
      { kind: 'choice', id: 'marking', options: ['breaking strength', 'working load limit', 'as recorded', 'nothing'] },
      { kind: 'reading', id: 'strength', quantity: 'force', min: 500, max: 500_000, when: { field: 'marking', oneOf: ['breaking strength', 'working load limit'] } },
      { kind: 'reading', id: 'size', quantity: 'smallLength', min: 0.003, max: 0.025, when: { field: 'marking', oneOf: ['nothing'] } },
    ],
    outcomes: {
      'each holds': passed,
      'limit holds': passed,
      'together only': advisory('before next trip'),
      'too weak': failed('before it is towed'),
      'limit below need': advisory('before next trip'),
      'strength unknown': advisory('before next trip'),
      'rating unknown': unseen,
      'not recorded': unseen,
    },
    judge: (values, { rig }) => judgeStrength(values, rig.trailer.maximumMassKg, rig.couplingRatings?.chainBreakingForceN),
    sources: chainSources,
  },
  {
    id: 'coupler.chain-condition',
    station: 'coupler',
    positions: 'chain',
    applies: underUs,
    drawing: 'chains',
    photograph: true,
    caution: true,
    fields: [
      { kind: 'choice', id: 'condition', options: ['sound', 'surface rust', 'worn', 'rusted away', 'stretched or bent', 'cracked', 'missing'] },
      { kind: 'reading', id: 'new', quantity: 'smallLength', min: 0.003, max: 0.025, when: { field: 'condition', oneOf: ['worn'] } },
      { kind: 'reading', id: 'now', quantity: 'smallLength', min: 0.001, max: 0.025, when: { field: 'condition', oneOf: ['worn'] } },
    ],
    outcomes: {
      sound: passed,
      'surface rust': advisory('at next service'),
      worn: advisory('before next trip'),
      'worn out': failed('before it is towed'),
      'rusted away': failed('before it is towed'),
      'stretched or bent': failed('before it is towed'),
      cracked: failed('before it is towed'),
      missing: failed('before it is towed'),
    },
    judge: judgeCondition,
    sources: [lashingScrapping('chains: wear above 10 %, stretched, deformed, massive corrosion'), commonPractice],
  },
  choiceCheck({
    id: 'coupler.chain-hooks',
    station: 'coupler',
    positions: 'chain',
    applies: underUs,
    drawing: 'chains',
    photograph: true,
    outcomes: {
      latched: passed,
      'latch weak': advisory('before next trip'),
      'latch missing': advisory('before it is towed'),
      'weak link': failed('before it is towed'),
      opened: failed('before it is towed'),
      cracked: failed('before it is towed'),
    },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'coupler.chain-routing',
    station: 'coupler',
    positions: 'once',
    applies: underUs,
    drawing: 'chains',
    photograph: true,
    outcomes: {
      'crossed and clear': passed,
      'not crossed': advisory('before it is towed'),
      'twisted short': advisory('before next trip'),
      'drags on the ground': failed('before it is towed'),
      'too short to turn': failed('before it is towed'),
      'fixed to the ball': failed('before it is towed'),
    },
    sources: [tradeLiterature('safety chain article', 'crossed under the coupling, clear of the ground, attached apart from the ball')],
  }),
  choiceCheck({
    id: 'coupler.chain-anchors',
    station: 'coupler',
    positions: 'once',
    applies: underUs,
    photograph: true,
    outcomes: { sound: passed, rusted: advisory('before next trip'), 'bolt loose': failed('before it is towed'), cracked: failed('before it is towed') },
    sources: [commercialRule('393.70(d)', 'attached to the frame, apart from the ball'), commonPractice],
  }),
  choiceCheck({
    id: 'coupler.secondary',
    station: 'coupler',
    positions: 'once',
    applies: underEu,
    drawing: 'chains',
    photograph: true,
    outcomes: {
      'routed right': passed,
      'looped over the ball': advisory('before it is towed'),
      'too long or short': advisory('before it is towed'),
      'clip weak': advisory('before it is towed'),
      frayed: failed('before it is towed'),
      missing: failed('before it is towed'),
    },
    sources: [
      ukBrakeGuide,
      towBallGuides('the cable is not looped over the ball'),
    ],
  }),
]
