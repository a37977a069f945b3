import type { Rig } from '../../shared-logic/rig/rig'
import type { Strap } from '../../shared-logic/rig/tie-down'

const strapN = 6_670

const transomStrap = (side: 'left' | 'right', way: -1 | 1): Strap => ({
  position: `strap transom ${side}`, place: 'transom', route: 'direct', ratedN: strapN, breakingN: strapN * 3,
  boat: { aftOfBallM: 7.6, toRightM: 0.72 * way, heightM: 0.95 }, trailer: { aftOfBallM: 6.75, toRightM: 1.14 * way, heightM: 0.55 },
})

/** What the sums of the tandem are worked from: how the boat sits, what is in it, what the coupling is rated for, how it is tied, what a weighbridge showed. Invented. */
export const tandemSums = {
  loading: {
    stemAftOfBallM: 0.99, transomAftOfBallM: 7.69, trailerCentreAftOfBallM: 4.62, trailerCentreHeightM: 0.55, boatCentreAftOfStemM: 3.97, boatCentreHeightM: 1.15,
    engineAftOfStemM: 6.95, engineHeightM: 1.35,
    tanks: [{ fill: 0.7, aftOfStemM: 3.7, heightM: 0.85 }, { fill: 0, aftOfStemM: 5.6, heightM: 0.9 }],
    gear: [
      { name: 'Two batteries', massKg: 52, aftOfStemM: 5.9, heightM: 0.95 },
      { name: 'Anchor and chain', massKg: 24, aftOfStemM: 0.6, heightM: 1.4 },
      { name: 'Fishing and safety gear', massKg: 96, aftOfStemM: 3.2, heightM: 1.2 },
      { name: 'Spare wheel', massKg: 24, aftOfBallM: 1.6, heightM: 0.7 },
    ],
  },
  couplingRatings: {
    couplerRatingKg: 3_175, ballRatingKg: 3_402, hitchRatingKg: 3_402, towVehicleRatingKg: 3_311, couplerStaticKg: 318, ballStaticKg: 340, hitchStaticKg: 340, towVehicleStaticKg: 272,
    chainBreakingForceN: 48_000, chainCount: 2, towVehicleMaximumKg: 3_080, towVehicleAxlesKg: 2_420,
  },
  stance: { axleSpacingM: 0.86, trackM: 2.1, ballHeightM: 0.48, levelBallHeightM: 0.48, wheelCentreHeightM: 0.33, loadSharing: 'equalised', axleGroupKg: 210 },
  tieDown: {
    supportSurface: 'carpet', bowStopBlocks: true, bowStopRatedN: 4_000,
    straps: [
      { position: 'strap bow tie', place: 'bow tie', route: 'direct', ratedN: strapN, breakingN: strapN * 3, boat: { aftOfBallM: 1.15, toRightM: 0, heightM: 1.15 }, trailer: { aftOfBallM: 1.9, toRightM: 0, heightM: 0.5 } },
      transomStrap('left', -1),
      transomStrap('right', 1),
    ],
  },
  weighings: [{ method: 'tongue and axles', date: '2026-05-16', couplingKg: 240, axlesKg: 2_450 }],
  brakeTest: { date: '2026-05-16', actuatorTravelM: 0.032, actuatorStrokeM: 0.102 },
} as const satisfies Partial<Rig>
