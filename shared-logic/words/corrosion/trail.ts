import type { Forecast } from '../../corrosion/forecast'
import { halfWidth, type Growth } from '../../corrosion/growth'
import { isPresent } from '../../corrosion/corroded-share'
import type { TrailPoint } from '../../corrosion/trail-point'
import type { Trail } from '../../corrosion/trails'
import type { UnitSystem } from '../../units/quantity'
import type { PhraseValues } from '../phrase'
import type { Words } from '../en'
import { say } from '../say'
import { sayShortGrade } from './grade'
import { areaOf, percent, smallLength, thickness, type CorrosionLine, type CorrosionSection } from './section'

const pointMeasures = (words: Words, { spot, area, isAssumed, grading }: TrailPoint, units: UnitSystem): string => {
  const said = words.corrosion.trail.measures
  if (!isPresent(spot)) return said.repaired
  const { pitDepthM, wallM, remainingM, coatingReadingsM = [] } = spot
  const parts = [
    ...(area ? [say(isAssumed ? said.areaAssumed : said.area, { area: areaOf(area.value), uncertainty: areaOf(halfWidth(area)) }, units)] : []),
    ...(pitDepthM === undefined ? [] : [say(said.pit, { depth: smallLength(pitDepthM) }, units)]),
    ...(remainingM === undefined || wallM === undefined ? [] : [say(said.wall, { left: smallLength(remainingM), wall: smallLength(wallM) }, units)]),
    ...(coatingReadingsM.length === 0 ? [] : [say(said.zinc, { lowest: thickness(Math.min(...coatingReadingsM)) }, units)]),
    ...(grading.coating.grades.length === 0 ? [] : [sayShortGrade(words, grading)]),
  ]
  return parts.length === 0 ? said.none : parts.join(', ')
}

const growthLines = (words: Words, { change }: Trail, units: UnitSystem): string[] => {
  if (change === undefined) return []
  const said = words.corrosion.trail
  const line = (template: string, growth: Growth | undefined, of: typeof areaOf): string[] => (growth ? [say(template, { by: of(growth.by), uncertainty: of(growth.uncertainty) }, units)] : [])
  return [...line(said.area, change.area, areaOf), ...line(said.pitDepth, change.pitDepth, smallLength), ...line(said.wallLoss, change.wallLoss, smallLength)]
}

/** When the next grade is reached, or why no day is told. */
export const sayForecast = (words: Words, forecast: Forecast, units: UnitSystem): string => {
  if (forecast.kind === 'none') return words.corrosion.noForecast[forecast.why]
  const said = words.corrosion.trail
  const { scale, edgeShare, earliestDate, latestDate, mayBeReached } = forecast
  const gaps: PhraseValues = { scale, edge: percent(edgeShare), earliest: { date: earliestDate }, ...(latestDate !== undefined && { latest: { date: latestDate } }) }
  const line = mayBeReached ? (latestDate === undefined ? said.forecastNowOpen : said.forecastNow) : latestDate === undefined ? said.forecastOpen : said.forecast
  return say(line, gaps, units)
}

/** A spot over the surveys in sentences: how it stands, what was measured when, what changed, when the next grade is reached. The life of its zinc is `sayLife`'s. */
export const sayTrail = (words: Words, trail: Trail, units: UnitSystem): CorrosionSection => {
  const said = words.corrosion.trail
  const { standing, change, points, last, forecast } = trail
  const since = standing === 'not looked at again' ? last.date : change?.fromDate
  const name = words.corrosion.standings[standing]
  const head: CorrosionLine = { text: since === undefined ? say(said.standing, { standing: name }, units) : say(said.standingSince, { standing: name, date: { date: since } }, units) }
  const looks = points.map((point) => say(said.point, { date: { date: point.date }, measures: pointMeasures(words, point, units) }, units))
  return {
    title: last.spot.place, sources: [], cautions: forecast.kind === 'date' ? [said.basis] : [],
    lines: [{ ...head, verdict: standing === 'not looked at again' ? 'not seen' : last.grading.verdict }, ...[...looks, ...growthLines(words, trail, units), sayForecast(words, forecast, units)].map((text) => ({ text }))],
  }
}
