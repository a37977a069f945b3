import { sayDate, say } from '../../words/say'
import type { Drawing, Shape } from '../drawing'
import { circle, label, line, type Point } from '../strokes'
import type { Chart, ChartForecast, ChartLevel, ChartLine, ChartPoint, ChartText } from './chart'
import { axesShapes, chartAxes, type ChartAxes } from './chart-axes'

/** Levels closer together than this are not drawn apart, in heights of the figures. */
const namesApart = 1.15

/** Names from the top down; of those too close together the higher is named. */
const levelShapes = (levels: readonly ChartLevel[], { left, width, size, y, floor, most }: ChartAxes): Shape[] => {
  let lastNamed = Number.NEGATIVE_INFINITY
  const end = left + width
  return levels.filter(({ value }) => value > floor && value <= most).toSorted((a, b) => b.value - a.value).flatMap(({ value, name, role, begins }): Shape[] => {
    const at = y(value)
    const isNamed = at - lastNamed >= size * namesApart
    if (isNamed) lastNamed = at
    const arrow = begins ? [line([{ x: end + 9, y: at }, { x: end + 9, y: at - 11 }], { stroke: 'ink', weight: 1.2 }), line([{ x: end + 6, y: at - 7 }, { x: end + 9, y: at - 11 }, { x: end + 12, y: at - 7 }], { stroke: 'ink', weight: 1.2 })] : []
    return [line([{ x: left, y: at }, { x: end + 4, y: at }], { stroke: role, weight: role === 'hairline' ? 1.2 : 1.6 }), ...(isNamed ? [...arrow, label(end + (begins ? 17 : 8), at + size * (begins ? 0 : 0.35), name, size)] : [])]
  })
}

/** Runs of looks between repairs. */
const runsOf = (points: readonly ChartPoint[]): readonly ChartPoint[][] => {
  const runs: ChartPoint[][] = [[]]
  for (const point of points) {
    if (point.isRepaired) runs.push([])
    else runs.at(-1)?.push(point)
  }
  return runs.filter((run) => run.length > 0)
}

const barShapes = ({ date, low, high, isAssumed = false }: ChartPoint, { x, y }: ChartAxes): Shape[] => {
  if (low === high) return []
  const [at, from, to] = [x(date), y(low), y(high)]
  const cap = (level: number): Shape => line([{ x: at - 5, y: level }, { x: at + 5, y: level }], { stroke: 'ink', weight: 1.4 })
  return [line([{ x: at, y: from }, { x: at, y: to }], { stroke: 'ink', weight: 1.4, ...(isAssumed && { dashed: true as const }) }), cap(from), cap(to)]
}

const pointShapes = (point: ChartPoint, axes: ChartAxes, { words }: ChartText): Shape[] => {
  const at = { x: axes.x(point.date), y: axes.y(point.value) }
  if (point.isRepaired) return [circle(at.x, at.y, 6, { stroke: 'pass', fill: 'paper', weight: 2.4 }), label(at.x, at.y - 12, words.screens.corrosion.drawing.repaired, axes.size, { anchor: 'middle' })]
  return [...barShapes(point, axes), circle(at.x, at.y, 4.5, { stroke: 'paper', fill: 'ink', weight: 1.5 })]
}

/** The first line's name stands above its beginning, the second's below. */
const lineShapes = ({ points, name, dashed }: ChartLine, axes: ChartAxes, text: ChartText, isUpper: boolean): Shape[] => {
  const [first] = points
  return [
    ...runsOf(points).map((run) => line(run.map(({ date, value }) => ({ x: axes.x(date), y: axes.y(value) })), { stroke: 'ink', weight: 2.2, ...(dashed && { dashed }) })),
    ...points.flatMap((point) => pointShapes(point, axes, text)),
    ...(name === undefined || first === undefined ? [] : [label(axes.x(first.date) + 8, axes.y(first.value) + axes.size * (isUpper ? -0.6 : 1.7), name, axes.size)]),
  ]
}

const hatchApart = 9

/** Slanting lines in an upright band. */
const hatch = (x0: number, x1: number, top: number, foot: number): Shape[] => {
  const height = foot - top
  const from = x0 - height
  return Array.from({ length: Math.ceil((x1 - from) / hatchApart) }, (_, index) => from + (index + 1) * hatchApart).flatMap((start) => {
    const [low, high] = [Math.max(0, x0 - start), Math.min(height, x1 - start)]
    return high <= low ? [] : [line([{ x: start + low, y: foot - low }, { x: start + high, y: foot - high }], { stroke: 'hairline', weight: 1.4 })]
  })
}

const forecastShapes = (forecast: ChartForecast, last: ChartPoint | undefined, axes: ChartAxes): Shape[] => {
  const { left, width, top, height, x, y } = axes
  const end = left + width
  const [soonest, latest] = [Math.min(x(forecast.earliestDate), end), forecast.latestDate === undefined ? end : Math.min(x(forecast.latestDate), end)]
  const isOpen = forecast.latestDate === undefined || x(forecast.latestDate) > end
  const edge = (at: number): Shape => line([{ x: at, y: top }, { x: at, y: top + height }], { stroke: 'select', weight: 1.4 })
  const from: Point | undefined = last && { x: x(last.date), y: y(last.value) }
  return [
    ...hatch(soonest, Math.max(latest, soonest + 2), top, top + height), edge(soonest), ...(isOpen ? [] : [edge(latest)]),
    ...(from ? [soonest, ...(isOpen ? [] : [latest])].map((at) => line([from, { x: at, y: y(forecast.level) }], { stroke: 'select', weight: 1.6, dashed: true })) : []),
  ]
}

/** More than the width of a letter, of its size, so that what follows stands clear. */
const letterWidth = 0.56

const forecastNote = ({ earliestDate, latestDate }: ChartForecast, { top, height, size }: ChartAxes, { words, units, isSmall = false }: ChartText): Shape[] => {
  const said = words.screens.corrosion.drawing
  const dates = latestDate === undefined ? say(said.after, { earliest: sayDate(earliestDate) }, units) : say(said.between, { earliest: sayDate(earliestDate), latest: sayDate(latestDate) }, units)
  const y = top + height + size * 3.2
  return isSmall ? [label(4, y, said.forecast, size), label(4, y + size * 1.4, dates, size, { bold: true })] : [label(4, y, said.forecast, size), label(4 + said.forecast.length * size * letterWidth, y, dates, size, { bold: true })]
}

/** Draws a curve over dates: levels, bars, dots, and the range of the forecast as a hatched band with its dates below. */
export const drawChart = (chart: Chart, text: ChartText): Drawing => {
  const axes = chartAxes(chart, text.isSmall ?? false)
  const { forecast } = chart
  const noteRows = forecast === undefined ? 0 : text.isSmall ? 2 : 1
  return {
    viewBox: [0, 0, axes.left + axes.width + axes.right, Math.round(axes.top + axes.height + axes.size * (2.2 + noteRows * 1.5))],
    shapes: [
      ...(forecast ? forecastShapes(forecast, chart.lines[0]?.points.at(-1), axes) : []), ...levelShapes(chart.levels, axes), ...axesShapes(chart, axes, text),
      ...chart.lines.flatMap((each, index) => lineShapes(each, axes, text, index === 0)), ...(forecast ? forecastNote(forecast, axes, text) : []),
    ],
    places: [], toScale: true,
  }
}
