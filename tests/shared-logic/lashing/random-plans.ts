import fc from 'fast-check'
import type { Rig } from '../../../shared-logic/rig/rig'
import { lashingRoutes, strapPlaces, type Strap } from '../../../shared-logic/rig/tie-down'
import { evenly } from '../evenly'

const point = (height: [number, number]) => fc.record({ aftOfBallM: evenly(0, 9), toRightM: evenly(-1.5, 1.5), heightM: evenly(...height) })

/** Straps of any place, route, lead and rating; boat above trailer mostly, so that most pull down. */
export const anyStrap: fc.Arbitrary<Strap> = fc.record({
  position: fc.constant('strap'),
  place: fc.constantFrom(...strapPlaces),
  route: fc.constantFrom(...lashingRoutes),
  ratedN: evenly(500, 50_000),
  breakingN: evenly(1_000, 150_000),
  tensionN: evenly(500, 6_000),
  boat: point([0.6, 2.2]),
  trailer: point([0.2, 0.9]),
})

export const anyRig: fc.Arbitrary<Rig & { readonly tieDown: NonNullable<Rig['tieDown']> }> = fc
  .record({ massKg: evenly(50, 8_000), friction: evenly(0, 0.6), straps: fc.array(anyStrap, { maxLength: 8 }), bowStopBlocks: fc.boolean(), bowStopRatedN: evenly(100, 40_000) })
  .map(({ massKg, friction, straps, bowStopBlocks, bowStopRatedN }) => ({ name: 'invented', trailer: {}, boat: { dryMassKg: massKg, lengthM: 6 }, tieDown: { straps, friction, bowStopBlocks, bowStopRatedN } }))
