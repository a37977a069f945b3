import type { LoadItem } from '../../load/load-items'
import type { Sums } from '../../sums/sums'
import { formatQuantity } from '../../units/convert'
import { measured, type UnitSystem } from '../../units/quantity'
import type { Words } from '../../words/en'
import { say } from '../../words/say'
import { nameOfItem } from '../../words/sums/load'
import type { Place, Role, Shape } from '../drawing'
import { box, circle, label, line, path } from '../strokes'
import type { SideLayout } from './layout'

const longest = 96
const shortest = 16
const shareText = (share: number, system: UnitSystem): string => formatQuantity('ratio', Math.round(share * 1000) / 1000, system)

/** How large figures are set: larger on a sheet that is shown small, and then only the ones that count. */
export interface SideText {
  readonly size: number
  readonly words: Words
  readonly system: UnitSystem
  readonly isSmall: boolean
}

interface Loaded {
  readonly item: LoadItem
  readonly massKg: number
  readonly atM: number
}

const loadedOf = (items: readonly LoadItem[]): Loaded[] =>
  items.flatMap((item) => (item.massKg === undefined || item.massKg === 0 || item.atM === undefined ? [] : [{ item, massKg: item.massKg, atM: item.atM }])).toSorted((a, b) => a.atM - b.atM)

/** The longest arrow of a load, on a step, so that it stays put while the axle is moved. */
const highestOf = (items: readonly LoadItem[], perKg: number): number => Math.ceil(Math.max(shortest, ...items.map(({ massKg }) => (massKg ?? 0) * perKg)) / 24) * 24

/** Room the arrows and their labels take above the boat: one row a load, so that it stays the same while things move. */
export const loadRoom = ({ load }: Sums, perKg: number, { size, isSmall }: SideText): number =>
  highestOf(load.items, perKg) + 34 + (isSmall ? 0 : Math.min(Math.ceil(load.items.length * 0.5), 6) * (size + 6))

const widthOf = (text: string, size: number): number => text.length * size * 0.54 + 14

/** A figure on paper, so that lines behind it do not run through it. */
export const backed = (x: number, y: number, text: string, size: number, more: { readonly anchor?: 'start' | 'middle' | 'end'; readonly bold?: true } = {}): Shape[] => {
  const width = text.length * size * 0.5 + 8
  const left = more.anchor === 'middle' ? x - width / 2 : more.anchor === 'end' ? x - width : x - 4
  return [box(left, y - size * 0.86, width, size * 1.08, { fill: 'paper' }), label(x, y, text, size, more)]
}

/** A filled head, so that an arrow reads as a force. */
const force = (x: number, fromY: number, toY: number, role: Role, weight: number): Shape[] => {
  const back = Math.sign(toY - fromY) * -11
  return [line([{ x, y: fromY }, { x, y: toY + back * 0.6 }], { stroke: role, weight }), path(`M${x.toFixed(1)} ${toY.toFixed(1)} l-6 ${back} h12 Z`, { fill: role })]
}

/** From right to left, so that each label reads to the right above the arrows it passes over. */
const rowsOf = (places: readonly { readonly x: number; readonly width: number }[]): number[] => {
  const rows: number[] = []
  for (let index = places.length - 1; index >= 0; index -= 1) {
    const own = places[index]
    if (!own) continue
    const passed = places.slice(index + 1).flatMap(({ x }, offset) => (x < own.x + own.width ? [(rows[index + 1 + offset] ?? 0) + 1] : []))
    rows[index] = Math.max(0, ...passed)
  }
  return rows
}

/** Loads as arrows down, each as long as its mass; longest for the heaviest thing or reaction. */
export const loadArrows = ({ load }: Sums, at: SideLayout, perKg: number, text: SideText): Shape[] => {
  const loaded = loadedOf(load.items)
  const footY = at.y(at.sheerM) - 16
  const named = loaded.map(({ item, massKg, atM }) => ({ x: at.x(atM), long: Math.max(massKg * perKg, shortest), caption: `${nameOfItem(text.words, item)} ${formatQuantity('mass', massKg, text.system)}` }))
  const right = at.width - 4
  const rows = rowsOf(named.map(({ x, caption }) => ({ x, width: widthOf(caption, text.size) })))
  return named.flatMap(({ x, long, caption }, index): Shape[] => {
    const arrow = force(x, footY - long, footY, 'ink', 2.6)
    if (text.isSmall) return arrow
    const baseY = footY - highestOf(load.items, perKg) - 8 - (rows[index] ?? 0) * (text.size + 6)
    const runsOut = x + widthOf(caption, text.size) > right
    return [line([{ x, y: footY - long }, { x, y: baseY - text.size + 2 }], { stroke: 'hairline', weight: 1.4 }), ...arrow, label(x + (runsOut ? -6 : 6), baseY, caption, text.size, { ...(runsOut && { anchor: 'end' as const }) })]
  })
}

/** Units of drawing for each kg, from the heaviest arrow there is. */
export const perKgOf = ({ load, balance }: Sums): number => {
  const heaviest = Math.max(1, ...load.items.map(({ massKg }) => massKg ?? 0), Math.abs(balance.lever?.axleKg ?? 0), Math.abs(balance.lever?.couplingKg ?? 0))
  return longest / heaviest
}

/** The centre of mass: a quartered disc, and the place 'centre'. */
export const centreMark = ({ balance }: Sums, at: SideLayout): { readonly shapes: readonly Shape[]; readonly places: readonly Place[] } => {
  const centreM = balance.lever?.centreM
  if (centreM === undefined) return { shapes: [], places: [] }
  const [x, y, r] = [at.x(centreM), at.y(balance.stability?.centreHeightM ?? at.deckM + 0.34), 13]
  return {
    shapes: [
      line([{ x, y: y + r }, { x, y: at.groundY }], { stroke: 'select', weight: 1.4, dashed: true }),
      circle(x, y, r, { stroke: 'ink', fill: 'paper', weight: 2 }),
      path(`M${x.toFixed(1)} ${y.toFixed(1)} v-${r} a${r} ${r} 0 0 1 ${r} ${r} Z M${x.toFixed(1)} ${y.toFixed(1)} v${r} a${r} ${r} 0 0 1 -${r} -${r} Z`, { fill: 'ink' }),
    ],
    places: [{ id: 'centre', x, y }],
  }
}

/** What ball and axles bear, as arrows up from below the ground with their figures; places 'coupling' and 'axle'. */
export const reactions = ({ balance }: Sums, at: SideLayout, perKg: number, text: SideText): { readonly shapes: readonly Shape[]; readonly places: readonly Place[] } => {
  const { lever, axleLoads, standing } = balance
  const [ballX, axleX] = [at.x(0), at.x(at.middleM)]
  const places = [{ id: 'coupling', x: ballX, y: at.y(at.ballM) }, { id: 'axle', x: axleX, y: at.y(at.wheelM) }]
  if (!lever) return { shapes: [], places }
  const said = text.words.sums.drawing
  const tipY = at.groundY + 10
  const couplingKg = axleLoads?.couplingKg ?? lever.couplingKg
  const long = (massKg: number): number => Math.max(Math.abs(massKg) * perKg, shortest)
  const role: Role = standing === 'within' ? 'pass' : standing === 'light' || standing === 'heavy' || standing === 'very light' || standing === 'very heavy' ? 'advisory' : 'fail'
  const coupling = couplingKg < 0 ? force(ballX, tipY, tipY + long(couplingKg), role, 4) : force(ballX, tipY + long(couplingKg), tipY, role, 4)
  const each = axleLoads?.axlesKg?.length === at.axlesM.length ? axleLoads.axlesKg.map((massKg, index) => ({ atM: at.axlesM[index] ?? at.middleM, massKg })) : [{ atM: at.middleM, massKg: lever.axleKg }]
  const figure = { coupling: measured('mass', couplingKg), share: shareText(couplingKg / lever.totalKg, text.system), axles: measured('mass', lever.totalKg - couplingKg) }
  const axleLabelX = at.x(Math.max(...each.map(({ atM }) => atM))) + 14
  return {
    places,
    shapes: [
      ...coupling, ...each.flatMap(({ atM, massKg }) => (massKg < 0 ? force(at.x(atM), tipY, tipY + long(massKg), 'fail', 4) : force(at.x(atM), tipY + long(massKg), tipY, 'ink', 4))),
      ...backed(ballX + 14, tipY + text.size + 8, say(said.coupling, figure, text.system), text.size * 1.15, { bold: true }),
      ...backed(ballX + 14, tipY + text.size * 2.4 + 8, say(said.share, figure, text.system), text.size),
      ...backed(axleLabelX, tipY + text.size + 8, say(said.axles, figure, text.system), text.size * 1.15, { bold: true }),
    ],
  }
}

/** Room below the ground for the reactions, on a step, so that it stays put while something is moved. */
export const reactionRoom = ({ balance: { lever, axleLoads } }: Sums, perKg: number, { size }: SideText): number => {
  const loads = [...(axleLoads?.axlesKg ?? [lever?.axleKg ?? 0]), lever?.couplingKg ?? 0].map((massKg) => Math.abs(massKg) * perKg)
  return Math.max(Math.ceil(Math.max(...loads) / 32) * 32 + 14, size * 3.2)
}
