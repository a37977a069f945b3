import type { Rig } from '../rig/rig'

/** Where the axles stand, m aft of the ball, front to rear; `middleM` is the middle of the group. */
export interface Axles {
  readonly middleM?: number
  readonly eachM?: readonly number[]
  readonly count?: number
  /** How the group shares its load: one axle, rocking beams, each by itself, or not known. */
  readonly sharing: 'one axle' | 'equalised' | 'independent' | 'not known'
  /** What the split among the axles waits for. */
  readonly waitsFor: readonly string[]
}

const sharingOf = ({ trailer, stance }: Rig): Axles['sharing'] => {
  if (trailer.axleCount === 1) return 'one axle'
  if (stance?.loadSharing !== undefined) return stance.loadSharing
  // Torsion arms have no beam between them; leaf springs come with one and without.
  return trailer.suspension === 'torsion arms' ? 'independent' : 'not known'
}

/** The axles as far as the rig's data tell; `ballToAxleM` is the middle of the group. */
export const axlesOf = (rig: Rig): Axles => {
  const { ballToAxleM: middleM, axleCount: count } = rig.trailer
  const spacingM = count === 1 ? 0 : rig.stance?.axleSpacingM
  const sharing = sharingOf(rig)
  const eachM = middleM === undefined || count === undefined || spacingM === undefined
    ? undefined
    : Array.from({ length: count }, (_, index) => middleM + (index - (count - 1) / 2) * spacingM)
  return {
    ...(middleM !== undefined && { middleM }), ...(eachM && { eachM }), ...(count !== undefined && { count }), sharing,
    waitsFor: [
      ...(middleM === undefined ? ['trailer.ballToAxleM'] : []), ...(count === undefined ? ['trailer.axleCount'] : []),
      ...(count !== undefined && spacingM === undefined ? ['stance.axleSpacingM'] : []), ...(sharing === 'not known' ? ['stance.loadSharing'] : []),
    ],
  }
}
