import { gradeSpots, type SpotGrading } from '../corrosion/grade-spot'
import { corrosionCheckId } from '../corrosion/check-id'
import { isPresent } from '../corrosion/corroded-share'
import { corrosionPlan, type SpotMark } from '../drawings/corrosion/corrosion-plan'
import { marksDrawing } from '../marking/marks-drawing'
import { sayLengthsHold, sayMarks } from '../marking/say-marks'
import { spotsIn } from '../survey/answer'
import type { CorrosionSurvey } from '../survey/records'
import type { Spot } from '../survey/spot'
import { measured, type Quantity } from '../units/quantity'
import { sayGrade, sayShortGrade } from '../words/corrosion/grade'
import { sayLife } from '../words/corrosion/life'
import type { CorrosionLine, CorrosionSection } from '../words/corrosion/section'
import { say } from '../words/say'
import type { ReportContext } from './context'
import { courseCurves, courseLines, courseOf, type Course } from './corrosion-course'
import type { CorrosionPart, MeasuredPicture, SpotPart } from './corrosion-document'
import type { SumsCell, SumsPrintedLine, SumsTable } from './sums-document'

/** A spot with its number in the report, where the check asked, and what it was graded. */
interface NumberedSpot {
  readonly number: number
  readonly position: string
  readonly grading: SpotGrading
}

/** The places that were looked at, in walking order. */
const placesOf = ({ assessed }: ReportContext): { position: string; spots: Spot[] }[] =>
  assessed.flatMap(({ check, position, answer }) => {
    const spots = check.id === corrosionCheckId && answer?.aside === undefined ? spotsIn(answer?.values['spots']) : undefined
    return spots === undefined ? [] : [{ position, spots: [...spots] }]
  })

/** Every spot recorded, place by place, numbered through. */
const numberedSpots = (places: ReturnType<typeof placesOf>): NumberedSpot[] =>
  places.flatMap(({ position, spots }) => gradeSpots(spots, { position }).map((grading) => ({ position, grading }))).map((each, index) => ({ ...each, number: index + 1 }))

const shown = (quantity: Quantity, si: number | undefined, { words, units }: ReportContext): string => (si === undefined ? words.report.corrosion.notMeasured : say('{value}', { value: measured(quantity, si) }, units))

const areaCell = ({ area, spot }: SpotGrading, context: ReportContext): string => {
  const plain = shown('area', area?.value, context)
  return spot.areaUncertaintyM2 === undefined || area === undefined ? plain : `${plain} ± ${shown('area', spot.areaUncertaintyM2, context)}`
}

const depthCell = ({ spot }: SpotGrading, context: ReportContext): string =>
  spot.pitDepthM === undefined && spot.remainingM !== undefined
    ? say(context.words.report.corrosion.left, { left: measured('smallLength', spot.remainingM) }, context.units)
    : shown('smallLength', spot.pitDepthM, context)

const rowOf = ({ number, position, grading }: NumberedSpot, context: ReportContext): SumsCell[] => {
  const { words } = context
  const { corrosion } = words
  const { kinds, materials } = words.screens.survey.spots
  const { spot, component, verdict, by, share, coating, structure, gravest } = grading
  const remedy = corrosion.remedies[(coating.finding === gravest ? coating : structure).remedy]
  return [
    { text: String(number), strong: true },
    { text: `${spot.place}\n${corrosion.components[component]}, ${context.place(position)}` },
    { text: `${kinds[spot.kind]}\n${materials[spot.material]}` },
    { text: areaCell(grading, context) },
    { text: shown('ratio', share?.value, context) },
    { text: depthCell(grading, context) },
    { text: sayShortGrade(words, grading), verdict },
    { text: by === undefined ? remedy : `${remedy}, ${words.byWhens[by].toLowerCase()}` },
  ]
}

const tableOf = (spots: readonly NumberedSpot[], context: ReportContext): SumsTable => {
  const heading = context.words.report.corrosion.columns
  return {
    columns: [
      { heading: heading.number, share: 0.05 }, { heading: heading.place, share: 0.18 }, { heading: heading.what, share: 0.16 }, { heading: heading.area, share: 0.14 },
      { heading: heading.share, share: 0.09 }, { heading: heading.depth, share: 0.1 }, { heading: heading.grade, share: 0.13 }, { heading: heading.remedy, share: 0.15 },
    ],
    rows: spots.map((spot) => rowOf(spot, context)),
  }
}

const pictureOf = ({ number, grading: { spot } }: NumberedSpot, context: ReportContext): MeasuredPicture | undefined => {
  const { measurement } = spot
  if (measurement === undefined) return undefined
  const said = context.words.report.corrosion
  const printed = context.photographs.find(({ photograph: { sha256 } }) => sha256 === measurement.sha256)
  const photograph = printed?.number
  const { quarterTurns, marks } = printed?.photograph ?? { quarterTurns: 0 }
  const values = { number, place: spot.place, photograph: photograph ?? '–', area: measured('area', measurement.result.areaM2), uncertainty: measured('area', measurement.result.uncertaintyM2) }
  const caption = say(photograph === undefined ? said.pictureOfNoRegister : said.picture, { ...values, by: said.outlinedBy[measurement.outline.by], scale: said.scaledBy[measurement.scale.kind] }, context.units)
  const harm = context.harmed?.get(measurement.sha256)
  return {
    spot: number, measurement, units: context.units, caption: [caption, harm && context.words.report.photographs.captions[harm], sayLengthsHold(marks, context)].filter((part) => part !== undefined).join(' '),
    alternative: [say(said.pictureAlternative, values, context.units), sayMarks(marks, context)].filter((part) => part !== '').join('; '),
    quarterTurns, ...(marks && { marks: marksDrawing(marks, quarterTurns, context) }),
  }
}

/** Its title goes before its first line: among the lines of a spot it begins anew. */
const titled = ({ title, lines }: CorrosionSection): CorrosionLine[] => lines.map((line, index) => (index === 0 ? { ...line, text: `${title}. ${line.text}` } : line))

const spotPart = (spot: NumberedSpot, { trailTo }: Course, context: ReportContext): SpotPart => {
  const { words, units } = context
  const section = sayGrade(words, spot.grading, units)
  const trail = trailTo(spot.grading.spot, spot.position)
  const course = courseLines(trail, context)
  const curves = courseCurves(trail, context)
  const lived = trail?.life.kind === 'worked out' ? sayLife(words, trail.life, units) : undefined
  const picture = pictureOf(spot, context)
  const lines: SumsPrintedLine[] = [...section.lines, ...course.lines.map((text): CorrosionLine => ({ text })), ...(lived === undefined ? [] : titled(lived))].map(({ text, verdict }) => ({ text, ...(verdict && { verdict, word: words.verdicts[verdict] }) }))
  return {
    number: spot.number, heading: say(words.report.corrosion.spotHeading, { number: spot.number, place: section.title }, units), lines,
    sources: [...new Set([...section.sources, ...(lived?.sources ?? [])])], cautions: [...new Set([...section.cautions, ...course.cautions, ...(lived?.cautions ?? [])])], ...(picture && { picture }), ...(curves.length > 0 && { curves }),
  }
}

const markOf = ({ number, position, grading: { spot, verdict, area } }: NumberedSpot): SpotMark => ({ number, position, verdict, ...(spot.at && { at: spot.at }), ...(area && { areaM2: area.value }) })

const methodOf = (spots: readonly NumberedSpot[], { words }: ReportContext): string[] => {
  const { method } = words.report.corrosion
  const measurements = spots.flatMap(({ grading: { spot } }) => spot.measurement ?? [])
  return [
    ...(measurements.length > 0 ? [method.measured, method.uncertainty] : []),
    ...(measurements.some(({ scale }) => scale.kind === 'length') ? [method.tilt] : []),
    ...(measurements.some(({ outline }) => outline.by === 'finder') ? [method.finder] : []),
    method.grading, method.limits,
  ]
}

const introductionOf = (count: number, { notLookedAt }: Course, { words, units }: ReportContext): string => {
  const said = words.report.corrosion
  const before = notLookedAt.map(({ last: { spot, date } }) => say(said.lookedAtLast, { place: spot.place, date: { date } }, units)).join('; ')
  return [say(said.introduction, { count }, units), ...(before === '' ? [] : [say(said.notLookedAt, { places: before }, units)])].join(' ')
}

/** The corroded spots of the survey, followed from the rig's earlier issued ones; undefined where none was recorded. */
export const corrosionPart = (context: ReportContext, earlier: readonly CorrosionSurvey[]): CorrosionPart | undefined => {
  const places = placesOf(context)
  const spots = numberedSpots(places)
  if (spots.length === 0) return undefined
  const said = context.words.report.corrosion
  const { survey } = context
  const course = courseOf(context, places, earlier)
  const isAllPlaced = spots.every(({ grading }) => grading.spot.at !== undefined)
  const present = spots.filter(({ grading }) => isPresent(grading.spot))
  return {
    title: said.title, introduction: introductionOf(present.length, course, context),
    figure: { drawing: corrosionPlan(survey.rig, survey.ruleBook, spots.map(markOf), 'plan', { words: context.words, units: context.units }), caption: isAllPlaced ? said.figure : `${said.figure} ${said.figureUnplaced}`, alternative: say(said.figureAlternative, { count: spots.length }, context.units) },
    table: tableOf(spots, context), spots: spots.map((spot) => spotPart(spot, course, context)), method: methodOf(spots, context), labels: { ...said.labels },
  }
}
