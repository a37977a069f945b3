import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gradeSpot } from '../../../shared-logic/corrosion/grade-spot'
import { findingKeys } from '../../../shared-logic/corrosion/findings'
import { coatingLife } from '../../../shared-logic/corrosion/life'
import { trailsOf } from '../../../shared-logic/corrosion/trails'
import { exposures } from '../../../shared-logic/rig/trailer'
import type { Spot } from '../../../shared-logic/survey/spot'
import { unitSystems } from '../../../shared-logic/units/quantity'
import { en } from '../../../shared-logic/words/en'
import { sayGrade, sayShortGrade } from '../../../shared-logic/words/corrosion/grade'
import { sayLife } from '../../../shared-logic/words/corrosion/life'
import type { CorrosionSection } from '../../../shared-logic/words/corrosion/section'
import { sayTrail } from '../../../shared-logic/words/corrosion/trail'
import { anySpot } from './any-spot'

const allText = ({ title, lines, sources, cautions }: CorrosionSection): string => [title, ...lines.map(({ text }) => text), ...sources, ...cautions].join('\n')
const broken = /[{}]|NaN|Infinity|undefined|\[object|:\s*$/m
const linesOf = (spot: Spot, units: 'metric' | 'us' = 'metric'): string[] => sayGrade(en, gradeSpot(spot, []), units).lines.map(({ text }) => text)

describe('what is said of any spot', () => {
  it('has no gap left open, in either units, for grade, course and life', () => {
    fc.assert(fc.property(anySpot, anySpot, fc.constantFrom(...unitSystems), fc.constantFrom(...exposures, undefined), fc.option(fc.integer({ min: 1990, max: 2030 }), { nil: undefined }), (first, second, units, exposure, builtYear) => {
      const surveys = [{ date: '2022-03-01', places: [{ position: 'left rail', spots: [first] }] }, { date: '2026-06-01', places: [{ position: 'left rail', spots: [second] }] }]
      const trails = trailsOf(surveys, { trailer: { ...(exposure && { exposure }), ...(builtYear && { builtYear }) } })
      const said = trails.flatMap((trail) => [sayTrail(en, trail, units), sayLife(en, trail.life, units), sayGrade(en, trail.last.grading, units)])
      expect(said.map(allText).join('\n')).not.toMatch(broken)
      expect(said.every(({ lines }) => lines.length > 0)).toBe(true)
    }), { numRuns: 400 })
  })

  it('has a remedy in words for every finding to act on', () => {
    for (const key of findingKeys) {
      expect(en.corrosion.findings[key].because).toMatch(/^[^A-Z].*\.$/)
      expect(en.corrosion.findings[key].remedy ?? 'none.').toMatch(/\.$/)
    }
  })
})

describe('a grade in sentences', () => {
  const galvanized: Spot = { id: 'a', place: 'rear cross-member, upper face', material: 'galvanized steel', kind: 'red rust', component: 'cross-member', areaM2: 0.0012, areaUncertaintyM2: 0.0001, faceAreaM2: 0.12, wallM: 0.0048, coatingReadingsM: [66e-6, 71e-6] }

  it('tells size with its interval, rating by table and formula, zinc against the standard, bare spots, verdicts and what to do', () => {
    expect(linesOf(galvanized)).toEqual([
      'Cross-member · Galvanized steel · Red rust',
      'Area 12 cm², between 11 cm² and 13 cm².',
      '1 % of the face, between 0.92 % and 1.1 %.',
      'ISO 10289: protection rating Rp 6–5 by the table; 6.00 by the formula.',
      'Zinc: 2 readings, lowest 66 µm, mean 69 µm (about 493 g/m² by the rule of ISO 1461).',
      'New steel of 4.8 mm has at least 55 µm anywhere and 70 µm in the mean (ISO 1461): the mean is missed, which is less reserve, not a defect. ASTM A123: a mean of 75 µm for a tube, 75 µm for a shape.',
      'Bare spots: the largest 12 cm² (39.09 mm across), together 12 cm². ISO 1461, 6.3: past what a galvanizer may mend on new work (10 cm² a spot, together 6 cm²). ASTM A123: past its limits (25.4 mm across, together 6 cm²).',
      'Coating: Red rust on 1 % of the face, protection rating 6–5 (ISO 10289; by formula 6.0): beyond what a galvanizer may mend by spot repair on new work (0.5 %, and 10 cm² a spot).',
      'Metal: Depth was not measured; what is left of the wall is not known.',
      'What to do: Plan to galvanize again or to coat the whole member; repair the worst places before the next trip.',
    ])
  })

  it('is told in square inches, mils and ounces to a reader who uses them', () => {
    const us = [galvanized, { ...galvanized, areaM2: 0.0003, areaUncertaintyM2: undefined, pitCount: 4 }].flatMap((spot) => linesOf(spot, 'us')).join('\n')
    expect(us).toContain('Area 1.86 sq in')
    expect(us).toContain('(0.5 %, and 1.55 sq in a spot)')
    expect(us).toContain('(cold galvanize), at least 3.9 mil')
    // 4 on 3 cm2 are 1.33 to the dm2; 9.29 dm2 make a square foot.
    expect(us).toContain('About 1239 pits to the square foot')
    expect(us).toContain('lowest 2.6 mil')
    expect(us).toContain('oz/ft²')
    expect(us).not.toMatch(/µm|cm²|dm²| mm/)
  })

  it('puts Ri by either rule and the letter of ASTM D610 beside the percentage', () => {
    expect(linesOf({ id: 'a', place: 'x', material: 'painted steel', kind: 'red rust', component: 'rail', areaM2: 0.042, faceAreaM2: 0.35 }).slice(1, 5)).toEqual([
      'Area 420 cm².', '12 % of the face.',
      'ISO 4628-3: degree of rusting Ri 5, the smallest whose nominal area is not below the measurement; the nearest would be Ri 4.',
      'ASTM D610: rust grade 3-S (spot: most of it in a few places).',
    ])
  })

  it('says of a stainless bolt in aluminium how far apart they are, which is eaten and how fast', () => {
    expect(linesOf({ id: 'a', place: 'x', material: 'aluminium', kind: 'galvanic', component: 'bunk bracket', touches: 'stainless steel', touchingIsSmaller: true })).toContain(
      'The other metal: Stainless steel, 0.4 V apart; up to 0.15 V is usually accepted outdoors. This member is the one that is eaten. In sea water 0.71 V was measured between the two. The other part is the smaller one: the attack is slow and stays near it.',
    )
  })

  it('fits a table cell', () => {
    const short = (over: Partial<Spot>): string => sayShortGrade(en, gradeSpot({ ...galvanized, ...over }, []))
    expect([short({}), short({ material: 'painted steel' }), short({ kind: 'white product' }), short({ material: 'aluminium' }), short({ kind: 'weld', areaUncertaintyM2: 0 })]).toEqual(['Rp 6–5', 'Ri 3–4, 6–5-S', 'RA 6–5 C', 'not rated', 'good'])
  })

  it('of a repaired spot is short', () => {
    expect(linesOf({ ...galvanized, state: 'repaired' })).toEqual(['Cross-member · Galvanized steel · Red rust', 'Repaired, and sound.'])
  })
})

describe('life and course in sentences', () => {
  const rail: Spot = { id: 'a', place: 'left rail', material: 'galvanized steel', kind: 'red rust', component: 'tongue', coatingReadingsM: [40e-6] }

  it('tells what a life waits for by its labels', () => {
    expect(sayLife(en, coatingLife({ ...rail, coatingReadingsM: undefined }, { trailer: {}, surveyDate: '2026-06-01' }), 'metric').lines).toEqual([{ text: 'Life left waits for: Coating readings; Where it is kept and used; Year built.', verdict: 'not seen' }])
  })

  it('tells the range by the place, and that nothing else is known yet', () => {
    const said = sayLife(en, coatingLife(rail, { trailer: { exposure: 'coast', builtYear: 2014 }, surveyDate: '2026-06-01' }), 'metric')
    expect(said.lines.map(({ text }) => text)).toEqual([
      'Lowest reading 40 µm.',
      'By the place (class C4 to C5, ISO 9223): about 4.8 to 20 years of zinc left; loss slows with age in air (ISO 9224), 12 years old.',
      'Only the table can be used until a second survey measures the same place.',
    ])
    expect(said.cautions.join(' ')).toContain('worse than the table')
  })

  it('tells which of the two is believed, and why', () => {
    const series = [{ date: '2024-06-01', readingsM: [52e-6] }, { date: '2026-06-01', readingsM: [40e-6] }]
    const text = (from: string): string => sayLife(en, coatingLife(rail, { trailer: { exposure: 'coast', builtYear: 2014 }, surveyDate: '2026-06-01' }, [{ date: from, readingsM: [52e-6] }, ...series.slice(1)]), 'metric').lines.at(-1)?.text ?? ''
    expect(text('2024-06-01')).toMatch(/^The measured rate is believed: 2 years apart/)
    expect(text('2026-01-01')).toBe('The table is believed: the surveys are less than a year apart.')
  })

  it('tells the reserve and the gauge’s error in the reader’s units', () => {
    const said = (before: number): string => sayLife(en, coatingLife(rail, { trailer: { exposure: 'coast', builtYear: 2014 }, surveyDate: '2026-06-01' }, [{ date: '2024-06-01', readingsM: [before] }, { date: '2026-06-01', readingsM: [40e-6] }]), 'us').lines.map(({ text }) => text).join(' ')
    expect(said(52e-6)).toContain('until 0.8 mil is left')
    expect(said(44e-6)).toContain('the error of the gauge (0.2 mil)')
    expect(said(52e-6) + said(44e-6)).not.toContain('µm')
  })

  it('tells a course look by look, the change, and the range of dates', () => {
    const at = (areaM2: number): Spot => ({ ...rail, areaM2, areaUncertaintyM2: 0.000_01, faceAreaM2: 0.3, coatingReadingsM: undefined })
    const [trail] = trailsOf([{ date: '2024-06-01', places: [{ position: 'tongue', spots: [at(0.0003)] }] }, { date: '2026-06-01', places: [{ position: 'tongue', spots: [at(0.0006)] }] }], { trailer: {} })
    const lines = trail && sayTrail(en, trail, 'metric').lines.map(({ text }) => text)
    expect(lines?.slice(0, 4)).toEqual(['Grown since 1 June 2024.', '1 June 2024: 3 cm² ± 0.1 cm², Rp 9–8.', '1 June 2026: 6 cm² ± 0.1 cm², Rp 8.', 'Change of area: 3 cm² ± 0.1 cm².'])
    expect(lines?.[4]).toMatch(/^The next grade \(ISO 10289, above 0\.25 % of the face\) is reached between \d+ \w+ 202[67] and \d+ \w+ 202[78]\.$/)
  })
})
