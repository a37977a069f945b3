/** Linear light, red, green and blue, 0 to 1. */
export type Colour = readonly [number, number, number]

/** From an sRGB value as it stands on a colour card (IEC 61966-2-1). */
function linear(value: number): number {
  const part = value / 255
  return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
}

export function colour(red: number, green: number, blue: number): Colour {
  return [linear(red), linear(green), linear(blue)]
}

/** Rust from fresh and dry to old and dense. */
export const rustColours: readonly Colour[] = [
  colour(205, 133, 63), colour(183, 104, 52), colour(183, 65, 14), colour(148, 76, 40), colour(122, 64, 36), colour(106, 58, 30), colour(92, 51, 23), colour(78, 46, 30),
]

export const stainColour = colour(150, 92, 48)

export const paints = {
  grey: [colour(128, 130, 132), colour(92, 96, 100), colour(168, 170, 170)],
  black: [colour(32, 33, 35), colour(45, 44, 44)],
  white: [colour(228, 228, 224), colour(236, 234, 226)],
  blue: [colour(28, 62, 128), colour(40, 96, 160), colour(20, 40, 84)],
  red: [colour(168, 18, 32), colour(184, 30, 26), colour(140, 14, 22)],
  green: [colour(30, 84, 58)],
} as const

export const zinc = { bright: colour(190, 194, 197), weathered: colour(142, 146, 149), white: colour(226, 227, 224) }
export const aluminium = { bare: colour(196, 198, 199), oxide: colour(222, 222, 219) }

export const things = {
  redPaint: [colour(190, 16, 30), colour(196, 30, 22), colour(168, 24, 24)],
  carpet: [colour(232, 96, 18), colour(222, 84, 22), colour(240, 110, 24)],
  amber: colour(255, 156, 8),
  reflector: colour(196, 6, 24),
  wood: [colour(186, 148, 104), colour(164, 142, 114)],
  leaf: [colour(150, 120, 72), colour(132, 104, 66), colour(168, 142, 84)],
  mud: [colour(112, 96, 76), colour(130, 114, 92)],
  skin: [colour(226, 178, 150), colour(198, 146, 114), colour(112, 76, 58)],
} as const
