/** Likeness, 0 to 255, from which a pixel is likely and from which it is sure, at no sensitivity and at the highest; straight between. */
const levels = { likely: { atNone: 215, atFull: 25 }, sure: { atNone: 254, atFull: 60 } } as const

const between = ({ atNone, atFull }: { readonly atNone: number, readonly atFull: number }, sensitivity: number): number => atNone + (atFull - atNone) * Math.min(1, Math.max(0, sensitivity))

/** Both fall as the sensitivity rises, so that nothing found is ever lost by raising it. */
export const levelsAt = (sensitivity: number): { readonly likely: number, readonly sure: number } => ({ likely: between(levels.likely, sensitivity), sure: between(levels.sure, sensitivity) })
