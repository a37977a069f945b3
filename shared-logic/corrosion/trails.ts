import { isPresent } from './corroded-share'
import { forecastOf, type Forecast } from './forecast'
import { changeBetween, type Change } from './growth'
import { coatingLife, type CoatingLife, type DatedReadings, type LifeSetting } from './life'
import { trailOf, type Spot } from '../survey/spot'
import { sinceRepair, trailPoint, type SpotSurvey, type TrailPoint } from './trail-point'

/** How a spot stands at the newest survey. 'first record' where nobody had looked there before. */
export const trailStandings = ['new', 'first record', 'come back', 'grown', 'same', 'smaller', 'not comparable', 'healed', 'not looked at again'] as const
export type TrailStanding = (typeof trailStandings)[number]

/** One spot followed over the surveys. */
export interface Trail {
  readonly trail: string
  readonly position: string
  /** Oldest first, at least one. */
  readonly points: readonly TrailPoint[]
  readonly last: TrailPoint
  readonly standing: TrailStanding
  /** Against the look before; against the first where only that shows growth. */
  readonly change: Change | undefined
  readonly forecast: Forecast
  readonly life: CoatingLife
}

/** What the rig's register gives for the life of the coating. */
export type TrailSetting = Pick<LifeSetting, 'trailer'>

const changeOf = (points: readonly TrailPoint[]): Change | undefined => {
  const looks = sinceRepair(points)
  const last = looks.at(-1)
  const before = looks.at(-2)
  const first = looks[0]
  if (last === undefined || before === undefined || first === undefined) return undefined
  const change = changeBetween(before, last)
  const sinceFirst = changeBetween(first, last)
  return change.verdict !== 'grown' && sinceFirst.verdict === 'grown' ? sinceFirst : change
}

const standingOf = (points: readonly TrailPoint[], change: Change | undefined, newestDate: string, wasLookedAt: boolean): TrailStanding => {
  const last = points.at(-1)
  if (last === undefined || last.date < newestDate) return 'not looked at again'
  if (!isPresent(last.spot)) return 'healed'
  if (change !== undefined) return change.verdict
  if (points.length > 1) return 'come back'
  return wasLookedAt ? 'new' : 'first record'
}

const readingsOf = (points: readonly TrailPoint[]): readonly DatedReadings[] =>
  sinceRepair(points).flatMap(({ date, spot: { coatingReadingsM = [] } }) => (coatingReadingsM.length === 0 ? [] : [{ date, readingsM: coatingReadingsM }]))

const wasLookedAtBefore = (surveys: readonly SpotSurvey[], position: string, date: string): boolean =>
  surveys.some((survey) => survey.date < date && survey.places.some((place) => place.position === position))

const trailFrom = (surveys: readonly SpotSurvey[], { trail, position, points, last }: Pick<Trail, 'trail' | 'position' | 'points' | 'last'>, { trailer }: TrailSetting): Trail => {
  const change = changeOf(points)
  const newestDate = surveys.at(-1)?.date ?? last.date
  return {
    trail, position, points, last, change, standing: standingOf(points, change, newestDate, wasLookedAtBefore(surveys, position, last.date)),
    forecast: forecastOf(points), life: coatingLife(last.spot, { trailer, surveyDate: last.date, position }, readingsOf(points)),
  }
}

/** A trail under way: where it was noted last, and in which surveys. */
interface Followed {
  readonly trail: string
  position: string
  readonly points: TrailPoint[]
  readonly seen: SpotSurvey[]
}

/**
 * The trail a spot goes on with: that of its position, else the one it names as its own, noted at another position before. An id that
 * two positions of one survey have alike is no trail in common.
 */
const followedBy = (spot: Spot, position: string, survey: SpotSurvey, found: readonly Followed[]): Followed | undefined => {
  const same = found.filter(({ trail }) => trail === trailOf(spot))
  return same.find((each) => each.position === position) ?? (spot.trail === undefined ? undefined : same.find(({ seen }) => !seen.includes(survey)))
}

/**
 * The spots of one rig followed over its surveys by their trail. Every trail with its looks, how it stands at the newest survey,
 * when its next grade is reached, and the life left in its zinc. Surveys may come in any order.
 */
export const trailsOf = (surveys: readonly SpotSurvey[], setting: TrailSetting): readonly Trail[] => {
  const inTime = surveys.toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
  const found: Followed[] = []
  for (const survey of inTime)
    for (const { position, spots } of survey.places)
      for (const spot of spots) {
        const point = trailPoint(survey, position, spot, spots)
        const before = followedBy(spot, position, survey, found)
        if (before === undefined) found.push({ trail: trailOf(spot), position, points: [point], seen: [survey] })
        else {
          before.points.push(point)
          before.seen.push(survey)
          before.position = position
        }
      }
  return found.flatMap(({ trail, position, points }) => {
    const last = points.at(-1)
    return last === undefined ? [] : [trailFrom(inTime, { trail, position, points, last }, setting)]
  })
}
