/**
 * What the finder goes by, a reason each. Colours are log ratios in linear light after the light's own colour is taken out:
 * redness ln(R/G), yellowness −ln(B/G). Common practice, no source, unless one is named; held by rendered scenes with known truth.
 */
export const thresholds = {
  /**
   * Iron oxides lie in a narrow hue between red and yellow: yellowness over redness. Below it are red paint and reflectors, and skin under a warm light;
   * above it wood, dry leaves, mud, amber lenses, dyed carpet.
   */
  hue: { from: 0.3, sureFrom: 0.5, sureTo: 1.1, to: 1.45 },
  /** Rust is strongly coloured; dirt, run-off, wood and skin are paler. */
  redness: { from: 0.5, sureFrom: 0.95 },
  /** No oxide sends back as little blue as dye or coloured plastic does. */
  yellowness: { sureTo: 1.95, to: 2.3 },
  /** Stronger red than any oxide: paint or a reflector. */
  tooRed: { sureTo: 2.15, to: 2.6 },
} as const

/** Sizes in px of a picture 1600 px long, scaled with the picture. */
export const sizesPx = {
  /** Colour is averaged over this square: the camera and JPEG keep colour coarser than brightness. */
  smoothing: 5,
  /** Spots with fewer pixels are noise. */
  leastSpot: 24,
  /** Gaps with fewer pixels inside rust are glints of wet and flash. */
  largestGap: 160,
} as const
