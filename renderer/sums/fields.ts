import { loadSharings } from '../../shared-logic/rig/loading'
import type { Rig } from '../../shared-logic/rig/rig'
import { supportSurfaces } from '../../shared-logic/rig/tie-down'
import type { Quantity } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'

/** How one input of the sums is typed or chosen. */
export type SumsInput =
  | { readonly kind: 'quantity'; readonly path: string; readonly quantity: Quantity }
  | { readonly kind: 'count'; readonly path: string }
  | { readonly kind: 'choice'; readonly path: string; readonly options: readonly string[]; readonly words: 'sharings' | 'surfaces' | 'leadings' | 'sides'; readonly isNeeded?: true }
  | { readonly kind: 'flag'; readonly path: string }
  | { readonly kind: 'date'; readonly path: string }

export type GroupId = keyof Words['screens']['sums']['groups']

export interface SumsGroup {
  readonly id: GroupId
  readonly inputs: readonly SumsInput[]
}

const mass = (path: string): SumsInput => ({ kind: 'quantity', path, quantity: 'mass' })
const length = (path: string): SumsInput => ({ kind: 'quantity', path, quantity: 'length' })
const small = (path: string): SumsInput => ({ kind: 'quantity', path, quantity: 'smallLength' })
const force = (path: string): SumsInput => ({ kind: 'quantity', path, quantity: 'force' })
const count = (path: string): SumsInput => ({ kind: 'count', path })
const flag = (path: string): SumsInput => ({ kind: 'flag', path })
const when = (isAsked: boolean, ...inputs: readonly SumsInput[]): readonly SumsInput[] => (isAsked ? inputs : [])

export const placesOf = ({ trailer, boat }: Rig): SumsGroup => ({
  id: 'places',
  inputs: [
    length('trailer.ballToAxleM'), ...when(boat !== undefined, length('loading.stemAftOfBallM'), length('loading.transomAftOfBallM')), length('loading.trailerCentreAftOfBallM'),
    ...when(boat !== undefined, length('boat.lengthM'), length('loading.boatCentreAftOfStemM')), ...when(boat?.engineMassKg !== undefined, length('loading.engineAftOfStemM')),
    ...when((trailer.axleCount ?? 1) > 1, length('stance.axleSpacingM'), { kind: 'choice', path: 'stance.loadSharing', options: loadSharings, words: 'sharings' }),
  ],
})

export const massesOf = ({ boat }: Rig): SumsGroup => ({
  id: 'masses',
  inputs: [
    mass('trailer.massKg'), mass('trailer.maximumMassKg'), mass('trailer.axleRatingKg'), ...when(boat !== undefined, mass('boat.dryMassKg'), mass('boat.engineMassKg')),
    count('trailer.axleCount'), count('trailer.tyre.loadIndex'), mass('stance.axleGroupKg'),
  ],
})

export const heightsOf = ({ boat, stance }: Rig): SumsGroup => ({
  id: 'heights',
  inputs: [
    length('stance.ballHeightM'), length('stance.levelBallHeightM'), length('stance.wheelCentreHeightM'), length('stance.trackM'), length('loading.trailerCentreHeightM'),
    ...when(boat !== undefined, length('loading.boatCentreHeightM')), ...when(boat?.engineMassKg !== undefined, length('loading.engineHeightM')),
    ...when(stance?.loadSharing === 'independent', { kind: 'quantity', path: 'stance.axleRateKgPerM', quantity: 'springRate' }),
  ],
})

const ratings = (...names: readonly string[]): SumsInput[] => names.map((name) => mass(`couplingRatings.${name}`))

export const couplingInputs: readonly SumsGroup[] = [
  {
    id: 'coupling',
    inputs: [
      ...ratings('couplerRatingKg', 'ballRatingKg', 'hitchRatingKg', 'towVehicleRatingKg', 'towVehicleMaximumKg', 'towVehicleAxlesKg'), small('trailer.ballDiameterM'),
      flag('couplingRatings.towVehicleHasAirSuspension'),
    ],
  },
  { id: 'staticLoads', inputs: ratings('couplerStaticKg', 'ballStaticKg', 'hitchStaticKg', 'towVehicleStaticKg') },
  { id: 'strength', inputs: [force('couplingRatings.dValueN'), force('couplingRatings.vValueN'), count('couplingRatings.chainCount'), force('couplingRatings.chainBreakingForceN')] },
]

/** What a brake test showed; the forces at the wheels are asked axle by axle. */
export const brakeInputs = ({ trailer }: Rig): SumsGroup => ({
  id: 'brakeTest',
  inputs: [
    ...when(trailer.brakes !== undefined && trailer.brakes !== 'none', count('trailer.brakedAxleCount')),
    { kind: 'date', path: 'brakeTest.date' }, mass('brakeTest.massKg'), small('brakeTest.actuatorTravelM'), small('brakeTest.actuatorStrokeM'),
  ],
})

/** As many rows as the trailer has axles, or as are recorded; one while neither is known. */
export const brakedAxles = ({ trailer, brakeTest }: Rig): number => Math.max(trailer.axleCount ?? 1, brakeTest?.axles?.length ?? 0)

export const brakeForceInputs = (axle: number): { readonly left: SumsInput; readonly right: SumsInput } =>
  ({ left: force(`brakeTest.axles.${axle}.leftN`), right: force(`brakeTest.axles.${axle}.rightN`) })

export const tieDownInputs: SumsGroup = {
  id: 'tieDown',
  inputs: [
    { kind: 'choice', path: 'tieDown.supportSurface', options: supportSurfaces, words: 'surfaces' }, { kind: 'quantity', path: 'tieDown.friction', quantity: 'ratio' },
    { kind: 'flag', path: 'tieDown.bowStopBlocks' }, force('tieDown.bowStopRatedN'), { kind: 'flag', path: 'tieDown.winchStrapCounts' },
  ],
}
