import { degreeOfRusting, gradeEdges, protectionRating, rustGrade } from '../../corrosion/area-grades'
import { areaScales, type AreaScale } from '../../corrosion/area-scales'
import { isPresent } from '../../corrosion/corroded-share'
import { depthErrorM } from '../../corrosion/growth'
import { lifeReserveM } from '../../corrosion/life'
import { corrosionLimits as limits } from '../../corrosion/limits'
import { scaled, type Ranged } from '../../corrosion/ranged'
import type { TrailPoint } from '../../corrosion/trail-point'
import type { Trail } from '../../corrosion/trails'
import type { Spot } from '../../survey/spot'
import { measured } from '../../units/quantity'
import { say } from '../../words/say'
import type { Drawing } from '../drawing'
import type { Chart, ChartLevel, ChartPoint, ChartText } from './chart'
import { drawChart } from './draw-chart'

/** What is followed over the surveys. */
export const curveKinds = ['area', 'depth', 'coating'] as const
export type CurveKind = (typeof curveKinds)[number]

const repairedAt = (date: string, value: number): ChartPoint => ({ date, value, low: value, high: value, isRepaired: true })

/** Area of the face's rust where the face is known and its spots add up; else the spot's own. */
const areaAt = (point: TrailPoint, faceM2: number | undefined): Ranged | undefined => {
  const { area, share, grading } = point
  if (grading.counted > 1 && share !== undefined && faceM2 !== undefined) return scaled(share, faceM2)
  return area ?? (share !== undefined && faceM2 !== undefined ? scaled(share, faceM2) : undefined)
}

const gradeAbove: Readonly<Record<AreaScale, (percent: number) => number>> = { 'ISO 4628-3': degreeOfRusting, 'ASTM D610': rustGrade, 'ISO 10289': protectionRating }
/** Just over an edge, percent: enough to be in the next grade, too little to reach the one after. */
const justOver = 1.001

const gradeLevels = ({ last }: Trail, wholeM2: number, { words, units }: ChartText): ChartLevel[] => {
  const scale = last.grading.coating.grades.flatMap((grade) => areaScales.filter((each) => each === grade.scale))[0]
  if (scale === undefined) return []
  const name = words.screens.corrosion.drawing.grades[scale]
  return gradeEdges[scale].filter((percent) => percent > 0).map((percent) => ({ value: (percent / 100) * wholeM2, name: say(name, { grade: gradeAbove[scale](percent * justOver) }, units), role: 'hairline' as const, begins: true as const }))
}

const areaChart = (trail: Trail, text: ChartText): Chart | undefined => {
  const { points, last, forecast } = trail
  const faceM2 = last.spot.faceAreaM2 ?? points.findLast(({ spot }) => spot.faceAreaM2 !== undefined)?.spot.faceAreaM2
  const byShare = points.every(({ area }) => area === undefined) && faceM2 === undefined
  const at = (point: TrailPoint): Ranged | undefined => (byShare ? point.share : areaAt(point, faceM2))
  const drawn = points.flatMap((point): ChartPoint[] => {
    if (!isPresent(point.spot)) return [repairedAt(point.date, 0)]
    const ranged = at(point)
    return ranged === undefined ? [] : [{ date: point.date, ...ranged, isAssumed: point.isAssumed }]
  })
  if (!drawn.some(({ isRepaired }) => !isRepaired)) return undefined
  const wholeM2 = byShare ? 1 : faceM2
  return {
    quantity: byShare ? 'ratio' : 'area', lines: [{ points: drawn }], levels: wholeM2 === undefined ? [] : gradeLevels(trail, wholeM2, text),
    ...(forecast.kind === 'date' && wholeM2 !== undefined && { forecast: { level: forecast.edgeShare * wholeM2, earliestDate: forecast.earliestDate, ...(forecast.latestDate !== undefined && { latestDate: forecast.latestDate }) } }),
  }
}

const readAt = (date: string, value: number): ChartPoint => ({ date, value, low: Math.max(0, value - depthErrorM), high: value + depthErrorM, isAssumed: true })

const lossLevels = (wallM: number, bearsLoad: boolean, { words, units }: ChartText): ChartLevel[] => {
  const said = words.screens.corrosion.drawing
  const lost = (share: number, role: ChartLevel['role']): ChartLevel => ({ value: wallM * (1 - share), name: say(said.lost, { share: measured('ratio', share) }, units), role })
  return [{ value: wallM, name: said.asMade, role: 'ink' }, ...(bearsLoad ? [lost(limits.lossAdvisory, 'advisory'), lost(limits.thinningFail, 'fail'), lost(limits.pitFail, 'fail')] : [])]
}

/** A wall is never drawn from nothing, where a loss could hardly be seen: from a little below the least of data and limits. */
const clearBelow = 0.9

const depthChart = ({ points, last }: Trail, text: ChartText): Chart | undefined => {
  const said = text.words.screens.corrosion.drawing
  const present = points.filter(({ spot }) => isPresent(spot))
  const wallM = points.findLast(({ spot }) => spot.wallM !== undefined)?.spot.wallM
  const left = present.flatMap(({ date, spot: { remainingM } }) => (remainingM === undefined ? [] : [readAt(date, remainingM)]))
  const pits = present.flatMap(({ date, spot: { pitDepthM, wallM: here = wallM } }) => (pitDepthM === undefined ? [] : [readAt(date, here === undefined ? pitDepthM : Math.max(0, here - pitDepthM))]))
  // Pits without their wall are depths, which do not stand on one axis with thicknesses.
  const lines = [...(left.length > 0 ? [{ points: left, name: said.wallLeft }] : []), ...(pits.length > 0 && (wallM !== undefined || left.length === 0) ? [{ points: pits, name: wallM === undefined ? said.pit : said.atPit, dashed: true as const }] : [])]
  if (lines.length === 0) return undefined
  if (wallM === undefined) return { quantity: 'smallLength', lines, levels: [] }
  const lowest = Math.min(...lines.flatMap((each) => each.points.map(({ low }) => low)))
  return { quantity: 'smallLength', lines, levels: lossLevels(wallM, last.grading.structure.bearsLoad, text), floor: Math.min(lowest, wallM * (1 - limits.pitFail)) * clearBelow }
}

const coatingChart = ({ points, last, life }: Trail, { words }: ChartText): Chart | undefined => {
  const said = words.screens.corrosion.drawing
  const read = points.flatMap(({ date, spot: { coatingReadingsM = [] } }): ChartPoint[] =>
    coatingReadingsM.length === 0 ? [] : [{ date, value: coatingReadingsM.reduce((sum, each) => sum + each, 0) / coatingReadingsM.length, low: Math.min(...coatingReadingsM), high: Math.max(...coatingReadingsM) }])
  if (read.length === 0) return undefined
  const minimum = last.grading.coating.zinc?.minimum
  return {
    quantity: 'thickness', lines: [{ points: read }],
    levels: [...(life.kind === 'no zinc to read' ? [] : [{ value: lifeReserveM, name: said.reserve, role: 'advisory' as const }]), ...(minimum ? [{ value: minimum.localM, name: said.localMinimum, role: 'hairline' as const }] : [])],
  }
}

const isMeasured: Readonly<Record<CurveKind, (spot: Spot) => boolean>> = {
  area: ({ areaM2, share }) => areaM2 !== undefined || share !== undefined,
  depth: ({ pitDepthM, remainingM }) => pitDepthM !== undefined || remainingM !== undefined,
  coating: ({ coatingReadingsM = [] }) => coatingReadingsM.length > 0,
}

/** Whether two surveys or more measured it: one look alone is no curve. */
export const isFollowed = ({ points }: Trail, kind: CurveKind): boolean => points.filter(({ spot }) => isPresent(spot) && isMeasured[kind](spot)).length > 1

const charts: Readonly<Record<CurveKind, (trail: Trail, text: ChartText) => Chart | undefined>> = { area: areaChart, depth: depthChart, coating: coatingChart }

/**
 * A spot's area, depth or coating over the surveys; undefined where none was measured. Area with its uncertainty, the levels at which the next
 * grades begin, and the forecast as a hatched range; thickness with the levels at which findings begin; zinc with its reserve.
 */
export const trailCurve = (trail: Trail, kind: CurveKind, text: ChartText): Drawing | undefined => {
  const chart = charts[kind](trail, text)
  return chart && drawChart(chart, text)
}
