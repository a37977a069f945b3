import { isPresent } from './corroded-share'
import { forecastOf, type Forecast } from './forecast'
import { changeBetween, type Change } from './growth'
import { coatingLife, type CoatingLife, type DatedReadings, type LifeSetting } from './life'
import { trailOf } from '../survey/spot'
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

/**
 * The spots of one rig followed over its surveys by their trail. Every trail with its looks, how it stands at the newest survey,
 * when its next grade is reached, and the life left in its zinc. Surveys may come in any order.
 */
export const trailsOf = (surveys: readonly SpotSurvey[], setting: TrailSetting): readonly Trail[] => {
  const inTime = surveys.toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
  const found = new Map<string, { trail: string; position: string; points: TrailPoint[] }>()
  for (const survey of inTime)
    for (const { position, spots } of survey.places)
      for (const spot of spots) {
        const trail = trailOf(spot)
        const key = `${position}\n${trail}`
        const known = found.get(key) ?? { trail, position, points: [] }
        known.points.push(trailPoint(survey, position, spot, spots))
        found.set(key, known)
      }
  return [...found.values()].flatMap(({ trail, position, points }) => {
    const last = points.at(-1)
    return last === undefined ? [] : [trailFrom(inTime, { trail, position, points, last }, setting)]
  })
}
