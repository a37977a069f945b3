import { assertNever } from '../assert-never'
import type { Shape } from '../drawings/drawing'
import { path, type Point } from '../drawings/strokes'
import type { PixelPoint } from '../measuring/measurement'
import { markSizes } from './mark-sizes'
import type { Mark } from './marks'

/** What is stroked, and what is filled as well, as SVG path data. */
interface Outline {
  readonly d: string
  readonly isFilled?: true
}

const round = (value: number): number => Math.round(value * 10) / 10
const at = (x: number, y: number): string => `${round(x)} ${round(y)}`

/** Along the line from one point to the other, and at right angles to it, each one px long; along x where the two are one. */
export const waysOf = ([x1, y1]: PixelPoint, [x2, y2]: PixelPoint): { readonly along: Point; readonly across: Point; readonly long: number } => {
  const long = Math.hypot(x2 - x1, y2 - y1)
  const along = long === 0 ? { x: 1, y: 0 } : { x: (x2 - x1) / long, y: (y2 - y1) / long }
  return { along, across: { x: -along.y, y: along.x }, long }
}

/** Shaft and head. The head keeps its shape on a short arrow and is then no longer than the arrow. */
export const arrowOutlines = (from: PixelPoint, to: PixelPoint, unit: number): readonly [shaft: Outline, head: Outline] => {
  const { along, across, long } = waysOf(from, to)
  const headLong = Math.min(markSizes.headLong * unit, long)
  const half = (headLong * markSizes.headWide) / markSizes.headLong / 2
  const [baseX, baseY] = [to[0] - along.x * headLong, to[1] - along.y * headLong]
  const head = [to, [baseX + across.x * half, baseY + across.y * half], [baseX - across.x * half, baseY - across.y * half]] as const
  return [{ d: `M${at(...from)} L${at(baseX, baseY)}` }, { d: `M${head.map(([x, y]) => at(x, y)).join(' L')} Z`, isFilled: true }]
}

/** How far a cubic curve's handles stand out to follow a quarter of a circle, of its radius. Source: plane geometry, 4/3 · tan(π/8). */
const quarter = (4 / 3) * Math.tan(Math.PI / 8)

/** The ellipse that touches the sides of the box in their middles. */
export const ellipseIn = ([x1, y1]: PixelPoint, [x2, y2]: PixelPoint): string => {
  const [cx, cy, rx, ry] = [(x1 + x2) / 2, (y1 + y2) / 2, Math.abs(x2 - x1) / 2, Math.abs(y2 - y1) / 2]
  const arc = (ax: number, ay: number, bx: number, by: number, x: number, y: number): string => `C${at(cx + ax * rx, cy + ay * ry)} ${at(cx + bx * rx, cy + by * ry)} ${at(cx + x * rx, cy + y * ry)}`
  return `M${at(cx + rx, cy)} ${arc(1, quarter, quarter, 1, 0, 1)} ${arc(-quarter, 1, -1, quarter, -1, 0)} ${arc(-1, -quarter, -quarter, -1, 0, -1)} ${arc(quarter, -1, 1, -quarter, 1, 0)} Z`
}

const boxOf = ([x1, y1]: PixelPoint, [x2, y2]: PixelPoint): string => `M${at(x1, y1)} L${at(x2, y1)} L${at(x2, y2)} L${at(x1, y2)} Z`

/** A line through the points, its corners rounded off: each point bends the line from one middle to the next. */
const handDrawn = (points: readonly PixelPoint[]): string => {
  const [first = [0, 0], ...rest] = points
  const last = rest.at(-1) ?? first
  const bends = rest.slice(0, -1).map(([x, y], index) => {
    const [nextX, nextY] = rest[index + 1] ?? last
    return `Q${at(x, y)} ${at((x + nextX) / 2, (y + nextY) / 2)}`
  })
  return [`M${at(...first)}`, ...bends, `L${at(...last)}`].join(' ')
}

/** A bar across either end of a line. */
const bars = (from: PixelPoint, to: PixelPoint, unit: number): string => {
  const { across } = waysOf(from, to)
  const reach = markSizes.endBar * unit
  return [from, to].map(([x, y]) => `M${at(x + across.x * reach, y + across.y * reach)} L${at(x - across.x * reach, y - across.y * reach)}`).join(' ')
}

const barred = (from: PixelPoint, to: PixelPoint, unit: number): string => `M${at(...from)} L${at(...to)} ${bars(from, to, unit)}`

const outlinesOf = (mark: Mark, unit: number): readonly Outline[] => {
  switch (mark.kind) {
    case 'arrow': return arrowOutlines(mark.from, mark.to, unit)
    case 'circle': return [{ d: ellipseIn(mark.from, mark.to) }]
    case 'box': return [{ d: boxOf(mark.from, mark.to) }]
    case 'freehand': return [{ d: handDrawn(mark.points) }]
    case 'length': return [{ d: barred(mark.from, mark.to, unit) }]
    case 'text': return []
    default: return assertNever(mark)
  }
}

/** The lines of one mark: the casing below, the core upon it. `unit`: px of the picture to a point on the page. */
export const markLines = (mark: Mark, unit: number): Shape[] => {
  const outlines = outlinesOf(mark, unit)
  return [
    ...outlines.map(({ d }) => path(d, { stroke: 'casing', weight: markSizes.casing * unit })),
    ...outlines.map(({ d, isFilled }) => path(d, { stroke: 'mark', weight: markSizes.core * unit, ...(isFilled && { fill: 'mark' }) })),
  ]
}

/** Fields of a known length along its line, dark and light in turn, as on a staff. */
const fields = 5

/** The known length, drawn like a staff: it is told from what was measured by it. */
export const knownLines = ({ from, to }: { readonly from: PixelPoint; readonly to: PixelPoint }, unit: number): Shape[] => {
  const point = (share: number): string => at(from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share)
  const dark = [0, 2, 4].map((field) => `M${point(field / fields)} L${point((field + 1) / fields)}`)
  return [
    path(barred(from, to, unit), { stroke: 'casing', weight: markSizes.casing * unit }),
    path([bars(from, to, unit), ...dark].join(' '), { stroke: 'mark', weight: markSizes.core * unit }),
  ]
}
