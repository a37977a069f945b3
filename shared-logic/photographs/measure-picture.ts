import { edgeWidthPx } from './edge-width'
import { exposureOf } from './exposure'
import { lookHashOf } from './look-hash'
import type { Quality } from './quality'
import type { Samples } from './samples'

/** What is measured of a picture when it comes in, from its pixels at 1600 px. */
export interface Measured {
  readonly quality: Quality
  /** 64-bit perceptual hash, hex; absent where the picture shows nothing to know it by. */
  readonly lookHash?: string
}

export const measurePicture = (samples: Samples): Measured => {
  const widthPx = edgeWidthPx(samples)
  const lookHash = lookHashOf(samples)
  return { quality: { ...(widthPx !== undefined && { edgeWidthPx: widthPx }), ...exposureOf(samples) }, ...(lookHash !== undefined && { lookHash }) }
}
