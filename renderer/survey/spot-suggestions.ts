import { componentOf } from '../../shared-logic/corrosion/components'
import type { Rig } from '../../shared-logic/rig/rig'
import { spotMaterials, type Spot } from '../../shared-logic/survey/spot'

/** Along the ball the tongue ends in the coupler: common practice, no source. */
const couplerEndsM = 0.3

/** The part a spot most likely lies on: by the position the check asks about, and near the ball the coupler. */
export const suggestedComponent = (position: string, at: Spot['at']): NonNullable<Spot['component']> =>
  position === 'tongue' && at !== undefined && at.aftOfBallM < couplerEndsM ? 'coupler' : componentOf({}, position)

/** What the frame is made of is what a spot on it most likely is, until something else is said. */
export const newSpot = ({ trailer: { frame } }: Rig, position: string): Spot => {
  const material = spotMaterials.find((each) => each === frame) ?? 'galvanized steel'
  return { id: crypto.randomUUID(), place: '', component: suggestedComponent(position, undefined), material, kind: material === 'aluminium' ? 'pitting' : 'red rust' }
}

/** A spot found again: what does not change from survey to survey is taken over, what was measured then is not. */
export const sameSpotAgain = (spot: Spot, { place, at, component, material, kind, faceAreaM2, wallM, besideWeld, nearMounting, touches, touchingIsSmaller }: Spot, trail: string): Spot => ({
  ...spot, trail, place, material, kind,
  ...(at && { at }), ...(component && { component }), ...(faceAreaM2 !== undefined && { faceAreaM2 }), ...(wallM !== undefined && { wallM }),
  ...(besideWeld !== undefined && { besideWeld }), ...(nearMounting !== undefined && { nearMounting }), ...(touches && { touches }), ...(touchingIsSmaller !== undefined && { touchingIsSmaller }),
})
