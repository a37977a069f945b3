import type { Rig } from '../../rig/rig'
import type { Place, Shape } from '../drawing'
import { box, circle, line } from '../strokes'
import type { PlanLayout } from './layout'

export interface Part {
  readonly shapes: readonly Shape[]
  readonly places: readonly Place[]
}

const member = 9

/** Where the cross-members lie between the end of the tongue and the rear. */
const crossShares = { first: 0, second: 0.36, third: 0.7, last: 0.97 } as const

/** Coupler, tongue, rails, cross-members, winch post, chains, jack. */
export const framePart = (rig: Rig, at: PlanLayout): Part => {
  const { railX, length, tongueEnd } = at
  const metal = { stroke: 'metal', weight: 2.4 } as const
  const rail = (x: number): Shape => box(x - member / 2, tongueEnd, member, length - tongueEnd, metal)
  const crossY = (share: number): number => tongueEnd + (length - tongueEnd) * share
  const cross = Object.values(crossShares).map((share) => box(-railX, crossY(share), railX * 2, member, metal))
  const winchY = at.bowY - 26
  return {
    shapes: [
      line([{ x: -4, y: 12 }, { x: -railX, y: tongueEnd }], metal),
      line([{ x: 4, y: 12 }, { x: railX, y: tongueEnd }], metal),
      line([{ x: -railX * 0.48, y: tongueEnd * 0.5 }, { x: railX * 0.48, y: tongueEnd * 0.5 }], metal),
      ...cross,
      rail(-railX),
      rail(railX),
      box(-9, -16, 18, 40, { stroke: 'ink', fill: 'paper', weight: 2.6 }, 8),
      circle(0, -4, 6, { stroke: 'ink', weight: 2 }),
      line([{ x: -8, y: 24 }, { x: -22, y: 6 }, { x: -16, y: -14 }], { stroke: 'ink', weight: 1.6, dashed: true }),
      line([{ x: 8, y: 24 }, { x: 22, y: 6 }, { x: 16, y: -14 }], { stroke: 'ink', weight: 1.6, dashed: true }),
      box(-13, winchY - 14, 26, 22, { stroke: 'ink', fill: 'paper', weight: 2.4 }, 3),
      line([{ x: -17, y: winchY + 16 }, { x: 0, y: winchY + 8 }, { x: 17, y: winchY + 16 }], { stroke: 'ink', weight: 3 }),
      ...(rig.trailer.jack === false ? [] : [circle(-30, tongueEnd * 0.36, 8, { stroke: 'ink', fill: 'paper', weight: 2 })]),
      ...(rig.trailer.spareWheel === true ? [box(railX * 0.42, tongueEnd * 0.56, at.tyreWidth * 0.85, at.wheelLength * 0.9, { stroke: 'rubber', fill: 'paper', weight: 2 }, 8)] : []),
    ],
    places: [
      { id: 'chain left', x: -22, y: 6 },
      { id: 'chain right', x: 22, y: 6 },
      // On its left arm: in the middle it would lie under the winch post.
      { id: 'tongue', x: -railX * 0.48, y: tongueEnd * 0.5 },
      { id: 'left rail', x: -railX, y: (tongueEnd + at.bottom * 0.5) / 2 },
      { id: 'right rail', x: railX, y: (tongueEnd + at.bottom * 0.5) / 2 },
      { id: 'cross-members', x: 0, y: crossY(crossShares.second) },
      { id: 'winch post', x: 0, y: winchY },
      { id: 'bunk brackets', x: railX * 0.62, y: crossY(crossShares.third) },
      { id: 'roller brackets', x: -railX * 0.3, y: crossY(crossShares.third) },
      { id: 'spare', x: railX * 0.42 + at.tyreWidth * 0.4, y: tongueEnd * 0.56 + at.wheelLength * 0.45 },
    ],
  }
}
