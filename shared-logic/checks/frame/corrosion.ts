import { findingValues } from '../../corrosion/finding-values'
import { gravestFindings, rowOf, type CorrosionFinding } from '../../corrosion/findings'
import { galvanicSources } from '../../corrosion/galvanic'
import { gradeSpots, gravestFirst } from '../../corrosion/grade-spot'
import { corrosionLimits as limits } from '../../corrosion/limits'
import { corrosionSources as from } from '../../corrosion/sources'
import { isOver, isUnder } from '../../rules/beyond'
<<<<<<< HEAD
=======
import { commonPractice, law, newZealand, published, quebec, tradeLiterature, ukInspection } from '../../rules/cite'
import { degreeOfRusting, protectionFormula, protectionRating, rustGrade } from '../../rules/corrosion-grades'
import { acrossOf, corrosionLimits as limits } from '../../rules/corrosion-limits'
import { gravestSpot, type GradedSpot } from '../../rules/spot-grading'
>>>>>>> d077a86 (Say whom every rule binds: mark what is only a benchmark, and what is trade literature)
import type { FieldValues } from '../../survey/answer'
import type { Spot } from '../../survey/spot'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, textOf } from '../builders'
<<<<<<< HEAD
import type { Check, Found, JudgeContext, Outcome } from '../check'
=======
import type { Check, Found, JudgeContext } from '../check'

const zealand = newZealand('general trailers, 3-1: eaten away above 50 mm, or weakened structure')
const perforated = quebec('s. 98: frame members not perforated by rust')
const ships = law('ships', 'IACS UR Z10.5', '8.2: pits leave more than 70 % of the wall')
>>>>>>> d077a86 (Say whom every rule binds: mark what is only a benchmark, and what is trade literature)

const spotsOf = (values: FieldValues): readonly Spot[] | undefined => {
  const value = values.spots
  return Array.isArray(value) ? value : undefined
}

const outcomeOf = (finding: CorrosionFinding): Outcome => {
  const { verdict, by } = rowOf(finding)
  return by === undefined ? { verdict } : { verdict, by }
}

/** The gravest spot decides; one sentence for all that are slight. */
const judgeSpots = (values: FieldValues, { position }: JudgeContext): Found | undefined => {
  const spots = spotsOf(values)
  if (spots === undefined) return undefined
  const [gravest] = gravestFirst(gradeSpots(spots, { position }))
  return gravest ? { outcome: gravest.gravest, values: { count: spots.length, ...findingValues(gravest) } } : { outcome: 'none' }
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
    id: 'frame.corrosion',
    station: 'frame',
    positions: 'corroding part',
    drawing: 'corroded spot',
    photograph: true,
    fields: [{ kind: 'spots', id: 'spots' }],
    outcomes: { none: passed, ...Object.fromEntries(gravestFindings.map((finding) => [finding, outcomeOf(finding)])) },
    judge: judgeSpots,
<<<<<<< HEAD
    sources: [from.degrees, from.grades, from.protection, from.zincThickness, from.zincRepair, from.tankCoating, from.eatenAway, from.perforated, from.mountings, from.rigidity, from.pits, from.weldZone, ...galvanicSources, from.practice],
=======
    sources: [
      published('ISO 4628-3', 'degrees of rusting, nominal areas as restated; smallest degree not below the measurement'),
      published('ASTM D610-08 (2012)', 'Table 1'),
      published('ISO 10289, through GB/T 6461-2002', 'protection rating by table'),
      published('ISO 1461:2009', '6.3, repair limits as yardstick'),
      zealand,
      perforated,
      ships,
      commonPractice,
    ],
>>>>>>> d077a86 (Say whom every rule binds: mark what is only a benchmark, and what is trade literature)
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
<<<<<<< HEAD
    sources: [from.pits, from.weldZone, from.practice],
=======
    sources: [ships, tradeLiterature('filler-metal maker’s technical guide', 'typical tensile properties: welded 6061-T6 keeps 45 to 67 %'), commonPractice],
>>>>>>> d077a86 (Say whom every rule binds: mark what is only a benchmark, and what is trade literature)
  },
  choiceCheck({
    id: 'frame.near-mountings',
    station: 'frame',
    positions: 'once',
    drawing: 'corroded spot',
    photograph: true,
    outcomes: { clean: passed, 'light rust': passed, 'pitted or flaking': advisory('before it is towed'), weakened: failed('before it is towed'), holed: failed('before it is towed') },
<<<<<<< HEAD
    sources: [from.mountings, from.perforated, from.eatenAway, from.practice],
=======
    sources: [ukInspection('6.1.1(c) and Appendix A: structure within 30 cm of a mounting'), perforated, zealand, commonPractice],
>>>>>>> d077a86 (Say whom every rule binds: mark what is only a benchmark, and what is trade literature)
  }),
]
