import { polygonMask } from '../measuring/mask'
import type { FoundMasks } from '../measuring/area'
import type { PixelPoint } from '../measuring/measurement'
import type { Mask, Pixels } from '../measuring/pixels'
import { boxMean } from './box-mean'
import { readEdges } from './edges'
import { fineLikeness } from './fine-likeness'
import { readColours } from './likeness'
import { lightColourOf } from './light-colour'
import { judgePatches } from './patches'
import { areaIn, lengthIn, planesOf, readingStep } from './planes'
import { lengthOf, overRegions, runsJoined, setRuns } from './regions'
import { levelsAt } from './sensitivity'
import { sizesPx } from './thresholds'

/** What does not change with the sensitivity: how like rust every pixel is, 0 to 255. */
export interface RustFeatures {
  readonly width: number
  readonly height: number
  readonly likeness: Uint8Array
}

/** The slow part, done once for a picture and face. `face` in px of `pixels`; nothing is found off it. */
export const featuresOf = (pixels: Pixels, face?: readonly PixelPoint[]): RustFeatures => {
  const { width, height } = pixels
  const step = readingStep(pixels)
  const planes = planesOf(pixels, step)
  const reach = Math.round((lengthIn(planes, sizesPx.smoothing) - 1) / 2)
  for (const plane of [planes.red, planes.green, planes.blue]) boxMean(plane, planes.width, planes.height, reach)
  const faceRead = face && polygonMask(planes, face.map(([x, y]): PixelPoint => [x / step, y / step]))
  const colours = readColours(planes, lightColourOf(planes, faceRead), faceRead)
  judgePatches(colours, planes)
  readEdges(planes, colours.squares, colours.likeness, faceRead)
  return { width, height, likeness: fineLikeness(colours.likeness, planes, pixels, step, face && polygonMask(pixels, face)) }
}

/** Regions of likely pixels that hold sure ones and are no specks; the small gaps in them closed. A higher sensitivity takes no pixel away. */
export const rustMask = (features: RustFeatures, sensitivity: number): Mask => {
  const { width, height, likeness } = features
  const { likely, sure } = levelsAt(sensitivity)
  const mask: Mask = { width, height, data: new Uint8Array(width * height) }
  const spots = runsJoined({ width, height, data: likeness }, [likely, 255], true)
  const sizes = overRegions(spots, (run) => lengthOf(spots, run))
  const sureOnes = overRegions(spots, (run) => {
    const start = (spots.place[3 * run] ?? 0) * width
    let count = 0
    for (let at = start + (spots.place[3 * run + 1] ?? 0); at < start + (spots.place[3 * run + 2] ?? 0); at += 1) if ((likeness[at] ?? 0) >= sure) count += 1
    return count
  })
  const leastSpot = areaIn(features, sizesPx.leastSpot)
  setRuns(mask, spots, (region) => (sureOnes[region] ?? 0) > 0 && (sizes[region] ?? 0) >= leastSpot)
  closeGaps(mask, areaIn(features, sizesPx.largestGap))
  return mask
}

const closeGaps = (mask: Mask, largestGap: number): void => {
  const gaps = runsJoined(mask, [0, 0], false)
  const sizes = overRegions(gaps, (run) => lengthOf(gaps, run))
  setRuns(mask, gaps, (region) => (sizes[region] ?? 0) < largestGap)
}

/** How far the tight and the loose reading stand from the sensitivity set. */
const readingSpan = 0.15

/** As set, and by the tightest and the loosest sensible reading. */
export const foundMasks = (features: RustFeatures, sensitivity: number): FoundMasks => ({
  asSet: rustMask(features, sensitivity),
  tight: rustMask(features, Math.max(0, sensitivity - readingSpan)),
  loose: rustMask(features, Math.min(1, sensitivity + readingSpan)),
})
