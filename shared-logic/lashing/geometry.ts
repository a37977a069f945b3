import type { Strap } from '../rig/tie-down'

/** Along the trailer's axes: aft, to the right, up. */
export interface Vector {
  readonly aft: number
  readonly right: number
  readonly up: number
}

export type PullDirection = 'forward' | 'rearward' | 'left' | 'right' | 'up'
export const pullDirections: readonly PullDirection[] = ['forward', 'rearward', 'left', 'right', 'up']

/** Which way the boat would go. */
export const axisOf: Readonly<Record<PullDirection, Vector>> = {
  forward: { aft: -1, right: 0, up: 0 },
  rearward: { aft: 1, right: 0, up: 0 },
  left: { aft: 0, right: -1, up: 0 },
  right: { aft: 0, right: 1, up: 0 },
  up: { aft: 0, right: 0, up: 1 },
}

export const along = (a: Vector, b: Vector): number => a.aft * b.aft + a.right * b.right + a.up * b.up

/** How a strap lies: unit vector from boat to trailer, which is the way it pulls the boat, angles in rad and, from its ends, the length in m. */
export interface StrapLead {
  readonly pull: Vector
  /** Below the horizontal; negative where the strap pulls up. */
  readonly downRad: number
  /** Away from the long axis in plan, 0 along it to a quarter turn across. */
  readonly offRad: number
  readonly lengthM?: number
}

const fromEnds = (boat: NonNullable<Strap['boat']>, trailer: NonNullable<Strap['trailer']>): StrapLead | undefined => {
  const [aft, right, up] = [trailer.aftOfBallM - boat.aftOfBallM, trailer.toRightM - boat.toRightM, trailer.heightM - boat.heightM]
  const lengthM = Math.hypot(aft, right, up)
  if (!(lengthM > 0)) return undefined
  return {
    pull: { aft: aft / lengthM, right: right / lengthM, up: up / lengthM },
    downRad: Math.atan2(-up, Math.hypot(aft, right)),
    offRad: Math.atan2(Math.abs(right), Math.abs(aft)),
    lengthM,
  }
}

const fromAngles = ({ downRad, offRad, leads, side }: NonNullable<Strap['angles']>): StrapLead => ({
  pull: {
    aft: (leads === 'aft' ? 1 : -1) * Math.cos(downRad) * Math.cos(offRad),
    right: (side === 'right' ? 1 : -1) * Math.cos(downRad) * Math.sin(offRad),
    up: -Math.sin(downRad),
  },
  downRad,
  offRad,
})

/** How the strap lies, from its two ends or else its measured angles; undefined while neither is known. Source: vector geometry. */
export const leadOf = ({ boat, trailer, angles }: Pick<Strap, 'boat' | 'trailer' | 'angles'>): StrapLead | undefined => {
  if (boat && trailer) return fromEnds(boat, trailer)
  return angles && fromAngles(angles)
}
