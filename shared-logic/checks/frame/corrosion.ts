import { isOver, isUnder } from '../../rules/beyond'
import { commonPractice, published } from '../../rules/cite'
import { degreeOfRusting, protectionFormula, protectionRating, rustGrade } from '../../rules/corrosion-grades'
import { acrossOf, corrosionLimits as limits } from '../../rules/corrosion-limits'
import { gravestSpot, type GradedSpot } from '../../rules/spot-grading'
import type { FieldValues } from '../../survey/answer'
import type { Spot } from '../../survey/spot'
import { measured } from '../../units/quantity'
import type { PhraseValues } from '../../words/phrase'
import { advisory, choiceCheck, failed, numberOf, passed, textOf } from '../builders'
import type { Check, Found, JudgeContext } from '../check'

const newZealand = published('New Zealand vehicle inspection requirements', 'general trailers, 3-1: eaten away above 50 mm, or weakened structure')
const quebec = published('Québec C-24.2 r. 32', 's. 98: frame members not perforated by rust')
const ships = published('IACS UR Z10.5', '8.2, as analogue: pits leave more than 70 % of the wall')

const spotsOf = (values: FieldValues): readonly Spot[] | undefined => {
  const value = values.spots
  return Array.isArray(value) ? value : undefined
}

/** All the numbers a sentence on spots may need. */
const spotValues = ({ spot, share = 0, depth = 0 }: GradedSpot, count: number): PhraseValues => ({
  count,
  place: spot.place,
  share: measured('ratio', share),
  ri: degreeOfRusting(share * 100),
  grade: rustGrade(share * 100),
  rating: protectionRating(share * 100),
  formula: (protectionFormula(share * 100) ?? 10).toFixed(1),
  area: measured('area', spot.areaM2 ?? 0),
  across: measured('smallLength', acrossOf(spot.areaM2 ?? 0)),
  depth: measured('ratio', depth),
  limit: measured('smallLength', limits.eatenAcrossM),
})

const judgeSpots = (values: FieldValues): Found | undefined => {
  const spots = spotsOf(values)
  if (spots === undefined) return undefined
  const gravest = gravestSpot(spots)
  if (!gravest) return { outcome: 'none' }
  const { grade, spot, share, depth } = gravest
  const sentence = spotValues(gravest, spots.length)
  if (grade === 'red rust on zinc') {
    const repairable = share !== undefined && !isOver(share, limits.bareShare) && !(spot.areaM2 !== undefined && isOver(spot.areaM2, limits.bareSpotM2))
    return { outcome: share === undefined ? 'large bare spot' : repairable ? 'red rust on zinc' : 'red rust past spot repair', values: sentence }
  }
  if (grade === 'pitted') return { outcome: depth === undefined ? 'pits not measured' : 'pitted', values: sentence }
  if (grade === 'aluminium pits') return { outcome: depth === undefined ? 'pits not measured' : 'aluminium pits', values: sentence }
  return { outcome: grade, values: sentence }
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
    positions: 'frame member',
    drawing: 'corroded spot',
    photograph: true,
    fields: [{ kind: 'spots', id: 'spots' }],
    outcomes: {
      none: passed,
      slight: passed,
      'not measured': advisory('within a month'),
      'bare steel': advisory('within a month'),
      'painted rust': advisory('within a month'),
      'red rust on zinc': advisory('within a month'),
      'large bare spot': advisory('within a month'),
      'red rust past spot repair': advisory('before next trip'),
      'aluminium pits': advisory('before next trip'),
      scale: advisory('before next trip'),
      galvanic: advisory('before next trip'),
      'pits not measured': advisory('before it is towed'),
      pitted: advisory('before next trip'),
      'eaten away': failed('before it is towed'),
      'deep pit': failed('before it is towed'),
      hole: failed('before it is towed'),
    },
    judge: judgeSpots,
    sources: [
      published('ISO 4628-3', 'degrees of rusting, nominal areas as restated; smallest degree not below the measurement'),
      published('ASTM D610-08 (2012)', 'Table 1'),
      published('ISO 10289, through GB/T 6461-2002', 'protection rating by table'),
      published('ISO 1461:2009', '6.3, repair limits as yardstick'),
      newZealand,
      quebec,
      ships,
      commonPractice,
    ],
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
    sources: [ships, published("Filler-metal maker's technical guide", 'typical tensile properties: welded 6061-T6 keeps 45 to 67 %'), commonPractice],
  },
  choiceCheck({
    id: 'frame.near-mountings',
    station: 'frame',
    positions: 'once',
    drawing: 'corroded spot',
    photograph: true,
    outcomes: { clean: passed, 'light rust': passed, 'pitted or flaking': advisory('before it is towed'), weakened: failed('before it is towed'), holed: failed('before it is towed') },
    sources: [published('UK inspection manual 6.1.1(c), Appendix A', 'structure within 30 cm of a mounting'), quebec, newZealand],
  }),
]
