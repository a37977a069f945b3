/**
 * How well a person reads a photograph; standard uncertainties, px at the working size (long edge 1600 px).
 * Common practice, no source: a steady hand on a picture that fills the screen.
 */
export const readingErrors = {
  /** Of each coordinate of a point of the scale, each by itself. */
  pointPx: 1,
  /** Of the whole border at once, outwards or inwards: a person draws a shade too wide or too tight all round. The brush is the blunter tool. */
  borderPx: { polygon: 1, brush: 2, finder: 1 },
  /** Of the known length: read to half a millimetre either way, all values alike likely (JCGM 100:2008, 4.3.7: half width / √3). */
  knownLengthM: 0.0005 / Math.sqrt(3),
  /** Coverage factor for about 95 % (JCGM 100:2008, 6.2 and G.1). */
  coverage: 2,
} as const

/** Below these the picture cannot carry the scale, px at the working size. Common practice: with 20 px the points alone leave the area open by 14 %. */
export const leastScalePx = 20

/** Three corners whose triangle is flatter than this, px at the working size, cannot be told from three on a line: three times the error of a point. */
export const leastTriangleHeightPx = 3 * readingErrors.pointPx

/** A spot may stand over its face by this, px at the working size, before it counts as outside: both borders are drawn by hand. */
export const faceSlackPx = 3 * readingErrors.borderPx.brush
