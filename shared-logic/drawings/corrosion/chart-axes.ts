import { dateAfter, yearsBetween } from '../../corrosion/calendar'
import { fromSi, shownUnit, toSi } from '../../units/convert'
import type { Shape } from '../drawing'
import { label, line } from '../strokes'
import type { Chart, ChartText } from './chart'
import { dateTicks, type DateTick } from './date-axis'

/** Where the chart stands in its sheet, drawing units. */
export interface ChartFrame {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
  readonly right: number
  readonly size: number
}

export const chartFrame = (isSmall: boolean): ChartFrame =>
  isSmall ? { left: 66, top: 12, width: 168, height: 190, right: 86, size: 13 } : { left: 76, top: 12, width: 424, height: 230, right: 120, size: 14 }

export interface ChartAxes extends ChartFrame {
  readonly from: string
  readonly to: string
  readonly floor: number
  readonly most: number
  readonly x: (date: string) => number
  readonly y: (value: number) => number
}

/** How far the axis runs past the last look for a forecast that lies further off. */
const furthestAhead = 3
const leastAheadYears = 3
/** Room at both ends, as a share of the span. */
const roomShare = 0.06
/** One look alone stands in the middle of a year. */
const aloneYears = 1

const span = ({ lines, forecast }: Chart): { from: string; to: string } => {
  const dates = lines.flatMap(({ points }) => points.map(({ date }) => date)).toSorted()
  const [first = '', last = ''] = [dates[0], dates.at(-1)]
  const ahead = forecast === undefined ? 0 : Math.max(0, yearsBetween(last, forecast.latestDate ?? dateAfter(forecast.earliestDate, leastAheadYears)))
  const shown = Math.min(ahead, Math.max(yearsBetween(first, last) * furthestAhead, leastAheadYears, forecast ? yearsBetween(last, forecast.earliestDate) * 1.3 : 0))
  const room = Math.max((yearsBetween(first, last) + shown) * roomShare, first === last && shown === 0 ? aloneYears / 2 : 0)
  return { from: dateAfter(first, -room), to: dateAfter(last, shown + room) }
}

/** A level this many times above everything measured is not drawn: it would press the curve flat. */
const levelReach = 12

const topOf = ({ lines, levels, forecast }: Chart): number => {
  const highest = Math.max(...lines.flatMap(({ points }) => points.map(({ high }) => high)))
  const above = levels.map(({ value }) => value).filter((value) => value > highest && value <= highest * levelReach)
  return Math.max(highest, forecast?.level ?? 0, above.length === 0 ? 0 : Math.min(...above)) * 1.1
}

export const chartAxes = (chart: Chart, isSmall: boolean): ChartAxes => {
  const frame = chartFrame(isSmall)
  const { from, to } = span(chart)
  const { floor = 0 } = chart
  const most = topOf(chart) || 1
  const whole = yearsBetween(from, to)
  return { ...frame, from, to, floor, most, x: (date) => frame.left + (yearsBetween(from, date) / whole) * frame.width, y: (value) => frame.top + (1 - (value - floor) / (most - floor)) * frame.height }
}

const niceSteps = [1, 2, 2.5, 5, 10]

/** Decimals that a round step is written with: 0.025 takes three. */
const decimalsOf = (step: number): number => [0, 1, 2, 3, 4].find((decimals) => Math.abs(step * 10 ** decimals - Math.round(step * 10 ** decimals)) < 1e-6) ?? 5

/** Round values of the reader's unit, all written alike: no '1/8 in' among decimals. */
const valueTicks = ({ quantity }: Chart, { floor, most }: ChartAxes, { units }: ChartText): { readonly value: number; readonly name: string }[] => {
  const unit = shownUnit(quantity, units)
  const [low, top] = [fromSi(floor, unit), fromSi(most, unit)]
  const least = (top - low) / 4
  const power = 10 ** Math.floor(Math.log10(least))
  const step = (niceSteps.find((nice) => nice * power >= least) ?? 10) * power
  const first = Math.ceil(low / step - 1e-9)
  return Array.from({ length: Math.floor(top / step + 1e-9) - first + 1 }, (_, index) => {
    const shown = (first + index) * step
    return { value: toSi(shown, unit), name: `${shown.toFixed(decimalsOf(step))} ${unit.symbol}` }
  })
}

/** Width of text in this face, of its size. */
const letterWidth = 0.54
/** Clear between two dates, of the size of the figures. */
const clearBetween = 0.6

/** As many dates as can be read side by side. */
const datesShown = (axes: Pick<ChartAxes, 'from' | 'to' | 'x' | 'size'>, most: number): readonly DateTick[] => {
  const { from, to, x, size } = axes
  const ticks = dateTicks(from, to, most)
  const isCrowded = ticks.some(({ date, label: name }, index) => {
    const next = ticks[index + 1]
    return next !== undefined && x(next.date) - x(date) < ((name.length + next.label.length) / 2) * size * letterWidth + size * clearBetween
  })
  return isCrowded && most > 1 ? datesShown(axes, most - 1) : ticks
}

/** Both axes with their figures: values of the reader's unit, and dates. */
export const axesShapes = (chart: Chart, axes: ChartAxes, text: ChartText): Shape[] => {
  const { left, top, width, height, size, x, y } = axes
  const foot = top + height
  return [
    ...valueTicks(chart, axes, text).flatMap(({ value, name }) => [line([{ x: left - 5, y: y(value) }, { x: left, y: y(value) }], { stroke: 'ink', weight: 1.2 }), label(left - 9, y(value) + size * 0.35, name, size, { anchor: 'end' })]),
    ...datesShown(axes, text.isSmall ? 3 : 5).flatMap(({ date, label: name }) => [line([{ x: x(date), y: foot }, { x: x(date), y: foot + 5 }], { stroke: 'ink', weight: 1.2 }), label(x(date), foot + size * 1.5, name, size, { anchor: 'middle' })]),
    line([{ x: left, y: top }, { x: left, y: foot }, { x: left + width, y: foot }], { stroke: 'ink', weight: 1.6 }),
  ]
}
