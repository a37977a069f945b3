import * as fc from 'fast-check'
import type { Check, Field } from '../../../shared-logic/checks/check'
import { rigSchema, type Rig } from '../../../shared-logic/rig/rig'
import * as trailers from '../../../shared-logic/rig/trailer'
import { engineForms, hullMaterials } from '../../../shared-logic/rig/boat'
import type { FieldValue, FieldValues } from '../../../shared-logic/survey/answer'
import { spotSchema } from '../../../shared-logic/survey/spot'

/** The day every random survey is made on. */
export const surveyDate = '2025-06-01'

const between = (min: number, max: number): fc.Arbitrary<number> => fc.oneof(fc.constantFrom(min, max, (min + max) / 2), fc.double({ min, max, noNaN: true }))
/** Without braces, which would look like gaps. */
const words = (max: number): fc.Arbitrary<string> => fc.string({ minLength: 1, maxLength: Math.min(max, 40), unit: fc.constantFrom(...'ABCDEFGHJKLMNPRSTUVWXYZ0123456789 -IOQäß'.split('')) }).filter((text) => text.trim() !== '')
const numbersAsStamped = fc.constantFrom('1M8GDM9AXKP042788', '1M8GDM9A1KP042788', '11111111111111111', 'ABC12345D404', 'XYZ12345M82H', 'FR-XYZ12345D404', '2319', '317', '0018')
const dates = fc.date({ min: new Date('1990-01-01'), max: new Date(surveyDate), noInvalidDate: true }).map((date) => date.toISOString().slice(0, 10))

const spot = fc
  .record(
    {
      id: words(8), place: words(20), material: fc.constantFrom(...spotSchema.shape.material.options), kind: fc.constantFrom(...spotSchema.shape.kind.options),
      faceAreaM2: between(0.01, 50), share: between(0.000_01, 1), wallM: between(0.0005, 0.05), depth: between(0, 1), shows: fc.subarray(['area', 'face', 'pit', 'wall']),
    },
    { noNullPrototype: true },
  )
  .map(({ share, depth, shows, faceAreaM2, wallM, ...rest }) => ({
    ...rest,
    ...(shows.includes('area') && { areaM2: Math.min(20, faceAreaM2 * share) }),
    ...(shows.includes('face') && { faceAreaM2 }),
    ...(shows.includes('pit') && { pitDepthM: wallM * depth }),
    ...(shows.includes('wall') && { wallM }),
  }))

const valueOf = (field: Field): fc.Arbitrary<FieldValue> => {
  switch (field.kind) {
    case 'choice':
      return fc.constantFrom(...field.options)
    case 'reading':
      return between(field.min, field.max)
    case 'count':
      return fc.integer({ min: field.min, max: field.max })
    case 'text':
      return fc.oneof(words(field.maxLength), numbersAsStamped).filter((text) => text.length <= field.maxLength)
    case 'date':
      return dates
    case 'spots':
      return fc.array(spot, { maxLength: 5 })
  }
}

/** Any values the check's fields allow, some left out. */
export const anyValues = (check: Check): fc.Arbitrary<FieldValues> =>
  fc.record(Object.fromEntries(check.fields.map((field) => [field.id, valueOf(field)])), { requiredKeys: [], noNullPrototype: true })

const oneOf = <Value>(values: readonly Value[]): fc.Arbitrary<Value> => fc.constantFrom(...values)
const some = <Shape extends object>(shape: { [Key in keyof Shape]: fc.Arbitrary<Shape[Key]> }) => fc.record(shape, { requiredKeys: [], noNullPrototype: true })

const tyre = some({ size: fc.constantFrom('ST205/75R15', '165 R13 C', '4.80-12', 'round'), loadIndex: fc.integer({ min: 50, max: 130 }), speedSymbol: fc.constantFrom('L', 'N', 'Z'), loadRange: fc.constantFrom('B', 'C', 'D', 'E', 'F'), placardPressurePa: between(50_000, 1_000_000) })

const trailer = some({
  builtYear: fc.integer({ min: 1950, max: 2025 }), identificationNumber: fc.oneof(words(20), numbersAsStamped), market: oneOf(trailers.markets), frame: oneOf(trailers.frameMaterials),
  massKg: between(50, 5_000), maximumMassKg: between(100, 20_000), axleRatingKg: between(100, 5_000), lengthM: between(2, 20), widthM: between(1, 3), ballToAxleM: between(1, 15),
  axleCount: fc.integer({ min: 1, max: 3 }), suspension: oneOf(trailers.suspensions), hubLubrication: oneOf(trailers.hubLubrications), brakes: oneOf(trailers.trailerBrakes), brakeForm: oneOf(trailers.brakeForms),
  brakedAxleCount: fc.integer({ min: 1, max: 3 }), coupler: oneOf(trailers.couplerClasses), ballDiameterM: between(0.03, 0.12), tyre, spareWheel: fc.boolean(), supports: oneOf(trailers.hullSupports),
  winch: oneOf(trailers.winchForms), lamps: oneOf(trailers.lampForms), plug: oneOf(trailers.wirePlugs), jack: fc.boolean(),
})

const boat = some({
  builtYear: fc.integer({ min: 1950, max: 2025 }), hullIdentificationNumber: fc.oneof(words(16), numbersAsStamped), hull: oneOf(hullMaterials), lengthM: between(2, 20), beamM: between(1, 4),
  dryMassKg: between(50, 10_000), engine: oneOf(engineForms), engineMassKg: between(10, 1_000),
})

/** Any rig the register takes, most of it unknown or not. */
export const anyRig: fc.Arbitrary<Rig> = fc.record({ name: fc.constant('Rig'), trailer, boat }, { requiredKeys: ['name', 'trailer'], noNullPrototype: true }).map((rig) => rigSchema.parse(rig))
