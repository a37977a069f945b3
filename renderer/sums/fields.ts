import { loadSharings } from '../../shared-logic/rig/loading'
import type { Rig } from '../../shared-logic/rig/rig'
import { supportSurfaces } from '../../shared-logic/rig/tie-down'
import type { Quantity } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'

/** How one input of the sums is typed or chosen. */
export type SumsInput =
  | { readonly kind: 'quantity'; readonly path: string; readonly quantity: Quantity }
  | { readonly kind: 'number'; readonly path: string; readonly min: number; readonly max: number }
  | { readonly kind: 'choice'; readonly path: string; readonly options: readonly string[]; readonly words: 'sharings' | 'surfaces' }
  | { readonly kind: 'flag'; readonly path: string }

export type GroupId = keyof Words['screens']['sums']['groups']

export interface SumsGroup {
  readonly id: GroupId
  readonly inputs: readonly SumsInput[]
}

const mass = (path: string): SumsInput => ({ kind: 'quantity', path, quantity: 'mass' })
const length = (path: string): SumsInput => ({ kind: 'quantity', path, quantity: 'length' })
const small = (path: string): SumsInput => ({ kind: 'quantity', path, quantity: 'smallLength' })
const force = (path: string): SumsInput => ({ kind: 'quantity', path, quantity: 'force' })
const when = (isAsked: boolean, ...inputs: readonly SumsInput[]): readonly SumsInput[] => (isAsked ? inputs : [])

export const placesOf = ({ trailer, boat }: Rig): SumsGroup => ({
  id: 'places',
  inputs: [
    length('trailer.ballToAxleM'), ...when(boat !== undefined, length('loading.stemAftOfBallM')), length('loading.trailerCentreAftOfBallM'),
    ...when(boat !== undefined, length('boat.lengthM'), length('loading.boatCentreAftOfStemM')), ...when(boat?.engineMassKg !== undefined, length('loading.engineAftOfStemM')),
    ...when((trailer.axleCount ?? 1) > 1, length('stance.axleSpacingM'), { kind: 'choice', path: 'stance.loadSharing', options: loadSharings, words: 'sharings' }),
  ],
})

export const massesOf = ({ boat }: Rig): SumsGroup => ({
  id: 'masses',
  inputs: [
    mass('trailer.massKg'), mass('trailer.maximumMassKg'), mass('trailer.axleRatingKg'), ...when(boat !== undefined, mass('boat.dryMassKg'), mass('boat.engineMassKg')),
    { kind: 'number', path: 'trailer.axleCount', min: 1, max: 3 }, { kind: 'number', path: 'trailer.tyre.loadIndex', min: 50, max: 130 }, mass('stance.axleGroupKg'),
  ],
})

export const heightsOf = ({ boat, stance }: Rig): SumsGroup => ({
  id: 'heights',
  inputs: [
    length('stance.ballHeightM'), length('stance.levelBallHeightM'), length('stance.wheelCentreHeightM'), length('stance.trackM'), length('loading.trailerCentreHeightM'),
    ...when(boat !== undefined, length('loading.boatCentreHeightM')), ...when(boat?.engineMassKg !== undefined, length('loading.engineHeightM')),
    ...when(stance?.loadSharing === 'independent', { kind: 'number', path: 'stance.axleRateKgPerM', min: 500, max: 500_000 }),
  ],
})

export const couplingInputs: SumsGroup = {
  id: 'coupling',
  inputs: [
    ...['couplerRatingKg', 'ballRatingKg', 'hitchRatingKg', 'towVehicleRatingKg', 'couplerStaticKg', 'ballStaticKg', 'hitchStaticKg', 'towVehicleStaticKg', 'towVehicleMaximumKg', 'towVehicleAxlesKg'].map((name) => mass(`couplingRatings.${name}`)),
    force('couplingRatings.dValueN'), force('couplingRatings.chainBreakingForceN'), { kind: 'number', path: 'couplingRatings.chainCount', min: 1, max: 4 }, small('trailer.ballDiameterM'),
  ],
}

export const brakeInputs = ({ trailer }: Rig): SumsGroup => ({
  id: 'brakeTest',
  inputs: [
    ...when(trailer.brakes !== undefined && trailer.brakes !== 'none', { kind: 'number', path: 'trailer.brakedAxleCount', min: 1, max: 3 }),
    small('brakeTest.actuatorTravelM'), small('brakeTest.actuatorStrokeM'),
  ],
})

export const tieDownInputs: SumsGroup = {
  id: 'tieDown',
  inputs: [
    { kind: 'choice', path: 'tieDown.supportSurface', options: supportSurfaces, words: 'surfaces' }, { kind: 'quantity', path: 'tieDown.friction', quantity: 'ratio' },
    { kind: 'flag', path: 'tieDown.bowStopBlocks' }, force('tieDown.bowStopRatedN'), { kind: 'flag', path: 'tieDown.winchStrapCounts' },
  ],
}
