/** Size of a camera's picture in pixels. */
export interface Resolution {
  readonly widthPx: number
  readonly heightPx: number
}

/** Sizes that cameras commonly have, by the shape of the picture; common practice, no source. */
const usual: readonly Resolution[] = [
  [4000, 3000], [3264, 2448], [2592, 1944], [2048, 1536], [1600, 1200], [1280, 960], [640, 480],
  [3840, 2160], [2560, 1440], [1920, 1080], [1280, 720], [640, 360],
].map(([widthPx = 0, heightPx = 0]) => ({ widthPx, heightPx }))

const shapeOf = ({ widthPx, heightPx }: Resolution): number => widthPx / heightPx
const turned = ({ widthPx, heightPx }: Resolution): Resolution => ({ widthPx: heightPx, heightPx: widthPx })

/** A step worth offering is smaller than the one before by a good part. */
const mostOfLast = 0.9
const mostSteps = 6

/** Half and a quarter, for a camera whose picture has a shape of its own. */
const shares = ({ widthPx, heightPx }: Resolution): Resolution[] => [2, 4].map((by) => ({ widthPx: Math.round(widthPx / by), heightPx: Math.round(heightPx / by) }))

/**
 * The resolutions to choose from: the largest the camera gives, and smaller ones of the same shape, so that nothing
 * that is seen large is cut off small.
 */
export const resolutionSteps = (largest: Resolution): Resolution[] => {
  const isUpright = largest.heightPx > largest.widthPx
  const sameShape = usual.map((each) => (isUpright ? turned(each) : each)).filter((each) => Math.abs(shapeOf(each) / shapeOf(largest) - 1) < 0.01)
  const smaller = (sameShape.length > 0 ? sameShape : shares(largest)).filter(({ widthPx }) => widthPx < largest.widthPx * mostOfLast)
  return [largest, ...smaller].slice(0, mostSteps)
}

export const keyOfResolution = ({ widthPx, heightPx }: Resolution): string => `${widthPx}x${heightPx}`
export const isSameResolution = (a: Resolution, b: Resolution): boolean => a.widthPx === b.widthPx && a.heightPx === b.heightPx
export const pixelsOf = ({ widthPx, heightPx }: Resolution): number => widthPx * heightPx
