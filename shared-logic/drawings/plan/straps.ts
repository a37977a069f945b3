import type { Rig } from '../../rig/rig'
import { line } from '../strokes'
import type { Part } from './frame'
import type { PlanLayout } from './layout'

/** The four tie-downs a boat trailer should have: winch strap, second bow tie, and two at the transom. */
export const strapsPart = (rig: Rig, at: PlanLayout): Part => {
  const strap = { stroke: 'strap', weight: 3.4 } as const
  const corner = { x: at.halfBeam * 0.8, y: at.sternY - 6 }
  const anchorY = Math.min(at.sternY - 66, at.length - 20)
  const onBoard = rig.boat !== undefined
  return {
    shapes: onBoard
      ? [
          line([{ x: 0, y: at.bowY - 12 }, { x: 0, y: at.bowY + 9 }], strap),
          line([{ x: 4, y: at.bowY + 10 }, { x: 16, y: at.bowY + 58 }], { ...strap, dashed: true }),
          line([{ x: -corner.x, y: corner.y }, { x: -at.railX, y: anchorY }], strap),
          line([corner, { x: at.railX, y: anchorY }], strap),
        ]
      : [],
    places: [
      { id: 'strap winch', x: 0, y: at.bowY - 2 },
      { id: 'strap bow tie', x: 14, y: at.bowY + 46 },
      { id: 'strap transom left', x: -corner.x, y: corner.y - 16 },
      { id: 'strap transom right', x: corner.x, y: corner.y - 16 },
    ],
  }
}
