import { measured } from '../units/quantity'
import type { PhraseValues } from '../words/phrase'
import { degreeOfRusting, protectionFormula, protectionRating, rustGrade } from './area-grades'
import type { SpotGrading } from './grade-spot'
import { acrossOf, corrosionLimits as limits } from './limits'
import { gradeOver, scaled, type GradeSpan } from './ranged'

/** '3', or '3–4' where the interval straddles an edge. */
export const writtenSpan = <Grade extends string | number>({ mildest, worst }: GradeSpan<Grade>): string => (mildest === worst ? String(worst) : `${mildest}–${worst}`)

const shareValues = ({ share }: SpotGrading): PhraseValues => {
  if (share === undefined) return {}
  const percent = scaled(share, 100)
  return {
    share: measured('ratio', share.value), ri: writtenSpan(gradeOver(percent, degreeOfRusting)), grade: writtenSpan(gradeOver(percent, rustGrade)),
    rating: writtenSpan(gradeOver(percent, protectionRating)), formula: (protectionFormula(percent.value) ?? 10).toFixed(1),
  }
}

const depthValues = ({ spot: { wallM, remainingM }, structure: { pitLoss, generalLoss } }: SpotGrading): PhraseValues => ({
  ...(pitLoss !== undefined && { depth: measured('ratio', pitLoss) }),
  ...(generalLoss !== undefined && wallM !== undefined && remainingM !== undefined && { loss: measured('ratio', generalLoss), left: measured('smallLength', remainingM), wall: measured('smallLength', wallM) }),
})

/** What a finding's sentence may need; a value that was not measured is absent, and no sentence of a finding that does without it asks for it. */
export const findingValues = (grading: SpotGrading): PhraseValues => {
  const { spot, area, structure: { couple }, coating: { zinc } } = grading
  return {
    place: spot.place, limit: measured('smallLength', limits.eatenAcrossM), bareSpot: measured('area', limits.bareSpotM2), bareShare: measured('ratio', limits.bareShare), zincRepair: measured('thickness', limits.zincRepairM),
    ...shareValues(grading), ...depthValues(grading),
    ...(area && { area: measured('area', area.value), across: measured('smallLength', acrossOf(area.high)) }),
    ...(couple && { difference: measured('voltage', couple.differenceV), coupleLimit: measured('voltage', couple.limitV) }),
    ...(zinc?.minimum && { lowest: measured('thickness', zinc.lowestM), localMinimum: measured('thickness', zinc.minimum.localM) }),
  }
}
