import type { Ranged } from './ranged'
import type { TrailPoint } from './trail-point'

export const halfWidth = ({ low, high, value }: Ranged): number => Math.max(value - low, high - value)

/** How much more there is, with the combined uncertainty of both measurements (root of the sum of squares: two measurements, years apart). */
export interface Growth {
  readonly by: number
  readonly uncertainty: number
}

export const growthBetween = (before: Ranged, after: Ranged): Growth => ({ by: after.value - before.value, uncertainty: Math.hypot(halfWidth(before), halfWidth(after)) })

/** Growth is only what goes beyond the combined uncertainty. */
export const isCertain = ({ by, uncertainty }: Growth): boolean => by > uncertainty
const isCertainlyLess = ({ by, uncertainty }: Growth): boolean => -by > uncertainty

/** A depth gauge or an ultrasonic reading of a pitted wall: common practice, no source. */
export const depthErrorM = 0.0001

const depthRange = (depthM: number | undefined): Ranged | undefined => (depthM === undefined ? undefined : { value: depthM, low: depthM - depthErrorM, high: depthM + depthErrorM })

const lostM = ({ spot: { wallM, remainingM } }: TrailPoint): number | undefined => (wallM === undefined || remainingM === undefined ? undefined : wallM - remainingM)

/** What changed from one look to a later one; each measure that both have. */
export interface Change {
  readonly fromDate: string
  readonly area: Growth | undefined
  readonly pitDepth: Growth | undefined
  readonly wallLoss: Growth | undefined
  readonly verdict: 'grown' | 'same' | 'smaller' | 'not comparable'
}

const compared = (before: Ranged | undefined, after: Ranged | undefined): Growth | undefined => (before && after ? growthBetween(before, after) : undefined)

export const changeBetween = (before: TrailPoint, after: TrailPoint): Change => {
  const area = compared(before.area, after.area)
  const pitDepth = compared(depthRange(before.spot.pitDepthM), depthRange(after.spot.pitDepthM))
  const wallLoss = compared(depthRange(lostM(before)), depthRange(lostM(after)))
  const known = [area, pitDepth, wallLoss].filter((growth) => growth !== undefined)
  const verdict = known.length === 0 ? 'not comparable' : known.some(isCertain) ? 'grown' : area !== undefined && isCertainlyLess(area) ? 'smaller' : 'same'
  return { fromDate: before.date, area, pitDepth, wallLoss, verdict }
}
