import { z } from 'zod'
import { Refusal, refuse } from '../contract/refusal'
import { exposures } from '../rig/trailer'
import { spotComponents, spotMaterials, spotSchema, type Spot } from '../survey/spot'
import { unitSystemSchema } from '../units/quantity'
import { yearOf } from './calendar'
import { gradeSpots, type SpotGrading } from './grade-spot'
import type { SpotSetting } from './spot-facts'
import { faultsOfSpot, faultsOfSpots } from './spot-faults'
import type { SpotSurvey } from './trail-point'
import { trailsOf, type Trail } from './trails'

/** Bounds a measure may not go beyond are the spot's own; what makes no sense below or beside them is refused in words, not by a bound. */
const fileSpotSchema = spotSchema.extend({
  id: spotSchema.shape.id.optional().describe('By its number in the list when left away; the same in earlier surveys follows the same spot.'),
  place: spotSchema.shape.place.optional(),
  material: z.enum(spotMaterials).optional(),
  areaM2: z.number().max(20).optional(),
  areaUncertaintyM2: z.number().max(20).optional(),
  faceAreaM2: z.number().max(50).optional(),
  share: z.number().optional().describe('Corroded share of the face, 0 to 1.'),
  pitDepthM: z.number().max(0.05).optional(),
  wallM: z.number().max(0.05).optional(),
  remainingM: z.number().max(0.05).optional(),
  coatingReadingsM: z.array(z.number().max(0.005)).max(30).optional(),
})
type FileSpot = z.infer<typeof fileSpotSchema>

const fileSpotsSchema = z.array(fileSpotSchema).max(60)
const outsideM = z.number().positive().max(1)

/** Corroded spots of one member as one JSON file, once its quantities are read. */
export const gradeFileSchema = z.strictObject({
  surveyDate: z.iso.date().describe('Day the spots were looked at.'),
  material: z.enum(spotMaterials).optional().describe('Of every spot that names none.'),
  component: z.enum(spotComponents).optional().describe('Of every spot that names none; decides whether it bears load.'),
  exposure: z.enum(exposures).optional().describe('Where the trailer is kept and used; the life of the zinc waits for it.'),
  builtYear: z.int().min(1950).max(2100).optional(),
  section: z.object({ widthM: outsideM, heightM: outsideM }).optional().describe('Outside of the member where it is a box section.'),
  massKg: z.number().positive().max(2_000).optional().describe('Mass of the member, for the limit of ASTM A123 on bare spots.'),
  units: unitSystemSchema.default('metric').describe('Units of the answer.'),
  spot: fileSpotSchema.optional().describe('One spot; several go in spots.'),
  spots: fileSpotsSchema.optional(),
  earlier: z.array(z.object({ surveyDate: z.iso.date(), spots: fileSpotsSchema })).max(40).optional().describe('The same member at earlier surveys.'),
})
export type GradeFile = z.infer<typeof gradeFileSchema>

/** What the file came to. */
export interface FileGraded {
  readonly gradings: readonly SpotGrading[]
  readonly trails: readonly Trail[]
}

const refuseFirst = (faults: readonly ConstructorParameters<typeof Refusal>[0][]): void => {
  const [first] = faults
  if (first) throw new Refusal(first)
}

const spotOf = (given: FileSpot, index: number, at: string, { material, component }: GradeFile): Spot => {
  refuseFirst(faultsOfSpot(given, at))
  const known = given.material ?? material ?? refuse('corrosion.no-material', undefined, `${at}.material`)
  const id = given.id ?? `spot ${index + 1}`
  const part = given.component ?? component
  return { ...given, id, place: given.place ?? id, material: known, ...(part !== undefined && { component: part }) }
}

const spotsOf = (given: readonly FileSpot[], at: (index: number) => string, file: GradeFile): readonly Spot[] => {
  const spots = given.map((spot, index) => spotOf(spot, index, at(index), file))
  refuseFirst(faultsOfSpots(spots, at))
  const twice = spots.findIndex(({ id }, index) => spots.findIndex((other) => other.id === id) < index)
  return twice < 0 ? spots : refuse('corrosion.spot-twice', { id: spots[twice]?.id ?? '' }, `${at(twice)}.id`)
}

const earlierOf = (file: GradeFile): readonly SpotSurvey[] => (file.earlier ?? []).map(({ surveyDate, spots }, index) => {
  if (surveyDate >= file.surveyDate) return refuse('corrosion.not-earlier', undefined, `earlier.${index}.surveyDate`)
  return { date: surveyDate, places: [{ position: '', spots: spotsOf(spots, (row) => `earlier.${index}.spots.${row}`, file) }] }
})

/** Grades a file whole, or refuses what cannot be right in it with a code of its own: no grade then. */
export const gradeFile = (file: GradeFile): FileGraded => {
  const { builtYear, exposure, surveyDate, section, massKg } = file
  if (builtYear !== undefined && builtYear > yearOf(surveyDate)) refuse('corrosion.built-after-survey', { year: builtYear }, 'builtYear')
  if (file.spot !== undefined && file.spots !== undefined) refuse('corrosion.spot-and-spots', undefined, 'spot')
  const spots = file.spot === undefined ? spotsOf(file.spots ?? [], (index) => `spots.${index}`, file) : spotsOf([file.spot], () => 'spot', file)
  if (spots.length === 0) refuse('corrosion.no-spot', undefined, 'spots')
  const setting: SpotSetting = { ...(section !== undefined && { section }), ...(massKg !== undefined && { massKg }) }
  const surveys: readonly SpotSurvey[] = [...earlierOf(file), { date: surveyDate, places: [{ position: '', spots }] }]
  const trailer = { ...(exposure !== undefined && { exposure }), ...(builtYear !== undefined && { builtYear }) }
  return { gradings: gradeSpots(spots, setting), trails: trailsOf(surveys, { trailer }) }
}
