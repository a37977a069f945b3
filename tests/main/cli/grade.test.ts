import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { openWorkplace, type Workplace } from './command-line'

let at: Workplace
beforeAll(async () => {
  at = await openWorkplace()
})
afterAll(() => at.clear())

/** A rusted face of a painted rail; invented. */
const painted = (spot: object = {}, beside: object = {}) => ({
  surveyDate: '2026-06-01', material: 'painted steel', component: 'rail',
  spot: { place: 'left rail', kind: 'red rust', areaM2: '14 cm2', faceAreaM2: '0.35 m2', ...spot }, ...beside,
})

const gradedSchema = z.object({ gradings: z.array(z.object({ verdict: z.string(), share: z.object({ value: z.number() }).loose().optional() }).loose()), words: z.array(z.object({ title: z.string() }).loose()) })

const graded = async (content: object) => {
  await at.put('spot.json', content)
  const { code, out, error } = await at.run('grade', 'spot.json', '--json')
  return { code, error, answer: code === 0 ? gradedSchema.parse(JSON.parse(out)) : undefined }
}

describe('grade', () => {
  it('reads areas with their units and says degree, grade and what to do', async () => {
    await at.put('spot.json', painted())
    const { code, out, error } = await at.run('grade', 'spot.json')
    expect([code, error]).toEqual([0, ''])
    expect(out).toContain('Ri 2')
    expect(out).toMatch(/D610.*6/)
    expect(out).toContain('ISO 4628-3')
    expect(out).not.toMatch(/\{\w+\}|undefined|NaN/)
  })
  it('fails a hole in a rail by the published rule, whatever its share', async () => {
    const { answer } = await graded(painted({ kind: 'hole' }))
    expect(answer?.gradings[0]?.verdict).toBe('fail')
  })
  it('tells the life of the zinc from its readings, the place of use and the age', async () => {
    await at.put('spot.json', { surveyDate: '2026-06-01', material: 'galvanized steel', component: 'rail', exposure: 'coast', builtYear: 2014, spot: { place: 'rail', kind: 'white product', coatingReadingsM: ['58 µm', '40 µm'], wallM: '4 mm' } })
    const { code, out } = await at.run('grade', 'spot.json')
    expect(code).toBe(0)
    expect(out).toMatch(/ISO 9224/)
    expect(out).toMatch(/years/)
  })
  it('prints the JSON Schema of its file', async () => {
    const { code, out } = await at.run('schema', 'grade')
    expect(code).toBe(0)
    expect(JSON.parse(out)).toMatchObject({ type: 'object' })
  })
})

describe('a spot that cannot be right is refused, and not graded', () => {
  it.each<[string, object, RegExp]>([
    ['a share over 100 %', painted({ areaM2: undefined, faceAreaM2: undefined, share: '120 %' }), /spot\.share.*100 %/],
    ['a spot larger than its face', painted({ areaM2: '1 m2' }), /spot\.areaM2.*larger than the face/],
    ['more wall left than there was', painted({ wallM: '4 mm', remainingM: '5 mm' }), /spot\.remainingM.*No more|spot\.remainingM/],
    ['a pit deeper than the wall', painted({ wallM: '3 mm', pitDepthM: '4 mm' }), /spot\.pitDepthM/],
    ['a negative reading', painted({ coatingReadingsM: ['-3 µm'] }), /spot\.coatingReadingsM/],
    ['an unknown unit', painted({ areaM2: '14 acres' }), /spot\.areaM2.*14 acres/],
    ['a misspelt field', painted({ aera: 3 }), /spot\.aera.*schema grade/],
    ['an unknown material', painted({}, { material: 'tin' }), /material/],
  ])('%s', async (_, content, sentence) => {
    const { code, error } = await graded(content)
    expect(code).toBe(1)
    expect(error).toMatch(sentence)
  })
})
