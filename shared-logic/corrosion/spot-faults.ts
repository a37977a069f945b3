import type { RefusalData } from '../contract/refusal'
import type { Spot } from '../survey/spot'
import { isOver } from '../rules/beyond'
import { isPresent, togetherWith } from './corroded-share'

/** What of a spot is looked at for sense; a file may hold what the schema of a kept spot would not. */
export type SpotMeasures = Pick<Spot, 'areaM2' | 'areaUncertaintyM2' | 'faceAreaM2' | 'share' | 'pitDepthM' | 'wallM' | 'remainingM' | 'coatingReadingsM'>

type Measure = Exclude<keyof SpotMeasures, 'coatingReadingsM'>

const measures: readonly Measure[] = ['areaM2', 'areaUncertaintyM2', 'faceAreaM2', 'share', 'pitDepthM', 'wallM', 'remainingM']
/** Nothing of these cannot be: without them there is no spot, no face and no wall. */
const aboveZero: readonly Measure[] = ['areaM2', 'faceAreaM2', 'wallM']

const isMore = (value: number | undefined, limit: number | undefined): boolean => value !== undefined && limit !== undefined && isOver(value, limit)

const rows: readonly { readonly code: string; readonly field: keyof SpotMeasures; readonly is: (spot: SpotMeasures) => boolean }[] = [
  ...measures.map((field) => ({ code: 'corrosion.negative', field, is: (spot: SpotMeasures) => (spot[field] ?? 0) < 0 })),
  { code: 'corrosion.negative', field: 'coatingReadingsM', is: ({ coatingReadingsM = [] }) => coatingReadingsM.some((reading) => reading < 0) },
  ...aboveZero.map((field) => ({ code: 'corrosion.nothing', field, is: (spot: SpotMeasures) => spot[field] === 0 })),
  { code: 'corrosion.share-over-whole', field: 'share', is: ({ share }) => isMore(share, 1) },
  { code: 'corrosion.area-over-face', field: 'areaM2', is: ({ areaM2, faceAreaM2 }) => isMore(areaM2, faceAreaM2) },
  { code: 'corrosion.uncertainty-over-area', field: 'areaUncertaintyM2', is: ({ areaM2, areaUncertaintyM2 }) => isMore(areaUncertaintyM2, areaM2) },
  { code: 'corrosion.pit-over-wall', field: 'pitDepthM', is: ({ pitDepthM, wallM }) => isMore(pitDepthM, wallM) },
  { code: 'corrosion.remaining-over-wall', field: 'remainingM', is: ({ remainingM, wallM }) => isMore(remainingM, wallM) },
]

/** What cannot be right in one spot, whatever each measure by itself may be. `at` is the spot's own path. */
export const faultsOfSpot = (spot: SpotMeasures, at: string): readonly RefusalData[] => rows.filter(({ is }) => is(spot)).map(({ code, field }) => ({ code, field: `${at}.${field}` }))

/** Spots of one place that are together larger than the smallest face they lie on. */
const overFace = (spot: Spot, spots: readonly Spot[]): boolean => {
  const together = togetherWith(spot, spots)
  const faces = together.flatMap(({ faceAreaM2 }) => faceAreaM2 ?? [])
  return together.length > 1 && isPresent(spot) && faces.length > 0 && isMore(together.reduce((sum, { areaM2 = 0 }) => sum + areaM2, 0), Math.min(...faces))
}

/** The faults of the spots of one member. None means they may be graded. `at` tells a spot's own path by its place in the list. */
export const faultsOfSpots = (spots: readonly Spot[], at: (index: number) => string): readonly RefusalData[] => spots.flatMap((spot, index) => {
  const own = faultsOfSpot(spot, at(index))
  return own.length > 0 || !overFace(spot, spots) ? own : [{ code: 'corrosion.spots-over-face', field: `${at(index)}.faceAreaM2`, values: { place: spot.place } }]
})
