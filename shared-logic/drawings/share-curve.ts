import type { Balance } from '../balance/balance'
import { verdictOfStanding, standingOfShare } from '../balance/bands'
import type { CurvePoint } from '../balance/tank-curve'
import type { LoadItem } from '../load/load-items'
import { formatQuantity } from '../units/convert'
import type { UnitSystem } from '../units/quantity'
import type { Words } from '../words/en'
import { nameOfItem } from '../words/sums/load'
import type { Drawing, Role, Shape } from './drawing'
import { box, circle, label, line } from './strokes'

const frame = { left: 62, top: 20, height: 230, right: 176 }
/** Width of the chart itself: narrow where it is shown small, so that its figures stay readable. */
const widths = { wide: 470, narrow: 210 }
const dashes: readonly Role[] = ['metal', 'select', 'oil', 'strap']

const shareText = (share: number, system: UnitSystem): string => formatQuantity('ratio', Math.round(share * 1000) / 1000, system)

interface Axes {
  readonly width: number
  readonly x: (fill: number) => number
  readonly y: (share: number) => number
  readonly low: number
  readonly high: number
}

const axesOf = ({ bands, tanks }: Balance, width: number): Axes => {
  const shares = [...(tanks ? [tanks.worst.least.share, tanks.worst.most.share] : []), bands.failBelow, bands.passTo]
  const low = Math.floor((Math.min(...shares) - 0.01) * 50) / 50
  const high = Math.ceil((Math.max(...shares) + 0.01) * 50) / 50
  return { width, low, high, x: (fill) => frame.left + fill * width, y: (share) => frame.top + ((high - share) / (high - low)) * frame.height }
}

/** Band, target and scale behind the curves. */
const background = ({ bands }: Balance, { width, x, y, low, high }: Axes, words: Words, system: UnitSystem): Shape[] => {
  const said = words.sums.drawing
  const step = high - low > 0.3 ? 0.1 : 0.05
  const ticks = Array.from({ length: Math.floor((high - low) / step + 1e-9) + 2 }, (_, index) => Math.ceil(low / step - 1e-9) * step + index * step).filter((share) => share <= high + 1e-9)
  return [
    box(x(0), y(bands.passTo), width, y(bands.passFrom) - y(bands.passTo), { fill: 'hull' }),
    ...ticks.flatMap((share) => [line([{ x: x(0), y: y(share) }, { x: x(1), y: y(share) }], { stroke: 'hairline', weight: 1 }), label(x(0) - 10, y(share) + 5, shareText(share, system), 14, { anchor: 'end' })]),
    line([{ x: x(0), y: y(bands.target) }, { x: x(1), y: y(bands.target) }], { stroke: 'pass', weight: 1.8, dashed: true }),
    line([{ x: x(0), y: y(bands.failBelow) }, { x: x(1), y: y(bands.failBelow) }], { stroke: 'fail', weight: 1.6 }),
    line([{ x: x(0), y: frame.top }, { x: x(0), y: frame.top + frame.height }, { x: x(1), y: frame.top + frame.height }], { stroke: 'ink', weight: 1.6 }),
    label(x(0), frame.top + frame.height + 24, said.empty, 14), label(x(1), frame.top + frame.height + 24, said.full, 14, { anchor: 'end' }), label(x(0.5), frame.top + frame.height + 24, said.level, 14, { anchor: 'middle' }),
    label(x(0) + 8, y(bands.passTo) + 17, said.good, 14),
  ]
}

interface Curve {
  readonly name: string
  readonly points: readonly CurvePoint[]
  readonly role: Role
  readonly weight: number
}

const curvesOf = ({ tanks }: Balance, items: readonly LoadItem[], words: Words): Curve[] => {
  if (!tanks) return []
  const each = tanks.each.length > 1 ? tanks.each : []
  const nameOf = (id: string): string => {
    const item = items.find((one) => one.id === id)
    return item ? nameOfItem(words, item) : id
  }
  return [...each.map(({ id, points }, index) => ({ name: nameOf(id), points, role: dashes[index % dashes.length] ?? 'metal', weight: 1.8 })), { name: words.sums.drawing.all, points: tanks.together, role: 'ink' as const, weight: 3 }]
}

/** Names at the ends of the curves, pushed apart until each can be read. */
const spread = (wanted: readonly number[], apart: number): number[] => {
  const order = wanted.map((y, index) => ({ y, index })).toSorted((a, b) => a.y - b.y)
  const placed: number[] = []
  let last = -Infinity
  for (const { y, index } of order) {
    last = Math.max(y, last + apart)
    placed[index] = last
  }
  return placed
}

interface Named {
  readonly y: number
  readonly name: string
  readonly isBold: boolean
}

/** The lightest and the heaviest of all combinations: a line each, and what it is called. */
const worstOf = ({ tanks, bands }: Balance, { x, y }: Axes, words: Words, system: UnitSystem): { readonly shapes: readonly Shape[]; readonly named: readonly Named[] } => {
  if (!tanks) return { shapes: [], named: [] }
  const said = words.sums.drawing
  const marks = [{ share: tanks.worst.most.share, name: said.heaviest }, { share: tanks.worst.least.share, name: said.lightest }]
  return {
    shapes: marks.flatMap(({ share }) => [
      line([{ x: x(0), y: y(share) }, { x: x(1), y: y(share) }], { stroke: 'ink', weight: 1.2, dashed: true }),
      circle(x(0.5), y(share), 6, { stroke: 'ink', fill: verdictOfStanding[standingOfShare(share, bands)], weight: 1.6 }),
    ]),
    named: marks.map(({ share, name }) => ({ y: y(share), name: `${name} ${shareText(share, system)}`, isBold: true })),
  }
}

/**
 * Share on the coupling over the level of the tanks, with the good band shaded, the target dashed, and the lightest and heaviest of all
 * combinations marked. Undefined without tanks, or while the balance cannot be worked out.
 */
export const shareCurve = (balance: Balance, items: readonly LoadItem[], words: Words, system: UnitSystem, isSmall = false): Drawing | undefined => {
  const curves = curvesOf(balance, items, words)
  if (curves.length === 0) return undefined
  const axes = axesOf(balance, isSmall ? widths.narrow : widths.wide)
  const worst = worstOf(balance, axes, words, system)
  const named: Named[] = [
    ...curves.map(({ name, points }) => ({ y: axes.y(points.at(-1)?.share ?? 0), name, isBold: false })), ...worst.named,
    { y: axes.y(balance.bands.target), name: words.sums.drawing.target, isBold: false },
  ]
  const ys = spread(named.map(({ y }) => y + 5), 18)
  return {
    viewBox: [0, 0, frame.left + axes.width + frame.right, frame.top + frame.height + 36],
    shapes: [
      ...background(balance, axes, words, system), ...worst.shapes,
      ...curves.map(({ points, role, weight }) => line(points.map(({ fill, share }) => ({ x: axes.x(fill), y: axes.y(share) })), { stroke: role, weight })),
      ...named.flatMap(({ y, name, isBold }, index): Shape[] => [
        line([{ x: axes.x(1) + 2, y }, { x: axes.x(1) + 22, y: (ys[index] ?? 0) - 5 }], { stroke: 'hairline', weight: 1 }),
        label(axes.x(1) + 26, ys[index] ?? 0, name, 14, isBold ? { bold: true } : {}),
      ]),
    ],
    places: [], toScale: true,
  }
}
