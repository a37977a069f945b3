import { standardGravity } from '../units/us-customary'

/** Share of the static friction that counts beside direct lashings. Source: CTU Code annex 7; EN 12195-1:2010. */
export const directFrictionShare = 0.75

/** Accelerations a load must be held against, as shares of gravity. Source: EN 12195-1 as restated in a load securing handbook, 4.1.6; the standard itself was not read. */
export const accelerations = { forward: 0.8, rearward: 0.5, sideways: 0.5 } as const

/** A strap by its angles, rad: `down` below the horizontal, `off` away from the direction it holds against, in plan. */
export interface StrapAngles {
  readonly downRad: number
  readonly offRad: number
}

/** How much of its tension one strap holds with, per newton: along the direction, and by pressing the load down. */
export const holdingFactor = ({ downRad, offRad }: StrapAngles, friction: number): number =>
  Math.cos(downRad) * Math.cos(offRad) + friction * directFrictionShare * Math.sin(downRad)

/** Force left to the straps when friction has held its part, N; never negative. Source: EN 12195-1, direct lashing against sliding. */
export const slidingForceN = (massKg: number, share: number, friction: number): number =>
  Math.max(0, massKg * standardGravity * (share - friction * directFrictionShare))

/** Tension each of `count` equal straps needs, N; undefined where they do not hold that way at all. */
export const strapTensionNeededN = (massKg: number, share: number, friction: number, angles: StrapAngles, count: number): number | undefined => {
  const factor = holdingFactor(angles, friction)
  return count > 0 && factor > 0 ? slidingForceN(massKg, share, friction) / (count * factor) : undefined
}

/**
 * Straps over the top needed against sliding: least whole number, and the exact figure.
 *
 * `tensionN`: standard tension force (STF) on the label; `safety` 1.1, forward 1.25 by the 2010 edition.
 * Undefined without friction: pressing down holds nothing then. Source: EN 12195-1:2010 as restated in a load securing handbook, 4.1.6.
 */
export const strapsOverTopNeeded = (
  massKg: number, share: number, friction: number, downRad: number, tensionN: number, safety: number,
): { readonly exact: number; readonly count: number } | undefined => {
  const each = 2 * friction * Math.sin(downRad) * tensionN
  if (!(each > 0)) return undefined
  const exact = Math.max(0, ((share - friction) * massKg * standardGravity * safety) / each)
  return { exact, count: Math.ceil(exact - 1e-9) }
}
