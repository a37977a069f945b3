import type { DirectionHold, Standing } from '../lashing/direction-hold'
import type { PullDirection } from '../lashing/geometry'
import type { TieDownPlan } from '../lashing/plan'
import type { Rig } from '../rig/rig'
import { formatQuantity } from '../units/convert'
import { measured, type UnitSystem } from '../units/quantity'
import type { Words } from '../words/en'
import { say } from '../words/say'
import type { Drawing, Role, Shape } from './drawing'
import { arrow } from './instruments/scale'
import { lashingBackground, lashingLayout, type LashingLayout } from './lashing/background'
import { strapMarks } from './lashing/strap-marks'
import { label } from './strokes'

const roleOf: Readonly<Record<Standing, Role>> = { holds: 'pass', short: 'fail', 'rests on the bow stop': 'advisory', waits: 'not seen' }

interface ArrowRow {
  readonly direction: Exclude<PullDirection, 'up'>
  readonly along: number
  readonly across: number
}
const arrowRows: readonly ArrowRow[] = [
  { direction: 'forward', along: -1, across: 0 },
  { direction: 'rearward', along: 1, across: 0 },
  { direction: 'left', along: 0, across: 1 },
  { direction: 'right', along: 0, across: -1 },
]
const percent = (hold: DirectionHold, system: UnitSystem): string => formatQuantity('ratio', Math.round(hold.share * 100) / 100, system)

/** Which way the boat would go, with the share of the need that is held, in the middle of the plan. */
const shares = (plan: TieDownPlan, at: LashingLayout, system: UnitSystem): Shape[] =>
  arrowRows.flatMap(({ direction, along, across }): Shape[] => {
    const hold = plan.methods[0]?.directions.find((row) => row.direction === direction)
    if (!hold) return []
    const role = roleOf[hold.standing]
    const [x, y] = [at.middleX, at.planY]
    const tip = { x: x + along * 92, y: y + across * 62 }
    return [
      ...arrow({ x: x + along * 26, y: y + across * 30 }, tip, role),
      along === 0 ? label(tip.x + 10, tip.y + 5, percent(hold, system), 15, { bold: true }) : label(x + along * 58, y - 10, percent(hold, system), 15, { anchor: 'middle', bold: true }),
    ]
  })

const rowHeight = 24

/** Under the plan, strap by strap: the force it must bear with all straps alike, and what it counts as. */
const forces = ({ straps, toBuy }: TieDownPlan, at: LashingLayout, words: Words, system: UnitSystem): Shape[] =>
  straps.flatMap(({ index, strap, limitN }): Shape[] => {
    const needed = toBuy.find((row) => row.index === index)?.neededN
    if (needed === undefined) return []
    const { strap: plain, strapRated } = words.tieDownPlan.drawing
    const values = { number: index + 1, strap: strap.position, needed: measured('force', needed), ...(limitN !== undefined && { rating: measured('force', limitN) }) }
    const [column, row] = [index % 2, Math.floor(index / 2)]
    return [label(24 + column * at.width * 0.48, at.height + 4 + row * rowHeight, say(limitN === undefined ? plain : strapRated, values, system), 14)]
  })

/**
 * The straps of a plan from the side and from above, ball to the left: each with its number, its angle below the level (side) and
 * off the long axis (plan); the share of the need held in each direction in the middle; the force on each below. Places: 'strap 1' and so on, in the plan.
 *
 * Straps are to scale from their ends; a strap known by angles alone is not drawn. `toScale` is false while trailer and boat are a sketch.
 */
export const lashingPlanDrawing = (rig: Rig, plan: TieDownPlan, words: Words, system: UnitSystem): Drawing => {
  const at = lashingLayout(rig, plan)
  const marks = plan.straps.map((planned) => strapMarks(planned, plan, at))
  const foot = at.height + Math.ceil(plan.straps.length / 2) * rowHeight + (at.toScale ? 0 : 30)
  const isEmpty = marks.every(({ shapes }) => shapes.length === 0)
  return {
    viewBox: [0, 0, at.width, foot],
    shapes: [
      label(24, 34, words.tieDownPlan.drawing.side, 17, { bold: true }),
      label(24, at.planTop - 8, words.tieDownPlan.drawing.plan, 17, { bold: true }),
      ...lashingBackground(rig, at),
      ...shares(plan, at, system),
      ...marks.flatMap(({ shapes }) => shapes),
      ...forces(plan, at, words, system),
      ...(at.toScale ? [] : [label(24, foot - 12, words.tieDownPlan.drawing.sketch, 14)]),
      ...(isEmpty ? [label(at.middleX, at.planY - 90, words.tieDownPlan.drawing.none, 15, { anchor: 'middle' })] : []),
    ],
    places: marks.flatMap(({ places }) => places),
    toScale: at.toScale,
  }
}
