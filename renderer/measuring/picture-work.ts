import { refuse } from '../../shared-logic/contract/refusal'
import { measuredArea, outlinedMask, type FoundMasks, type MeasurementGiven } from '../../shared-logic/measuring/area'
import { toMaskPx } from '../../shared-logic/measuring/mask'
import { maskOutline } from '../../shared-logic/measuring/mask-outline'
import type { MeasuredArea, PixelPoint } from '../../shared-logic/measuring/measurement'
import type { Pixels } from '../../shared-logic/measuring/pixels'
import { colourless } from '../../shared-logic/rust/colourless'
import { featuresOf, foundMasks, rustMask, type RustFeatures } from '../../shared-logic/rust/find-rust'

const pathOf = (rings: readonly (readonly PixelPoint[])[]): string => rings.map((ring) => `M${ring.map(([x, y]) => `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`).join('L')}Z`).join('')

const faceKey = ({ face }: MeasurementGiven): string => JSON.stringify(face ?? null)

/** The computing on one picture, in steps that each take a moment. What is dear and stays the same is kept from one wish to the next. */
export interface PictureWork {
  /** Whether the next outline waits for the slow part. */
  readonly isSlow: (given: MeasurementGiven) => boolean
  /** The outline as it counts, as SVG path data. Refuses a grey picture for the finder. */
  readonly outline: (given: MeasurementGiven) => string
  /** Refuses (`measure.…`) what cannot be measured. */
  readonly measure: (given: MeasurementGiven) => MeasuredArea
}

export const pictureWork = (pixels: Pixels): PictureWork => {
  let kept: { readonly face: string; readonly features: RustFeatures } | undefined
  let isGrey: boolean | undefined
  const features = (given: MeasurementGiven): RustFeatures => {
    isGrey ??= colourless(pixels)
    if (isGrey) refuse('measure.no-colour')
    const face = faceKey(given)
    if (kept?.face !== face) kept = { face, features: featuresOf(pixels, given.face && toMaskPx(given, pixels, given.face)) }
    return kept.features
  }
  const outline = (given: MeasurementGiven): string => {
    if (given.outline.by === 'polygon') return pathOf([given.outline.points])
    if (given.outline.by === 'brush') return pathOf(maskOutline(outlinedMask(given), given))
    const asSet = rustMask(features(given), given.outline.sensitivity)
    return pathOf(maskOutline(outlinedMask(given, { asSet, tight: asSet, loose: asSet }), given))
  }
  const found = (given: MeasurementGiven): FoundMasks | undefined => (given.outline.by === 'finder' ? foundMasks(features(given), given.outline.sensitivity) : undefined)
  return {
    isSlow: (given) => given.outline.by === 'finder' && kept?.face !== faceKey(given),
    outline,
    measure: (given) => measuredArea(given, found(given)),
  }
}
