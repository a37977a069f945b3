import type { Rig } from '../rig/rig'
import type { Sums } from '../sums/sums'
import type { UnitSystem } from '../units/quantity'
import type { Words } from '../words/en'
import type { Drawing } from './drawing'
import { boatFromSide } from './side/boat'
import { dimensionLines } from './side/dimensions'
import { sideLayout, sideSpanOf, type SideLayout, type SideSpan } from './side/layout'
import { centreMark, loadArrows, loadRoom, perKgOf, reactionRoom, reactions, type SideText } from './side/loads'
import { trailerFromSide } from './side/trailer'
import { label } from './strokes'

export interface SideChoices {
  /** Shown small, as on a telephone: larger figures, and only those that count. */
  readonly isSmall?: boolean
  /** What is shown along the ground; by the rig itself when left away. */
  readonly span?: SideSpan
}

/** A side view and how metres aft of the ball become its x, so that what is dragged knows where it is. */
export interface SideView extends Drawing {
  readonly xOf: SideLayout['x']
}

/**
 * The rig from the side with its coupler at the left: to scale along its length, heights sketched where they are not known.
 *
 * Loads as arrows down, as long as their masses; coupling and axle loads as arrows up with their figures; centre of mass; dimensions of what is
 * known. Places: 'boat' (the stem's head), 'axle', 'coupling', 'centre', 'tank 1', 'gear 1'. `toScale` is false while a length is not known.
 */
export const sideView = (rig: Rig, sums: Sums, words: Words, system: UnitSystem, { isSmall = false, span = sideSpanOf(rig) }: SideChoices = {}): SideView => {
  const text: SideText = { words, system, isSmall, size: isSmall ? 30 : 15 }
  const perKg = perKgOf(sums)
  const at = sideLayout(rig, span, loadRoom(sums, perKg, text))
  const boat = boatFromSide(rig, at)
  const centre = centreMark(sums, at)
  const borne = reactions(sums, at, perKg, text)
  const below = dimensionLines(rig, sums, at, at.groundY + (sums.balance.lever ? reactionRoom(sums, perKg, text) : 8), text)
  const noteY = below.footY + text.size
  return {
    viewBox: [0, 0, at.width, Math.round(at.toScale ? below.footY : noteY + 10)],
    shapes: [
      ...boat.hull, ...trailerFromSide(rig, at), ...boat.inside, ...loadArrows(sums, at, perKg, text), ...below.shapes, ...borne.shapes, ...centre.shapes,
      ...(at.toScale ? [] : [label(at.width / 2, noteY, words.sums.drawing.sketch, text.size, { anchor: 'middle' })]),
    ],
    places: [...boat.places, ...centre.places, ...borne.places],
    toScale: at.toScale,
    xOf: at.x,
  }
}
