import { describe, expect, it } from 'vitest'
import { Refusal } from '../../../shared-logic/contract/refusal'
import { gradeFile, gradeFileSchema } from '../../../shared-logic/corrosion/grade-file'
import { readUnits, unknownField } from '../../../shared-logic/units/written-file'
import { en } from '../../../shared-logic/words/en'
import { sayRefusal } from '../../../shared-logic/words/say-refusal'

const base = { surveyDate: '2026-06-01', material: 'galvanized steel' }
const spot = { kind: 'red rust', areaM2: '6 cm2', faceAreaM2: '0.3 m2', wallM: '3 mm', coatingReadingsM: ['40 µm', '52 µm', 55e-6] }
const graded = (file: object) => gradeFile(gradeFileSchema.parse(readUnits(file)))

const refusedAs = (file: object): { readonly code: string; readonly field: string | undefined; readonly sentence: string } => {
  try {
    graded(file)
  } catch (fault) {
    if (fault instanceof Refusal) return { code: fault.data.code, field: fault.data.field, sentence: sayRefusal(en, fault.data) }
    throw fault
  }
  throw new Error('not refused')
}

describe('a file of spots', () => {
  it('is graded in the units it is written in', () => {
    const { gradings, trails } = graded({ ...base, spot })
    expect(gradings).toMatchObject([{ spot: { id: 'spot 1', material: 'galvanized steel' }, share: { value: expect.closeTo(0.002, 9) }, gravest: 'red rust on zinc', coating: { zinc: { lowestM: expect.closeTo(40e-6, 12), count: 3 } } }])
    expect(trails).toHaveLength(1)
  })

  it('with the share in per cent', () => {
    expect(graded({ ...base, material: 'painted steel', spot: { kind: 'red rust', share: '0.4 %' } }).gradings[0]?.coating.grades[0]).toMatchObject({ degree: { measured: 2 } })
  })

  it('with earlier surveys is followed by its place in the list', () => {
    const { trails } = graded({ ...base, spots: [spot], earlier: [{ surveyDate: '2024-06-01', spots: [{ ...spot, areaM2: '3 cm2' }] }] })
    expect(trails).toMatchObject([{ standing: 'grown', points: [{ date: '2024-06-01' }, { date: '2026-06-01' }] }])
  })

  it('names nothing the schema does not keep', () => {
    const read = readUnits({ ...base, spot: { ...spot, areaM: 1 } })
    expect(unknownField(read, gradeFileSchema.parse(read))).toBe('spot.areaM')
  })

  it.each<[string, object, string, string]>([
    ['a share over 100 %', { ...base, spot: { kind: 'red rust', share: '101 %' } }, 'corrosion.share-over-whole', 'spot.share'],
    ['an area over its face', { ...base, spot: { ...spot, areaM2: '0.31 m2' } }, 'corrosion.area-over-face', 'spot.areaM2'],
    ['spots over their face', { ...base, spots: [{ ...spot, place: 'here', areaM2: '0.2 m2' }, { ...spot, place: 'Here', areaM2: '0.2 m2' }] }, 'corrosion.spots-over-face', 'spots.0.faceAreaM2'],
    ['more left than there was', { ...base, spot: { ...spot, remainingM: '3.1 mm' } }, 'corrosion.remaining-over-wall', 'spot.remainingM'],
    ['a pit deeper than the wall', { ...base, spots: [spot, { ...spot, pitDepthM: '3.1 mm' }] }, 'corrosion.pit-over-wall', 'spots.1.pitDepthM'],
    ['a negative depth', { ...base, spot: { ...spot, pitDepthM: -0.001 } }, 'corrosion.negative', 'spot.pitDepthM'],
    ['a negative reading', { ...base, spot: { ...spot, coatingReadingsM: [-1e-6] } }, 'corrosion.negative', 'spot.coatingReadingsM'],
    ['a negative area', { ...base, spot: { ...spot, areaM2: '-6 cm2' } }, 'corrosion.negative', 'spot.areaM2'],
    ['a wall of nothing', { ...base, spot: { ...spot, wallM: 0 } }, 'corrosion.nothing', 'spot.wallM'],
    ['an uncertainty over the area', { ...base, spot: { ...spot, areaUncertaintyM2: '7 cm2' } }, 'corrosion.uncertainty-over-area', 'spot.areaUncertaintyM2'],
    ['no material', { surveyDate: '2026-06-01', spot }, 'corrosion.no-material', 'spot.material'],
    ['no spot', base, 'corrosion.no-spot', 'spots'],
    ['both ways of giving spots', { ...base, spot, spots: [spot] }, 'corrosion.spot-and-spots', 'spot'],
    ['one id twice', { ...base, spots: [{ ...spot, id: 'a' }, { ...spot, id: 'a', place: 'b' }] }, 'corrosion.spot-twice', 'spots.1.id'],
    ['a year built to come', { ...base, builtYear: 2027, spot }, 'corrosion.built-after-survey', 'builtYear'],
    ['an earlier survey of the same day', { ...base, spot, earlier: [{ surveyDate: '2026-06-01', spots: [] }] }, 'corrosion.not-earlier', 'earlier.0.surveyDate'],
    ['nonsense in an earlier survey', { ...base, spot, earlier: [{ surveyDate: '2024-06-01', spots: [{ ...spot, share: 2 }] }] }, 'corrosion.share-over-whole', 'earlier.0.spots.0.share'],
  ])('with %s is refused in a sentence, and nothing graded', (_what, file, code, field) => {
    const refused = refusedAs(file)
    expect(refused).toMatchObject({ code, field })
    expect(refused.sentence).toMatch(/^[A-ZÀ-Ž“].*\.$/)
    expect(refused.sentence).not.toMatch(/[{}]|corrosion\./)
  })

  it('at the edge is graded: all of the face, a wall right through, nothing lost', () => {
    expect(graded({ ...base, spot: { ...spot, areaM2: '0.3 m2' } }).gradings[0]?.share?.value).toBe(1)
    expect(graded({ ...base, spot: { ...spot, pitDepthM: '3 mm' } }).gradings[0]?.gravest).toBe('hole')
    expect(graded({ ...base, spot: { ...spot, remainingM: '3 mm' } }).gradings[0]?.structure.finding).toBe('small loss')
  })
})
