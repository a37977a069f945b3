import type { Rig } from '../../rig/rig'
import type { Place, Shape } from '../drawing'
import { box, circle, line } from '../strokes'
import type { Part } from './frame'
import type { PlanLayout } from './layout'

const sides = [
  { name: 'left', sign: -1 },
  { name: 'right', sign: 1 },
] as const

/** Braked axles are the rear ones where only some are braked, as in `checks/positions`. */
const isBraked = ({ trailer }: Rig, axleIndex: number, axleCount: number): boolean =>
  trailer.brakes !== undefined && trailer.brakes !== 'none' && axleIndex >= axleCount - (trailer.brakedAxleCount ?? axleCount)

const wheel = (sign: number, y: number, at: PlanLayout, braked: boolean): Shape[] => {
  const outer = sign * at.halfWidth
  const left = sign < 0 ? outer : outer - at.tyreWidth
  const hubX = outer - sign * at.tyreWidth
  return [
    box(left, y - at.wheelLength / 2, at.tyreWidth, at.wheelLength, { stroke: 'rubber', fill: 'faint', weight: 2.4 }, 9),
    ...(braked ? [box(hubX - (sign > 0 ? 9 : 0), y - 22, 9, 44, { stroke: 'ink', weight: 1.8 }, 2)] : []),
    circle(hubX - sign * 4, y, 7, { stroke: 'ink', fill: 'paper', weight: 2 }),
  ]
}

const guard = (sign: number, at: PlanLayout): Shape => {
  const first = at.axleYs[0] ?? 0
  const last = at.axleYs.at(-1) ?? first
  const x = sign < 0 ? -at.halfWidth - 4 : at.halfWidth - at.tyreWidth - 4
  return box(x, first - at.wheelLength * 0.62, at.tyreWidth + 8, last - first + at.wheelLength * 1.24, { stroke: 'metal', weight: 1.4 }, 14)
}

/** Axles, wheels, hubs, brakes and mudguards. With the number of axles not known one dashed axle stands for all. */
export const runningGearPart = (rig: Rig, at: PlanLayout): Part => {
  const count = at.axleYs.length
  const shapes: Shape[] = []
  const places: Place[] = []
  for (const { sign } of sides) shapes.push(guard(sign, at))
  for (const [index, y] of at.axleYs.entries()) {
    const axle = at.axleCountKnown ? `axle ${index + 1}` : 'all axles'
    shapes.push(line([{ x: -at.halfWidth + at.tyreWidth, y }, { x: at.halfWidth - at.tyreWidth, y }], { stroke: 'metal', weight: 4, ...(!at.axleCountKnown && { dashed: true as const }) }))
    places.push({ id: axle, x: 0, y })
    for (const { name, sign } of sides) {
      shapes.push(...wheel(sign, y, at, isBraked(rig, index, count)))
      if (at.axleCountKnown) places.push({ id: `${axle} ${name}`, x: sign * (at.halfWidth - at.tyreWidth), y })
    }
  }
  return { shapes, places }
}
