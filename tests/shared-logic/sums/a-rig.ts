import { rigSchema, type Rig } from '../../../shared-logic/rig/rig'

/** A tandem of 1,750 kg with everything known: invented, but for the lever of the reference examples. */
export const wholeRig = (): Rig => rigSchema.parse({
  name: 'Tern',
  trailer: {
    massKg: 450, maximumMassKg: 2040, axleRatingKg: 1000, ballToAxleM: 5, axleCount: 2, suspension: 'leaf springs', brakes: 'surge', brakedAxleCount: 2, coupler: 'class 3', ballDiameterM: 0.0508,
    lengthM: 7.6, builtYear: 2017, tyre: { size: 'ST205/75R15', loadRange: 'C', loadIndex: 101, speedSymbol: 'N' },
  },
  boat: { dryMassKg: 1100, lengthM: 6.4, tanks: [{ contents: 'petrol', capacityM3: 0.2 }, { contents: 'fresh water', capacityM3: 0.06 }] },
  loading: {
    stemAftOfBallM: 1.1, trailerCentreAftOfBallM: 3.6, trailerCentreHeightM: 0.55, boatCentreAftOfStemM: 3.65, boatCentreHeightM: 1.2,
    tanks: [{ fill: 0.5, aftOfStemM: 4, heightM: 1 }, { fill: 0, aftOfStemM: 2, heightM: 1 }], gear: [{ name: 'Anchor', massKg: 60, aftOfBallM: 4, heightM: 1 }],
  },
  couplingRatings: { couplerStaticKg: 300, towVehicleMaximumKg: 2400, chainBreakingForceN: 22_000, chainCount: 2 },
  stance: { axleSpacingM: 0.86, trackM: 1.9, ballHeightM: 0.45, wheelCentreHeightM: 0.33, loadSharing: 'equalised', axleGroupKg: 120 },
})

/** The same without some of its fields. */
export const without = (rig: Rig, change: (copy: Rig) => void): Rig => {
  const copy = structuredClone(rig)
  change(copy)
  return copy
}
