import type { TieDownPlan } from '../../lashing/plan'
import type { PlannedStrap } from '../../lashing/planned-strap'
import type { Place, Role, Shape } from '../drawing'
import { circle, label, line, type Point } from '../strokes'
import type { LashingLayout } from './background'

/** Advice that does not concern which way the strap pulls leaves it in the strap's own colour. */
const mild = new Set(['crosses the hull edge', 'steep'])

const roleOf = (index: number, { advisories }: TieDownPlan): Role => (advisories.some((row) => row.index === index && !mild.has(row.id)) ? 'advisory' : 'strap')
const degreesOf = (rad: number): string => `${Math.round((Math.abs(rad) * 180) / Math.PI)}°`

/** One strap in one view: the webbing, its two ends, its number at a third of its way, its angle beside the trailer end. */
const drawn = (from: Point, to: Point, number: string, angle: string, role: Role): Shape[] => {
  const long = Math.hypot(to.x - from.x, to.y - from.y) || 1
  const unit = { x: (to.x - from.x) / long, y: (to.y - from.y) / long }
  const mark = { x: from.x + (to.x - from.x) * 0.4, y: from.y + (to.y - from.y) * 0.4 }
  return [
    line([from, to], { stroke: role, weight: 4.5 }),
    circle(from.x, from.y, 5, { stroke: 'ink', fill: 'paper', weight: 2 }),
    circle(to.x, to.y, 5, { stroke: 'ink', fill: 'ink', weight: 2 }),
    label(to.x + unit.x * 12 + (unit.x < 0 ? -4 : 4), to.y + unit.y * 12 + (unit.y < -0.3 ? 0 : 9), angle, 14, { anchor: unit.x < 0 ? 'end' : 'start' }),
    circle(mark.x, mark.y, 11, { stroke: 'ink', fill: 'paper', weight: 1.8 }),
    label(mark.x, mark.y + 5, number, 14, { anchor: 'middle', bold: true }),
  ]
}

/** A strap from the side and from above; over the top also its other half. */
export const strapMarks = ({ index, strap, lead }: PlannedStrap, plan: TieDownPlan, at: LashingLayout): { readonly shapes: readonly Shape[]; readonly places: readonly Place[] } => {
  const { boat, trailer } = strap
  if (!boat || !trailer || !lead) return { shapes: [], places: [] }
  const role = roleOf(index, plan)
  const number = String(index + 1)
  const above = (end: typeof boat, mirror = 1): Point => ({ x: at.x(end.aftOfBallM), y: at.plan(mirror * end.toRightM) })
  const beside = (end: typeof boat): Point => ({ x: at.x(end.aftOfBallM), y: at.side(end.heightM) })
  const [edge, anchor] = [above(boat, -1), above(trailer, -1)]
  const over = strap.route === 'over the top'
    ? [line([above(boat), edge, anchor], { stroke: role, weight: 4.5 }), circle(edge.x, edge.y, 5, { stroke: 'ink', fill: 'paper', weight: 2 }), circle(anchor.x, anchor.y, 5, { stroke: 'ink', fill: 'ink', weight: 2 })]
    : []
  const middle = { x: (above(boat).x + above(trailer).x) / 2, y: (above(boat).y + above(trailer).y) / 2 }
  return {
    shapes: [...drawn(beside(boat), beside(trailer), number, degreesOf(lead.downRad), role), ...over, ...drawn(above(boat), above(trailer), number, degreesOf(lead.offRad), role)],
    places: [{ id: `strap ${number}`, ...middle }],
  }
}
