import { refuse } from '../../shared-logic/contract/refusal'
import { outlinedMask, type FoundMasks, type MeasurementGiven } from '../../shared-logic/measuring/area'
import { toMaskPx } from '../../shared-logic/measuring/mask'
import { maskOutline } from '../../shared-logic/measuring/mask-outline'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import { colourless } from '../../shared-logic/rust/colourless'
import { featuresOf, foundMasks } from '../../shared-logic/rust/find-rust'
import { workingPixels } from './working-pixels'

/** What the finder finds on the large preview, the very picture the window finds it on; undefined for an outline by hand. Refuses a picture without colour. */
export const foundOn = async (preview: Uint8Array, given: MeasurementGiven): Promise<FoundMasks | undefined> => {
  if (given.outline.by !== 'finder') return undefined
  const pixels = await workingPixels(preview)
  if (colourless(pixels)) refuse('measure.no-colour')
  return foundMasks(featuresOf(pixels, given.face && toMaskPx(given, pixels, given.face)), given.outline.sensitivity)
}

/** The outline as rings in px of the original, for drawing it into a copy. */
export const outlineRings = (given: MeasurementGiven, found: FoundMasks | undefined): readonly (readonly PixelPoint[])[] =>
  given.outline.by === 'polygon' ? [given.outline.points] : maskOutline(outlinedMask(given, found), given)
