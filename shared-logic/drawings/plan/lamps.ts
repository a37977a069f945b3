import type { Rig } from '../../rig/rig'
import { lampPositions, reflectorPositions } from '../../rules/lamp-positions'
import type { RuleBook } from '../../rules/rule-book'
import type { Place, Shape } from '../drawing'
import { box, circle, line } from '../strokes'
import type { Part } from './frame'
import type { PlanLayout } from './layout'

/** How far along (0 ball, 1 rear) and across (0 middle, 1 outer edge) a kind of lamp sits. */
const spots: readonly { readonly kind: RegExp; readonly along: number; readonly across: number }[] = [
  { kind: /tail/, along: 1, across: 0.92 },
  { kind: /stop/, along: 1, across: 0.74 },
  { kind: /turn/, along: 1, across: 0.56 },
  { kind: /plate/, along: 1, across: 0.26 },
  { kind: /fog/, along: 1, across: -0.3 },
  { kind: /reversing/, along: 1, across: 0.12 },
  { kind: /identification/, along: 1, across: 0 },
  { kind: /side marker front|side front/, along: 0.34, across: 1 },
  { kind: /side marker middle|side middle/, along: 0.55, across: 1.04 },
  { kind: /side marker rear|side rear/, along: 0.93, across: 1 },
  { kind: /clearance/, along: 0.6, across: 1.06 },
  { kind: /front/, along: 0.32, across: 0.86 },
  { kind: /triangle|rear/, along: 1.012, across: 0.38 },
]

const placeOf = (position: string, at: PlanLayout): Place | undefined => {
  const spot = spots.find(({ kind }) => kind.test(position))
  if (!spot) return undefined
  const sign = position.endsWith('left') || position === 'lamp plate' ? -1 : 1
  return { id: position, x: sign * spot.across * at.halfWidth, y: spot.along * at.length }
}

/** Lamps as the rule book places them; reflectors as small rings. */
export const lampsPart = (rig: Rig, ruleBook: RuleBook, at: PlanLayout): Part => {
  const lamps = lampPositions(rig.trailer, ruleBook).flatMap((position) => placeOf(position, at) ?? [])
  const reflectors = reflectorPositions(rig.trailer, ruleBook).flatMap((position) => placeOf(position, at) ?? [])
  const beam = { stroke: 'metal', weight: 1.6 } as const
  const rear = at.length - 4
  const stubs = lamps
    .filter(({ x, y }) => y < rear - 10 && Math.abs(x) > at.railX)
    .map(({ x, y }) => line([{ x: Math.sign(x) * at.railX, y }, { x, y }], { stroke: 'metal', weight: 1.2 }))
  const shapes: Shape[] = [
    line([{ x: -at.halfWidth * 0.96, y: rear }, { x: at.halfWidth * 0.96, y: rear }], beam),
    ...stubs,
    ...lamps.map(({ x, y }) => box(x - 8, y - 4, 16, 8, { stroke: 'ink', fill: 'paper', weight: 1.6 }, 2)),
    ...reflectors.map(({ x, y }) => circle(x, y + (y > at.length * 0.9 ? 12 : 14), 3.5, { stroke: 'ink', weight: 1.2 })),
  ]
  return { shapes, places: [...lamps, ...reflectors.map((place) => ({ ...place, y: place.y + 13 }))] }
}
