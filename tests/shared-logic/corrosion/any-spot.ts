import * as fc from 'fast-check'
import { spotComponents, spotKinds, spotMaterials, spotSchema, touchingMetals, type Spot } from '../../../shared-logic/survey/spot'

const some = <Value>(values: fc.Arbitrary<Value>): fc.Arbitrary<Value | undefined> => fc.option(values, { nil: undefined })
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true })

/** Any spot that makes sense, most of it measured or not. */
export const anySpot: fc.Arbitrary<Spot> = fc
  .record({
    kind: fc.constantFrom(...spotKinds), material: fc.constantFrom(...spotMaterials), component: some(fc.constantFrom(...spotComponents)), touches: some(fc.constantFrom(...touchingMetals)),
    touchingIsSmaller: some(fc.boolean()), nearMounting: some(fc.boolean()), besideWeld: some(fc.boolean()), faceAreaM2: some(between(0.01, 20)), share: some(between(1e-6, 1)), relative: some(between(0, 0.5)),
    wallM: some(between(0.0008, 0.02)), pit: some(between(0, 1)), left: some(between(0, 1)), pitCount: some(fc.integer({ min: 1, max: 500 })), readings: some(fc.array(between(0, 200e-6), { minLength: 1, maxLength: 8 })),
    state: some(fc.constantFrom('present' as const, 'repaired' as const)),
  })
  .map(({ share, relative, faceAreaM2, wallM, pit, left, readings, ...rest }) => {
    const areaM2 = share !== undefined && faceAreaM2 !== undefined ? Math.min(20, share * faceAreaM2) : undefined
    return spotSchema.parse({
      id: 'spot', place: 'left rail', ...rest, faceAreaM2, wallM, ...(areaM2 === undefined ? { share } : { areaM2, areaUncertaintyM2: relative === undefined ? undefined : areaM2 * relative }),
      pitDepthM: wallM === undefined || pit === undefined ? undefined : pit * wallM, remainingM: wallM === undefined || left === undefined ? undefined : left * wallM, coatingReadingsM: readings,
    })
  })
