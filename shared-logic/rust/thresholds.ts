/**
 * What the finder goes by, a reason each. Colours are log ratios in linear light after the light's own colour is taken out:
 * redness ln(R/G), yellowness −ln(B/G). Common practice, no source, unless one is named; held by rendered scenes with known truth.
 */
export const thresholds = {
  /**
   * Iron oxides lie in a narrow hue between red and yellow: yellowness over redness. Below it are red paint and reflectors, and skin under a warm light;
   * above it wood, dry leaves, mud, amber lenses, dyed carpet.
   */
  hue: { from: 0.25, sureFrom: 0.42, sureTo: 1.1, to: 1.45 },
  /** Rust is strongly coloured; dirt, run-off, wood and skin are paler. */
  redness: { from: 0.45, sureFrom: 0.87 },
  /** No oxide sends back as little blue as dye or coloured plastic does. */
  yellowness: { sureTo: 1.95, to: 2.3 },
  /** Stronger red than any oxide: paint or a reflector. */
  tooRed: { sureTo: 2.15, to: 2.6 },
  /** Pixels strong enough in colour to tell what patch they belong to; yellowness up to `slope` times redness and `above`, so that dye counts too. */
  coloured: { redness: 0.7, fromSlope: 0.4, slope: 1.5, above: 0.3 },
  /**
   * The strongly coloured pixels of a patch in the mean. Vividness is redness and half the logarithm of the red light, together: rust that is strongly coloured is dark,
   * and rust that is light is pale; what is both light and strong is dyed. Dye and lenses are also yellower than any oxide.
   */
  patch: { vivid: { sureTo: 1.17, to: 1.3 }, yellow: { sureTo: 1.65, to: 1.9 }, hue: { sureTo: 1.0, to: 1.2 } },
  /**
   * Rust is mottled: vividness and redness scatter from place to place (standard deviation), while paint, plastic, skin and mud keep to one colour; a shadow across them
   * changes the vividness but not the redness. An even patch keeps `evenKeeps` of its likeness, so that only a high sensitivity takes it. Specks, less than
   * `tellsFrom` of what lies around, are too small to tell.
   */
  mottling: { vividness: { from: 0.07, sureFrom: 0.13 }, redness: { from: 0.025, sureFrom: 0.055 }, evenKeeps: 0.3, tellsFrom: 0.2 },
} as const

/** Sizes in px of a picture 1600 px long, scaled with the picture. */
export const sizesPx = {
  /** Colour is averaged over this square: the camera and JPEG keep colour coarser than brightness. */
  smoothing: 5,
  /** Side of the squares that patches are judged from, and how many squares to every side are looked at. */
  square: 4,
  squaresAround: 8,
  /** The same for the colours on either side of a border. */
  squaresAtEdge: 5,
  /** Spots with fewer pixels are noise. */
  leastSpot: 24,
  /** Gaps with fewer pixels inside rust are glints of wet and flash. */
  largestGap: 160,
} as const

/** How a border between rust and ground is read. */
export const edgeReading = {
  /** Likeness from which a pixel stands for the rust beside a border, and up to which for the ground. */
  rustFrom: 0.75,
  groundTo: 0.1,
  /** Share of the pixels around that each side needs. */
  leastShare: 0.02,
  /** The two colours' squared sine: flatter than this they cannot be told apart. */
  leastApart: 0.03,
  /** What no mixture of the two explains, as a share of the light squared: more than this is a third thing. */
  mostLeft: 0.03,
  /** The camera's noise in the dark, linear light. */
  darkLight: 0.01,
} as const
