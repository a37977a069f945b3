import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { openWorkplace, type Workplace } from './command-line'

let at: Workplace
beforeAll(async () => {
  at = await openWorkplace()
  await at.put('rig.json', file())
})
afterAll(() => at.clear())

/** Masses and lengths as people write them; invented. */
const file = (trailer: object = {}, loading: object = {}, beside: object = {}) => ({
  rig: {
    name: 'Tern',
    trailer: { massKg: '450 kg', maximumMassKg: '2.04 t', ballToAxleM: '16 ft', axleCount: 1, tyre: { loadIndex: 101, placardPressurePa: '50 psi' }, ...trailer },
    boat: { dryMassKg: '4500 lb', lengthM: 6.4, tanks: [{ contents: 'petrol', capacityM3: '20 gal' }] },
    loading: { stemAftOfBallM: 0.8, trailerCentreAftOfBallM: 3.6, boatCentreAftOfStemM: '11 ft 6 in', tanks: [{ contentsM3: '18 gal', aftOfStemM: 4 }], ...loading },
    weighings: [{ method: 'nose raised', date: '2026-05-02', totalKg: 2540, couplingLevelKg: 300, couplingRaisedKg: 280, couplingHeightM: 0.45, raisedRad: '8°' }],
    ...beside,
  },
})

const answerSchema = z.object({ sums: z.object({ load: z.object({ items: z.array(z.object({ id: z.string(), massKg: z.number().optional() })), total: z.object({ massKg: z.number() }) }), balance: z.object({ lever: z.object({ share: z.number() }) }) }), words: z.array(z.object({ id: z.string() })) })

describe('sums', () => {
  it('reads pounds, tonnes, feet and gallons, and answers in SI', async () => {
    const { code, out } = await at.run('sums', 'rig.json', '--json')
    const { sums, words } = answerSchema.parse(JSON.parse(out))
    expect(code).toBe(0)
    expect(sums.load.items.find(({ id }) => id === 'boat')?.massKg).toBeCloseTo(4500 * 0.45359237, 9)
    expect(sums.load.items.find(({ id }) => id === 'tank 1')?.massKg).toBeCloseTo(18 * 3.785411784e-3 * 747.5, 9)
    expect(sums.load.total.massKg).toBeCloseTo(450 + 4500 * 0.45359237 + 18 * 3.785411784e-3 * 747.5, 9)
    expect(words.map(({ id }) => id)).toEqual(['load', 'balance', 'tyres', 'coupling', 'brakes', 'tie-down'])
  })
  it('says to a person what is over, with formula and source', async () => {
    const { code, out, error } = await at.run('sums', 'rig.json')
    expect([code, error]).toEqual([0, ''])
    expect(out).toMatch(/Fail: Rating plate: carries 4,500 lb, 5,\d{3} lb on it/)
    expect(out).toContain('Formula: coupling load =')
    expect(out).toContain('Source: statics')
    expect(out).not.toMatch(/\{\w+\}|undefined|NaN/)
  })
})

describe('a sums file that cannot be right is refused, and no number is shown', () => {
  it.each<[string, object, RegExp]>([
    ['zero mass', file({ massKg: 0 }), /Unladen mass \(rig\.trailer\.massKg\) has to be more than zero/],
    ['a negative mass with its unit', file({ massKg: '-3 kg' }), /rig\.trailer\.massKg/],
    ['an axle at the ball', file({ ballToAxleM: 0 }), /rig\.trailer\.ballToAxleM/],
    ['an axle ahead of the ball', file({ ballToAxleM: '-2 m' }), /rig\.trailer\.ballToAxleM/],
    ['a front axle ahead of the ball', file({ ballToAxleM: 0.3, axleCount: 2 }, {}, { stance: { axleSpacingM: 0.9 } }), /ahead of the ball/],
    ['a stem behind its transom', file({}, { transomAftOfBallM: 0.5 }), /behind its transom/],
    ['more in a tank than it holds', file({}, { tanks: [{ contentsM3: '21 gal' }] }), /more is in tank 1 than it holds/],
    ['a load index that does not exist', file({ tyre: { loadIndex: 131 } }), /rig\.trailer\.tyre\.loadIndex/],
    ['an angle over 90 degrees', file({}, {}, { weighings: [{ method: 'nose raised', date: '2026-05-02', totalKg: 2540, couplingLevelKg: 300, couplingRaisedKg: 280, couplingHeightM: 0.45, raisedRad: '95°' }] }), /raisedRad/],
    ['a weighing of a day to come', file({}, {}, { weighings: [{ method: 'tongue and axles', date: '2031-05-02', couplingKg: 120, axlesKg: 1400 }] }), /weighings\.0\.date.*still to come/],
    ['half a pair', file({}, {}, { weighings: [{ method: 'each axle', date: '2026-05-02', axles: [{ leftKg: 300 }] }] }), /only one side of axle 1/],
    ['a mass in metres', file({ massKg: '450 m' }), /“450 m” cannot be read/],
    ['a number in quotes without a unit', file({ massKg: '450' }), /“450” cannot be read\. Write a number with its unit \(kg, t, g, lb, oz\)/],
    ['a field that is misspelt', file({ masKg: 450 }), /masKg/],
    ['a field beside the rig', { ...file(), colour: 'blue' }, /colour/],
  ])('%s', async (_what, wrong, sentence) => {
    await at.put('wrong.json', wrong)
    const { code, out, error } = await at.run('sums', 'wrong.json')
    expect([code, out]).toEqual([1, ''])
    expect(error).toMatch(sentence)
    expect(error).not.toMatch(/\{\w+\}/)
  })
})

describe('schema sums', () => {
  it('is JSON Schema in which a mass is a number or a text with its unit', async () => {
    const { code, out } = await at.run('schema', 'sums')
    const mass = z.object({ anyOf: z.tuple([z.object({ type: z.literal('number') }), z.object({ type: z.literal('string'), description: z.string() })]) })
    const schema = z.object({ $schema: z.string(), properties: z.object({ rig: z.object({ properties: z.object({ trailer: z.object({ properties: z.object({ massKg: mass }) }) }) }) }) }).parse(JSON.parse(out))
    expect(code).toBe(0)
    expect(schema.$schema).toContain('2020-12')
    expect(schema.properties.rig.properties.trailer.properties.massKg.anyOf[1].description).toContain('lb')
  })
})
