import { refuse } from '../../shared-logic/contract/refusal'
import { measuredArea, outlinedMask, type FoundMasks, type MeasurementGiven } from '../../shared-logic/measuring/area'
import { toMaskPx } from '../../shared-logic/measuring/mask'
import { maskOutline } from '../../shared-logic/measuring/mask-outline'
import type { MeasuredArea, PixelPoint } from '../../shared-logic/measuring/measurement'
import type { Pixels } from '../../shared-logic/measuring/pixels'
import { colourless } from '../../shared-logic/rust/colourless'
import { featuresOf, foundMasks, rustMask, type RustFeatures } from '../../shared-logic/rust/find-rust'
import { coarseFeatures } from './coarse-features'

const pathOf = (rings: readonly (readonly PixelPoint[])[]): string => rings.map((ring) => `M${ring.map(([x, y]) => `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`).join('L')}Z`).join('')

const faceKey = ({ face }: MeasurementGiven): string => JSON.stringify(face ?? null)

const foundPath = (features: RustFeatures, given: MeasurementGiven, sensitivity: number): string => {
  const asSet = rustMask(features, sensitivity)
  return pathOf(maskOutline(outlinedMask(given, { asSet, tight: asSet, loose: asSet }), given))
}

/** The computing on one picture, in steps that each take a moment. What is dear and stays the same is kept from one wish to the next. */
export interface PictureWork {
  /** Whether the next outline waits for the slow part. */
  readonly isSlow: (given: MeasurementGiven) => boolean
  /** The outline to show while the hand moves: what was found, at a quarter of the size. Refuses a grey picture for the finder. */
  readonly quickOutline: (given: MeasurementGiven) => string
  /** The outline as it counts, as SVG path data. */
  readonly outline: (given: MeasurementGiven) => string
  /** Refuses (`measure.…`) what cannot be measured. */
  readonly measure: (given: MeasurementGiven) => MeasuredArea
}

interface Features {
  readonly face: string
  readonly whole: RustFeatures
  readonly coarse: RustFeatures
}

export const pictureWork = (pixels: Pixels): PictureWork => {
  let kept: Features | undefined
  let isGrey: boolean | undefined
  const features = (given: MeasurementGiven): Features => {
    isGrey ??= colourless(pixels)
    if (isGrey) refuse('measure.no-colour')
    const face = faceKey(given)
    if (kept?.face === face) return kept
    const whole = featuresOf(pixels, given.face && toMaskPx(given, pixels, given.face))
    kept = { face, whole, coarse: coarseFeatures(whole) }
    return kept
  }
  const found = (given: MeasurementGiven): FoundMasks | undefined => (given.outline.by === 'finder' ? foundMasks(features(given).whole, given.outline.sensitivity) : undefined)
  const outline = (given: MeasurementGiven, size: 'whole' | 'coarse'): string => {
    if (given.outline.by === 'polygon') return pathOf([given.outline.points])
    if (given.outline.by === 'brush') return pathOf(maskOutline(outlinedMask(given), given))
    return foundPath(features(given)[size], given, given.outline.sensitivity)
  }
  return {
    isSlow: (given) => given.outline.by === 'finder' && kept?.face !== faceKey(given),
    quickOutline: (given) => outline(given, 'coarse'),
    outline: (given) => outline(given, 'whole'),
    measure: (given) => measuredArea(given, found(given)),
  }
}
