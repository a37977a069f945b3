/** A picture in memory: RGBA, 8 bits each, row by row from the top, sRGB. What a canvas and the picture library both give. */
export interface Pixels {
  readonly width: number
  readonly height: number
  readonly data: Uint8ClampedArray | Uint8Array
}

/** One byte a pixel: 1 inside, 0 outside. */
export interface Mask {
  readonly width: number
  readonly height: number
  readonly data: Uint8Array
}

/** Long edge of the preview that outlines are painted and found on, px. */
export const workingEdgePx = 1600
