import { assertNever } from '../assert-never'
import type { Spot } from '../survey/spot'
import { added, exactly, scaled, within, type Ranged } from './ranged'

/** What adds up: corrosion of the base metal; product of the coating; blisters, which are no rust yet; edges and welds, which are graded apart. */
type Attack = 'base metal' | 'product of the coating' | 'blisters' | 'edges and welds'

const attackOf = ({ kind }: Spot): Attack => {
  switch (kind) {
    case 'white product':
      return 'product of the coating'
    case 'blister':
      return 'blisters'
    case 'weld':
      return 'edges and welds'
    case 'red rust':
    case 'pitting':
    case 'scale':
    case 'galvanic':
    case 'crevice':
    case 'hole':
      return 'base metal'
    default:
      return assertNever(kind)
  }
}

export const isPresent = ({ state }: Spot): boolean => state !== 'repaired'

const placeOf = ({ place }: Spot): string => place.toLowerCase()

/** The spots that are graded as one: same place, same material, same attack, none repaired. The spot itself is among them though `spots` may leave it out. */
export const togetherWith = (spot: Spot, spots: readonly Spot[]): readonly Spot[] => {
  const others = spots.filter((each) => each.id !== spot.id && isPresent(each) && each.material === spot.material && placeOf(each) === placeOf(spot) && attackOf(each) === attackOf(spot))
  return [spot, ...others]
}

/** Area of a spot, m2, as an interval; exact where no uncertainty was recorded. */
export const areaOf = ({ areaM2, areaUncertaintyM2 }: Spot): Ranged | undefined =>
  areaM2 === undefined ? undefined : areaUncertaintyM2 === undefined ? exactly(areaM2) : within(areaM2, areaUncertaintyM2)

/** The tightest and the loosest reading of the picture widen the interval where they reach further. */
const readWider = (share: Ranged, { measurement }: Spot): Ranged => {
  const { shareLow, shareHigh } = measurement?.result ?? {}
  return { value: share.value, low: Math.min(share.low, shareLow ?? share.low), high: Math.max(share.high, shareHigh ?? share.high) }
}

const shareOf = (spot: Spot, faceM2: number | undefined): Ranged | undefined => {
  const area = areaOf(spot)
  if (area !== undefined && faceM2 !== undefined) return readWider(scaled(area, 1 / faceM2), spot)
  return spot.share === undefined ? undefined : readWider(exactly(spot.share), spot)
}

const atMostWhole = ({ value, low, high }: Ranged): Ranged => ({ value: Math.min(1, value), low: Math.min(1, low), high: Math.min(1, high) })

/**
 * Corroded share of a face, 0 to 1. Spots of one place add up; where they name different faces the smallest is taken, which is
 * the cautious reading. Undefined while one of them was not measured.
 */
export const corrodedShare = (together: readonly Spot[]): Ranged | undefined => {
  const faces = together.flatMap(({ faceAreaM2 }) => faceAreaM2 ?? [])
  const faceM2 = faces.length === 0 ? undefined : Math.min(...faces)
  const shares = together.map((spot) => shareOf(spot, faceM2))
  const known = shares.filter((share) => share !== undefined)
  return known.length < shares.length ? undefined : atMostWhole(added(known))
}
