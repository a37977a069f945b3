import { refuse } from '../contract/refusal'
import { paintStrokes } from './brush'
import { emptyMask, overlap, pixelCount, polygonMask, toMaskPx } from './mask'
import type { MeasuredArea, Measurement, PixelPoint } from './measurement'
import { checkPolygon, checkWithinFace } from './outline-checks'
import { originalPxPerWorkingPx, workingSize } from './picture-size'
import type { Mask } from './pixels'
import { readingErrors } from './reading-errors'
import { maskRegion, polygonRegion, type Region } from './region'
import { checkScale } from './scale'
import { surfaceMapOf, type SurfaceMap } from './surface-map'
import { fromScale } from './uncertainty'

/** All that one measurement is made of. */
export type MeasurementGiven = Pick<Measurement, 'widthPx' | 'heightPx' | 'scale' | 'outline' | 'face'>

/** What the finder found, at the working size and before any stroke of the brush: at the sensitivity set, and at the tightest and loosest sensible ones. */
export interface FoundMasks {
  readonly asSet: Mask
  readonly tight: Mask
  readonly loose: Mask
}

/** No surface of a trailer is this large: the schema's own limit. */
const largestM2 = 400

/** Nearer to the horizon than this a pixel stands for a thousand times the area it has at the scale (1 / nearness³), and no hand can outline it. */
const leastNearness = 0.1

const checkReach = (part: 'outline' | 'face', region: Region, map: SurfaceMap): void => {
  if (region.leastNearness(map) < leastNearness) refuse(`measure.${part}-beyond-horizon`, {}, part)
  if (region.areaM2(map) > largestM2) refuse('measure.area-too-large', { limit: largestM2 }, part)
}

/** The brushed or found mask with the strokes done, cut to the face. */
const withStrokes = (given: MeasurementGiven, mask: Mask): Mask => {
  const strokes = given.outline.by === 'polygon' ? [] : given.outline.strokes
  const painted = paintStrokes(mask, strokes, given)
  return given.face ? overlap(painted, polygonMask(mask, toMaskPx(given, mask, given.face))) : painted
}

/**
 * The outlined pixels at the working size, for showing: what `measuredArea` counts. An outline by finder needs what was found.
 * Nothing is checked here.
 */
export const outlinedMask = (given: MeasurementGiven, found?: FoundMasks): Mask => {
  const size = workingSize(given)
  if (given.outline.by === 'polygon') return polygonMask(size, toMaskPx(given, size, given.outline.points))
  return withStrokes(given, given.outline.by === 'finder' && found ? found.asSet : emptyMask(size))
}

const regionOf = (given: MeasurementGiven, found: FoundMasks | undefined): Region => {
  const { outline, face } = given
  if (outline.by === 'polygon') {
    checkPolygon('outline', outline.points, given)
    if (face) checkWithinFace(outline.points, face, given)
    return polygonRegion(outline.points)
  }
  if (outline.by === 'finder' && !found) throw new Error('an outline by the finder is measured on what it found')
  const mask = outlinedMask(given, found)
  if (pixelCount(mask) === 0) refuse(outline.by === 'finder' ? 'measure.nothing-found' : 'measure.outline-empty', {}, 'outline')
  return maskRegion(mask, given)
}

/** Half the reach from the tight to the loose reading, as the standard uncertainty of a value that may lie anywhere between (JCGM 100:2008, 4.3.7). */
const readingSpread = (given: MeasurementGiven, found: FoundMasks, map: SurfaceMap): { readonly tightM2: number; readonly looseM2: number; readonly standardM2: number } => {
  const [tightM2 = 0, looseM2 = 0] = [found.tight, found.loose].map((mask) => maskRegion(withStrokes(given, mask), given).areaM2(map))
  return { tightM2, looseM2, standardM2: (looseM2 - tightM2) / 2 / Math.sqrt(3) }
}

const asShare = (value: number): number => Math.min(1, Math.max(0, value))

interface Sizes {
  readonly areaM2: number
  readonly borderM2: number
  readonly spread: ReturnType<typeof readingSpread> | undefined
}

const shareOf = ({ areaM2, borderM2, spread }: Sizes, face: readonly PixelPoint[], faceBorderPx: number, map: SurfaceMap): Partial<MeasuredArea> => {
  const region = polygonRegion(face)
  const faceAreaM2 = region.areaM2(map)
  const faceBorderM2 = region.borderM2PerPx(map) * faceBorderPx
  const share = areaM2 / faceAreaM2
  const half = readingErrors.coverage * share * Math.hypot(borderM2 / areaM2, faceBorderM2 / faceAreaM2)
  if (share - half > 1) refuse('measure.share-over-whole', {}, 'outline')
  return {
    faceAreaM2, share: asShare(share),
    // The hand's own error stays where both readings of the finder agree.
    shareLow: asShare(Math.min(share - half, spread ? spread.tightM2 / faceAreaM2 : share)),
    shareHigh: asShare(Math.max(share + half, spread ? spread.looseM2 / faceAreaM2 : share)),
  }
}

/**
 * Area of the outlined spot, m2, with the half width of its interval of about 95 %; and its share of the face where one was outlined.
 * An outline by the finder is measured on `found`, its strokes done here. The same input gives the same result.
 * Refuses (`measure.…`) a scale that gives none, outlines crossed, empty, off the picture, off their face or beyond the horizon.
 * A known length's tilt is not in the interval: it is not known (`tiltNote`). Source: plane geometry; JCGM 100:2008 for the interval.
 */
export const measuredArea = (given: MeasurementGiven, found?: FoundMasks): MeasuredArea => {
  checkScale(given.scale, given)
  const map = surfaceMapOf(given.scale)
  if (given.face) {
    checkPolygon('face', given.face, given)
    checkReach('face', polygonRegion(given.face), map)
  }
  const region = regionOf(given, found)
  checkReach('outline', region, map)
  const areaM2 = region.areaM2(map)
  const step = originalPxPerWorkingPx(given)
  const borderM2 = region.borderM2PerPx(map) * readingErrors.borderPx[given.outline.by] * step
  const spread = given.outline.by === 'finder' && found ? readingSpread(given, found, map) : undefined
  const standardM2 = Math.hypot(fromScale(given.scale, given, region.areaM2), Math.max(borderM2, spread?.standardM2 ?? 0))
  return {
    areaM2, uncertaintyM2: Math.min(largestM2, readingErrors.coverage * standardM2),
    ...(given.face && shareOf({ areaM2, borderM2, spread }, given.face, readingErrors.borderPx.polygon * step, map)),
  }
}
