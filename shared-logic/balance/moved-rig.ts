import type { Rig } from '../rig/rig'

const shifted = <Point extends { readonly aftOfBallM: number }>(point: Point | undefined, aftM: number): Point | undefined => point && { ...point, aftOfBallM: point.aftOfBallM + aftM }

/** The straps keep their hold on the boat, so their ends on it go along; those on the trailer stay. */
const strapsMoved = ({ tieDown }: Rig, aftM: number): Rig['tieDown'] =>
  tieDown && { ...tieDown, straps: tieDown.straps.map(({ boat, ...strap }) => ({ ...strap, ...(boat && { boat: shifted(boat, aftM) }) })) }

/** The rig with its boat, and all that lies in it, moved so that the stem stands at `stemM` aft of the ball. */
export const withStemAt = (rig: Rig, stemM: number): Rig => {
  const before = rig.loading?.stemAftOfBallM
  const { transomAftOfBallM } = rig.loading ?? {}
  const loading = { ...rig.loading, stemAftOfBallM: stemM, ...(transomAftOfBallM !== undefined && before !== undefined && { transomAftOfBallM: transomAftOfBallM + stemM - before }) }
  const tieDown = before === undefined ? rig.tieDown : strapsMoved(rig, stemM - before)
  return { ...rig, loading, ...(tieDown && { tieDown }) }
}

/**
 * The rig with its axle, or the middle of its group, at `axleM` aft of the ball. Where the mass of the group is known, the trailer's own
 * centre of mass goes along by its share. Source: statics.
 */
export const withAxleAt = (rig: Rig, axleM: number): Rig => {
  const { massKg, ballToAxleM } = rig.trailer
  const groupKg = rig.stance?.axleGroupKg
  const centreM = rig.loading?.trailerCentreAftOfBallM
  const moves = massKg !== undefined && ballToAxleM !== undefined && groupKg !== undefined && groupKg < massKg && centreM !== undefined
  return {
    ...rig, trailer: { ...rig.trailer, ballToAxleM: axleM },
    ...(moves && { loading: { ...rig.loading, trailerCentreAftOfBallM: centreM + (groupKg * (axleM - ballToAxleM)) / massKg } }),
  }
}

/** The rig with one piece of gear moved forward by `forwardM`; `id` as on the load sheet, 'gear 2'. */
export const withGearMoved = (rig: Rig, id: string, forwardM: number): Rig => ({
  ...rig,
  loading: {
    ...rig.loading,
    gear: rig.loading?.gear?.map((piece, index) =>
      id === `gear ${index + 1}`
        ? { ...piece, ...(piece.aftOfBallM === undefined ? piece.aftOfStemM !== undefined && { aftOfStemM: piece.aftOfStemM - forwardM } : { aftOfBallM: piece.aftOfBallM - forwardM }) }
        : piece),
  },
})
