import { gradeEdges } from './area-grades'
import { areaScales, type AreaScale } from './area-scales'
import { dateAfter, yearsBetween } from './calendar'
import { growthBetween, isCertain, type Growth } from './growth'
import type { Ranged } from './ranged'
import { sinceRepair, type TrailPoint } from './trail-point'

/** Why no date is told. */
export type NoForecast = 'one survey' | 'repaired' | 'not measured' | 'no area scale' | 'last grade' | 'growth not certain' | 'not within fifty years'

/**
 * When the share of the face reaches the end of its present grade, as a range: from growth by the same area each year and by the same
 * part of itself each year, whichever is sooner and later, each with the uncertainty of both measurements. `latestDate` is absent where it lies further off than fifty years.
 */
export type Forecast =
  | { readonly kind: 'date'; readonly scale: AreaScale; readonly edgeShare: number; readonly earliestDate: string; readonly latestDate?: string; readonly mayBeReached: boolean }
  | { readonly kind: 'none'; readonly why: NoForecast }

/** A forecast further than this says nothing. */
const furthestYears = 50

const none = (why: NoForecast): Forecast => ({ kind: 'none', why })

const scaleOf = ({ grading }: TrailPoint): AreaScale | undefined => grading.coating.grades.flatMap(({ scale }) => areaScales.filter((each) => each === scale))[0]

/** Noise of division: a share at an edge is still within it. */
const noise = 1e-9
const nextEdge = (scale: AreaScale, share: number): number | undefined => gradeEdges[scale].map((percent) => percent / 100).find((edge) => edge > 0 && share <= edge + noise)

interface Course {
  readonly share: number
  readonly growth: number
  readonly before: number
  readonly spanYears: number
  readonly edge: number
}

const evenly = ({ share, growth, spanYears, edge }: Course): number => ((edge - share) * spanYears) / growth
/** Where there was nothing before, no part of itself can be told. */
const byItself = (course: Course): number => {
  const { share, growth, before, spanYears, edge } = course
  return before > 0 ? (Math.log(edge / share) * spanYears) / Math.log1p(growth / before) : evenly(course)
}

/** Years to the edge from the last look, soonest and latest. */
export const yearsToEdge = (before: Ranged, after: Ranged, { by, uncertainty }: Growth, spanYears: number, edge: number): { readonly soonest: number; readonly latest: number } => {
  const course = (share: number, growth: number): Course => ({ share, growth, before: before.value, spanYears, edge })
  const soon = course(after.high, by + uncertainty)
  const late = course(after.low, by - uncertainty)
  return { soonest: Math.min(evenly(soon), byItself(soon)), latest: Math.max(evenly(late), byItself(late)) }
}

/** The forecast of a trail from its first and last measured looks since it was last repaired. */
export const forecastOf = (points: readonly TrailPoint[]): Forecast => {
  const last = points.at(-1)
  if (last === undefined || last.spot.state === 'repaired') return none('repaired')
  const scale = scaleOf(last)
  if (last.share !== undefined && scale === undefined) return none('no area scale')
  const looks = sinceRepair(points)
  if (looks.length < 2) return none('one survey')
  const [first] = looks.filter(({ share }) => share !== undefined)
  if (last.share === undefined || first?.share === undefined || first === last || scale === undefined) return none('not measured')
  const edge = nextEdge(scale, last.share.value)
  if (edge === undefined) return none('last grade')
  const growth = growthBetween(first.share, last.share)
  const spanYears = yearsBetween(first.date, last.date)
  if (!isCertain(growth) || spanYears <= 0) return none('growth not certain')
  const { soonest, latest } = yearsToEdge(first.share, last.share, growth, spanYears, edge)
  if (soonest > furthestYears) return none('not within fifty years')
  return {
    kind: 'date', scale, edgeShare: edge, earliestDate: dateAfter(last.date, Math.max(0, soonest)), mayBeReached: soonest <= 0,
    ...(latest <= furthestYears && { latestDate: dateAfter(last.date, Math.max(0, latest)) }),
  }
}
