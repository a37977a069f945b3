import type { Rig } from '../../rig/rig'
import type { RuleBook } from '../../rules/rule-book'
import type { Verdict } from '../../survey/verdict'
import type { UnitSystem } from '../../units/quantity'
import type { Words } from '../../words/en'
import type { Drawing, Place, Shape } from '../drawing'
import { circle, line, type Point } from '../strokes'
import { areaCircles, type AreaCircles } from './area-scale'
import { spotLegend } from './legend'
import { rigView, type RigView, type SpotView, type SpotWhere } from './rig-view'
import { spreadAlong } from './spread-along'
import { numberInVerdict, roleOfVerdict } from './verdict-shape'

/** A corroded spot to be drawn: numbered as in the table beside. `areaM2` absent where it was not measured. */
export interface SpotMark extends SpotWhere {
  readonly number: number
  readonly areaM2?: number | undefined
  readonly verdict: Verdict
}

export interface SpotPlanText {
  readonly words: Words
  readonly units: UnitSystem
  /** Shown small, as on a telephone: larger figures. */
  readonly isSmall?: boolean
}

/** Sizes in drawing units: figures, the largest circle, and how far numbers stay apart (a finger on a telephone). */
interface Sizes {
  readonly figure: number
  readonly mostRadius: number
  readonly apart: number
  readonly weight: number
}

const sizesFor = (view: SpotView, isSmall: boolean): Sizes =>
  view === 'plan' ? { figure: 22, mostRadius: 26, apart: 62, weight: 3 } : isSmall ? { figure: 38, mostRadius: 44, apart: 128, weight: 5 } : { figure: 20, mostRadius: 26, apart: 64, weight: 3 }

interface Drawn {
  readonly mark: SpotMark
  readonly point: Point
  readonly radius: number
}

/** Spots that have no place of their own and share a part stand in a row along it. */
const drawnSpots = (marks: readonly SpotMark[], { spotAt }: RigView, view: SpotView, circles: AreaCircles | undefined, { mostRadius }: Sizes): Drawn[] => {
  const step = mostRadius * 0.8
  return marks.map((mark) => {
    const fellows = marks.filter(({ at, position }) => at === undefined && position === mark.position)
    const along = mark.at === undefined ? (fellows.indexOf(mark) - (fellows.length - 1) / 2) * step : 0
    const { x, y } = spotAt(mark)
    const radius = mark.areaM2 === undefined || circles === undefined ? mostRadius * 0.4 : circles.radiusOf(mark.areaM2)
    return { mark, radius, point: view === 'plan' ? { x, y: y + along } : { x: x + along, y } }
  })
}

interface Numbered extends Drawn {
  readonly number: Point
}

interface Numbers {
  readonly placed: readonly Numbered[]
  /** Lanes taken before and after the rig: left and right of the plan, above and below the side view. */
  readonly before: number
  readonly after: number
}

const lanesOf = (spread: readonly { readonly lane: number }[]): number => Math.max(0, ...spread.map(({ lane }) => lane + 1))

/** Numbers beside the plan: left of what lies left, right of what lies right; the middle to the side with fewer. */
const besidePlan = (drawn: readonly Drawn[], { viewBox: [left, top, width, height] }: RigView, { apart }: Sizes): Numbers => {
  const isLeft = new Set<Drawn>(drawn.filter(({ point }) => point.x < -1))
  const middle = drawn.filter(({ point }) => Math.abs(point.x) <= 1)
  for (const each of middle) if (isLeft.size * 2 < drawn.length) isLeft.add(each)
  const sideOf = (group: readonly Drawn[], xOf: (lane: number) => number): { placed: Numbered[]; lanes: number } => {
    const spread = spreadAlong(group.map(({ point }) => point.y), top + apart / 2, top + height - apart / 2, apart)
    return { placed: group.map((each, index) => ({ ...each, number: { x: xOf(spread[index]?.lane ?? 0), y: spread[index]?.at ?? top } })), lanes: lanesOf(spread) }
  }
  const before = sideOf(drawn.filter((each) => isLeft.has(each)), (lane) => left - apart * (lane + 0.4))
  const after = sideOf(drawn.filter((each) => !isLeft.has(each)), (lane) => left + width + apart * (lane + 0.4))
  return { placed: [...before.placed, ...after.placed], before: before.lanes, after: after.lanes }
}

/** Numbers above what lies high and below what lies low, as the rig's side view leaves room. */
const besideSide = (drawn: readonly Drawn[], { viewBox: [left, top, width, height] }: RigView, { apart }: Sizes): Numbers => {
  const foot = top + height
  const rowOf = (group: readonly Drawn[], yOf: (lane: number) => number): { placed: Numbered[]; lanes: number } => {
    const spread = spreadAlong(group.map(({ point }) => point.x), left + apart / 2, left + width - apart / 2, apart)
    return { placed: group.map((each, index) => ({ ...each, number: { x: spread[index]?.at ?? left, y: yOf(spread[index]?.lane ?? 0) } })), lanes: lanesOf(spread) }
  }
  const isHigh = ({ point }: Drawn): boolean => point.y < top + height * 0.6
  const above = rowOf(drawn.filter(isHigh), (lane) => top - apart * (lane + 0.4))
  const below = rowOf(drawn.filter((each) => !isHigh(each)), (lane) => foot + apart * (lane + 0.5))
  return { placed: [...above.placed, ...below.placed], before: above.lanes, after: below.lanes }
}

const spotShapes = ({ mark, point, radius, number }: Numbered, { figure, weight }: Sizes): Shape[] => {
  const [dx, dy] = [number.x - point.x, number.y - point.y]
  const long = Math.hypot(dx, dy) || 1
  const edge = { x: point.x + (dx / long) * radius, y: point.y + (dy / long) * radius }
  return [
    line([edge, number], { stroke: 'ink', weight: weight * 0.4 }),
    circle(point.x, point.y, radius, { stroke: roleOfVerdict[mark.verdict], weight, ...(mark.areaM2 === undefined && { dashed: true as const }) }),
    circle(point.x, point.y, weight * 0.6, { fill: 'ink' }),
    ...numberInVerdict(mark.number, mark.verdict, number.x, number.y, figure),
  ]
}

const placeOf = ({ mark, number }: Numbered): Place => ({ id: `spot ${mark.number}`, x: number.x, y: number.y })

/**
 * The rig from above or from the side with its corroded spots: circles sized by area, each led to its number, which stands in the outline of
 * its verdict; a legend below gives the scale of areas. Places: 'spot 1' and so on, at the numbers.
 */
export const corrosionPlan = (rig: Rig, ruleBook: RuleBook, marks: readonly SpotMark[], view: SpotView, text: SpotPlanText): Drawing => {
  const base = rigView(rig, ruleBook, view)
  const sizes = sizesFor(view, text.isSmall ?? false)
  const circles = areaCircles(marks.flatMap(({ areaM2 }) => areaM2 ?? []), sizes.mostRadius, text.units)
  const drawn = drawnSpots(marks, base, view, circles, sizes)
  const { placed, before, after } = view === 'plan' ? besidePlan(drawn, base, sizes) : besideSide(drawn, base, sizes)
  const [left, top, width, height] = base.viewBox
  const [wider, over, under] = view === 'plan' ? [Math.max(before, after, 1) * sizes.apart, 0, 0] : [0, before * sizes.apart, after * sizes.apart]
  const legend = spotLegend(
    { circles, verdictsShown: new Set(marks.map(({ verdict }) => verdict)), unmeasuredRadius: marks.some(({ areaM2 }) => areaM2 === undefined) ? sizes.mostRadius * 0.4 : undefined, text, size: sizes.figure },
    left - wider, top + height + under + sizes.figure * 0.4, width + wider * 2,
  )
  return {
    viewBox: [left - wider, top - over, width + wider * 2, Math.round((marks.length === 0 ? top + height : legend.foot) - (top - over))],
    shapes: [...base.shapes, ...placed.flatMap((each) => spotShapes(each, sizes)), ...legend.shapes],
    places: placed.map(placeOf), toScale: base.toScale,
  }
}
