import type { LimitLine, LimitStanding } from '../load/limits'
import { formatQuantity } from '../units/convert'
import { measured, type UnitSystem } from '../units/quantity'
import type { Words } from '../words/en'
import { say } from '../words/say'
import type { Drawing, Role, Shape } from './drawing'
import { box, label, line } from './strokes'

const roleOf: Readonly<Record<LimitStanding, Role>> = { within: 'pass', 'little reserve': 'advisory', over: 'fail', waits: 'not seen' }

const bar = { width: 420, height: 20 }
/** The rating stands here; what is over it runs beyond. */
const ratingAt = 0.8

/** One limit without words: the rating as a post, the load as a bar up to it or through it, the reserve wanted shaded before it. Width 420. */
export const limitBar = ({ limit, load, standing }: LimitLine, reserveWanted: number, at: { readonly x: number; readonly y: number } = { x: 0, y: 0 }): Shape[] => {
  const { ratingKg } = limit
  const { x, y } = at
  const [postX, height] = [x + bar.width * ratingAt, bar.height]
  if (ratingKg === undefined) return [line([{ x, y: y + height / 2 }, { x: postX, y: y + height / 2 }], { stroke: 'not seen', weight: 1.6, dashed: true })]
  const long = (massKg: number): number => Math.min(massKg / ratingKg, 1 / ratingAt) * bar.width * ratingAt
  const wantedX = postX - bar.width * ratingAt * reserveWanted
  const top = load?.massKg ?? load?.highKg
  return [
    box(wantedX, y, postX - wantedX, height, { fill: 'faint' }),
    line([{ x, y: y + height }, { x: postX, y: y + height }], { stroke: 'hairline', weight: 1 }),
    ...(load?.massKg !== undefined ? [box(x, y + 4, long(load.massKg), height - 8, { fill: roleOf[standing], stroke: 'ink', weight: 1 })] : []),
    ...(load?.massKg === undefined && load !== undefined && top !== undefined ? [box(x, y + 4, long(load.lowKg), height - 8, { stroke: 'ink', weight: 1 }), box(x + long(load.lowKg), y + 4, long(top) - long(load.lowKg), height - 8, { stroke: 'not seen', weight: 1.4, dashed: true })] : []),
    line([{ x: postX, y: y - 3 }, { x: postX, y: y + height + 3 }], { stroke: 'ink', weight: 2.4 }),
  ]
}

/** How far a limit is from its load, in few words. */
export const sayReserve = ({ limit, load, reserveKg, reserveShare }: LimitLine, words: Words, system: UnitSystem): string => {
  const said = words.sums.drawing
  if (limit.ratingKg === undefined) return said.unknown
  if (reserveKg !== undefined && reserveShare !== undefined)
    return reserveKg < 0 ? say(said.over, { excess: measured('mass', -reserveKg) }, system) : `${say(said.left, { reserve: measured('mass', reserveKg) }, system)}, ${formatQuantity('ratio', Math.floor(reserveShare * 1000) / 1000, system)}`
  if (load?.highKg !== undefined) return say(said.bounds, { low: measured('mass', load.lowKg), high: measured('mass', load.highKg) }, system)
  return load === undefined ? words.sums.standings.waits : say(said.atLeast, { low: measured('mass', load.lowKg) }, system)
}

const row = 40

/** Every limit with its bar and its reserve, one below the other, with their names: for the report. */
export const limitBars = (lines: readonly LimitLine[], reserveWanted: number, words: Words, system: UnitSystem): Drawing => ({
  viewBox: [0, 0, 960, lines.length * row + 8],
  shapes: lines.flatMap((each, index): Shape[] => {
    const y = index * row + 12
    const { ratingKg } = each.limit
    return [
      label(0, y + 15, words.sums.limits[each.limit.id], 15), ...limitBar(each, reserveWanted, { x: 250, y }),
      ...(ratingKg === undefined ? [] : [label(690, y + 15, formatQuantity('mass', ratingKg, system), 15)]),
      label(780, y + 15, sayReserve(each, words, system), 15, each.standing === 'over' ? { bold: true } : {}),
    ]
  }),
  places: [], toScale: true,
})
