import { corrosionCheckId } from '../../corrosion/check-id'
import { findingValues } from '../../corrosion/finding-values'
import { gravestFindings, rowOf, type CorrosionFinding } from '../../corrosion/findings'
import { galvanicSources } from '../../corrosion/galvanic'
import { gradeSpots, gravestFirst } from '../../corrosion/grade-spot'
import { corrosionLimits as limits } from '../../corrosion/limits'
import { corrosionSources as from } from '../../corrosion/sources'
import { isOver, isUnder } from '../../rules/beyond'
import { spotsIn, type FieldValues } from '../../survey/answer'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, textOf } from '../builders'
import type { Check, Found, JudgeContext, Outcome } from '../check'

const outcomeOf = (finding: CorrosionFinding): Outcome => {
  const { verdict, by } = rowOf(finding)
  return by === undefined ? { verdict } : { verdict, by }
}

/** The gravest spot decides; one sentence for all that are slight. */
const judgeSpots = (values: FieldValues, { position }: JudgeContext): Found | undefined => {
  const spots = spotsIn(values.spots)
  if (spots === undefined) return undefined
  const [gravest] = gravestFirst(gradeSpots(spots, { position }))
  return gravest ? { outcome: gravest.gravest, values: findingValues(gravest) } : { outcome: 'none' }
}

const lossOutcome = (form: string, place: string | undefined, loss: number, aluminium: boolean): string => {
  if (form === 'pit') {
    if (isOver(loss, limits.pitFail)) return 'pit too deep'
    if (aluminium && place === 'beside a weld' && isOver(loss, limits.weldZonePitFail)) return 'pit by the weld'
  } else if (isOver(loss, limits.thinningFail)) return 'too thin'
  // On aluminium every measured pit is worth an advisory: pits there grow by steps.
  const worthNaming = !isUnder(loss, limits.lossAdvisory) || (aluminium && form === 'pit' && loss > 0)
  if (!worthNaming) return 'small loss'
  return form === 'pit' ? 'pitted' : 'thinned'
}

const judgeLoss = (values: FieldValues, { rig }: JudgeContext): Found | undefined => {
  const form = textOf(values, 'form')
  if (form === undefined) return undefined
  if (form === 'none' || form === 'scale too thick') return { outcome: form }
  const wallM = numberOf(values, 'wall')
  const leftM = numberOf(values, 'left')
  const place = textOf(values, 'place')
  if (wallM === undefined || leftM === undefined || place === undefined) return undefined
  const loss = Math.max(0, 1 - leftM / wallM)
  return {
    outcome: lossOutcome(form, place, loss, rig.trailer.frame === 'aluminium'),
    values: { loss: measured('ratio', loss), left: measured('smallLength', leftM), wall: measured('smallLength', wallM) },
  }
}

const lossGate = { field: 'form', oneOf: ['pit', 'general thinning'] }

export const frameCorrosionChecks: readonly Check[] = [
  {
    id: corrosionCheckId,
    station: 'frame',
    positions: 'corroding part',
    drawing: 'corroded spot',
    photograph: true,
    fields: [{ kind: 'spots', id: 'spots' }],
    outcomes: { none: passed, ...Object.fromEntries(gravestFindings.map((finding) => [finding, outcomeOf(finding)])) },
    judge: judgeSpots,
    sources: [from.degrees, from.grades, from.protection, from.zincThickness, from.zincRepair, from.tankCoating, from.eatenAway, from.perforated, from.mountings, from.rigidity, from.pits, from.weldZone, ...galvanicSources, from.practice],
  },
  {
    id: 'frame.section-loss',
    station: 'frame',
    positions: 'frame member',
    drawing: 'corroded spot',
    photograph: true,
    fields: [
      { kind: 'choice', id: 'form', options: ['none', 'pit', 'general thinning', 'scale too thick'] },
      { kind: 'reading', id: 'wall', quantity: 'smallLength', min: 0.001, max: 0.05, when: lossGate },
      { kind: 'reading', id: 'left', quantity: 'smallLength', min: 0, max: 0.05, when: lossGate },
      { kind: 'choice', id: 'place', options: ['clear of welds', 'beside a weld'], when: lossGate },
    ],
    outcomes: {
      none: passed,
      'small loss': passed,
      'scale too thick': advisory('before it is towed'),
      pitted: advisory('before next trip'),
      thinned: advisory('before next trip'),
      'pit by the weld': failed('before it is towed'),
      'pit too deep': failed('before it is towed'),
      'too thin': failed('before it is towed'),
    },
    judge: judgeLoss,
    sources: [from.pits, from.weldZone, from.practice],
  },
  choiceCheck({
    id: 'frame.near-mountings',
    station: 'frame',
    positions: 'once',
    drawing: 'corroded spot',
    photograph: true,
    outcomes: { clean: passed, 'light rust': passed, 'pitted or flaking': advisory('before it is towed'), weakened: failed('before it is towed'), holed: failed('before it is towed') },
    sources: [from.mountings, from.perforated, from.eatenAway, from.practice],
  }),
]
