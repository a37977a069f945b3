import { describe, expect, it } from 'vitest'
import { boxSectionLoss } from '../../shared-logic/corrosion/box-section'
import { rowOf } from '../../shared-logic/corrosion/findings'
import { anodicIndex, coupleOf } from '../../shared-logic/corrosion/galvanic'
import { gradeSpot } from '../../shared-logic/corrosion/grade-spot'
import { acrossOf, corrosionLimits } from '../../shared-logic/corrosion/limits'
import { corrosionSources } from '../../shared-logic/corrosion/sources'
import { keptOf, weldedStrength } from '../../shared-logic/corrosion/weld-strength'
import type { Spot } from '../../shared-logic/survey/spot'

const spot = (over: Partial<Spot>): Spot => ({ id: 'a', place: 'left rail', material: 'painted steel', kind: 'pitting', component: 'rail', ...over })
const structureOf = (over: Partial<Spot>): string => gradeSpot(spot(over), []).structure.finding
const circle = (acrossM: number): number => (Math.PI * acrossM ** 2) / 4

describe('galvanic couples, anodic index tables (LU*; hot-dip galvanized 1.20 from memory)', () => {
  it('stainless and wrought aluminium: 0.40 V, not accepted outdoors, the aluminium is eaten', () => {
    expect(coupleOf('aluminium', 'stainless steel')).toMatchObject({ differenceV: expect.closeTo(0.4, 9), limitV: 0.15, accepted: false, anode: 'member', isRemembered: false })
  })

  it('galvanized and wrought aluminium: 0.30 V, the zinc is eaten; the figure is from memory and so is never the ground of a fail', () => {
    expect(coupleOf('aluminium', 'galvanized steel')).toMatchObject({ differenceV: expect.closeTo(0.3, 9), accepted: false, anode: 'other part', isRemembered: true })
    expect(coupleOf('galvanized steel', 'aluminium').anode).toBe('member')
    expect(gradeSpot(spot({ material: 'aluminium', kind: 'galvanic', touches: 'galvanized steel' }), [])).toMatchObject({ gravest: 'galvanic, other part', verdict: 'advisory' })
  })

  it('carbon steel and wrought aluminium: 0.05 V, within 0.15, the aluminium the anode', () => {
    expect(coupleOf('aluminium', 'carbon steel')).toMatchObject({ differenceV: expect.closeTo(0.05, 9), accepted: true, anode: 'member' })
  })

  it('stainless and carbon steel: 0.35 V is accepted in a heated store (0.50), not in an unheated one (0.25)', () => {
    expect(coupleOf('carbon steel', 'stainless steel', 'heated store')).toMatchObject({ differenceV: expect.closeTo(0.35, 9), accepted: true })
    expect(coupleOf('carbon steel', 'stainless steel', 'unheated store').accepted).toBe(false)
  })

  it('lead and carbon steel, 0.15 V, are still accepted outdoors: the limit itself is within', () => {
    expect(coupleOf('carbon steel', 'lead')).toMatchObject({ differenceV: expect.closeTo(0.15, 9), accepted: true })
  })

  it('brass is given as 0.40 to 0.45: the greater difference counts', () => {
    expect(coupleOf('aluminium', 'brass or bronze').differenceV).toBeCloseTo(0.5, 9)
    expect(coupleOf('copper', 'brass or bronze').differenceV).toBeCloseTo(0.1, 9)
    expect(coupleOf('copper', 'copper')).toMatchObject({ differenceV: 0, accepted: true, anode: 'neither' })
  })

  it.each([
    ['nickel alloy', 0.3], ['copper', 0.35], ['stainless steel', 0.5], ['lead', 0.7], ['carbon steel', 0.85], ['aluminium', 0.9], ['zinc plated', 1.25], ['magnesium', 1.75],
  ] as const)('%s has %d V', (metal, volts) => {
    expect(anodicIndex[metal]).toEqual({ nobler: volts, baser: volts })
  })

  it('in sea water passive 316 and 6061-T stand 0.71 V apart (US Naval Research Laboratory data: LU)', () => {
    expect(coupleOf('aluminium', 'stainless steel').seawaterGapV).toBeCloseTo(0.71, 9)
    expect(coupleOf('aluminium', 'lead').seawaterGapV).toBeUndefined()
  })

  it('the smaller part should be the cathode: the larger stainless part is the pressing one (MIL-DTL-14072F, 3.13.1; MIL-STD-1250A)', () => {
    const at = (touchingIsSmaller: boolean): string => structureOf({ material: 'aluminium', kind: 'galvanic', touches: 'stainless steel', touchingIsSmaller })
    expect([at(true), at(false)]).toEqual(['galvanic', 'galvanic, large cathode'])
  })
})

describe('strength beside welds (filler-metal maker’s guide, typical values: LU)', () => {
  it.each([
    ['5052-H32', '5356', 84.8, 50], ['5083-H116', '5183', 93.5, 66.7], ['6061-T6', '4043', 60, 45], ['6061-T6', '5356', 66.7, 47.5],
  ])('%s with %s keeps %d %% of its tensile and %d %% of its yield strength', (alloy, filler, tensile, yieldKept) => {
    const row = weldedStrength.find((each) => each.alloy === alloy && each.filler === filler)
    expect(row && [keptOf(row.tensileKsi) * 100, keptOf(row.yieldKsi) * 100]).toEqual([expect.closeTo(tensile, 1), expect.closeTo(yieldKept, 1)])
  })

  it.each([[15, 'aluminium pits'], [15.1, 'pit by the weld']])('a pit of %d %% beside an aluminium weld: %s (common practice)', (percent, finding) => {
    expect(structureOf({ material: 'aluminium', besideWeld: true, pitDepthM: (percent / 100) * 0.004, wallM: 0.004 })).toBe(finding)
  })
})

describe('loss of a box section, 50 × 50 × 3 mm (geometry)', () => {
  const box = { widthM: 0.05, heightM: 0.05, wallM: 0.003 }

  it('0.3 mm off the outside takes 10.57 % of the area and 10.71 % of the modulus: already past a tenth', () => {
    const loss = boxSectionLoss(box, 0.0003, 0)
    expect([loss.area * 100, loss.modulus * 100]).toEqual([expect.closeTo(10.57, 2), expect.closeTo(10.71, 2)])
    expect(Math.max(loss.area, loss.modulus)).toBeGreaterThan(corrosionLimits.sectionLoss)
  })

  it('the same off the inside as well takes 20.00 % and 19.15 %', () => {
    const loss = boxSectionLoss(box, 0.0003, 0.0003)
    expect([loss.area * 100, loss.modulus * 100]).toEqual([expect.closeTo(20, 2), expect.closeTo(19.15, 2)])
  })

  it('9 % of a modulus lost is within, 11 % beyond the 90 % rule (IACS Common Structural Rules, Ch 13 Sec 2, as analogue)', () => {
    expect([0.09, 0.11].map((loss) => loss > corrosionLimits.sectionLoss)).toEqual([false, true])
  })

  it('a wall gone through leaves nothing', () => {
    expect(boxSectionLoss(box, 0.003, 0)).toEqual({ area: 1, modulus: 1 })
  })

  it('a measured loss and the member’s outside give the loss of its section', () => {
    const { section } = gradeSpot(spot({ kind: 'red rust', wallM: 0.003, remainingM: 0.0027 }), [], { section: { widthM: 0.05, heightM: 0.05 } }).structure
    expect((section?.outside.area ?? 0) * 100).toBeCloseTo(10.57, 2)
    expect((section?.bothSides.modulus ?? 0) * 100).toBeCloseTo(19.15, 2)
  })
})

describe('holes, pits and eaten-away places', () => {
  it.each([
    [2.7, 'deep pit'], [2.79, 'deep pit'], [2.8, 'pitted'], [2.9, 'pitted'], [3.6, 'pitted'], [3.61, 'small loss'],
  ])('a pit leaving %d of 4.0 mm: %s (IACS UR Z10.5 8.2 as analogue: more than 70 %% remain; 10 %% common practice)', (leftMm, finding) => {
    expect(structureOf({ pitDepthM: (4 - leftMm) / 1000, wallM: 0.004 })).toBe(finding)
  })

  it.each([
    [3.61, 'small loss'], [3.6, 'thinned'], [3, 'thinned'], [2.99, 'too thin'],
  ])('a wall thinned to %d of 4.0 mm: %s (10 and 25 %%: common practice, no source)', (leftMm, finding) => {
    expect(structureOf({ kind: 'red rust', remainingM: leftMm / 1000, wallM: 0.004 })).toBe(finding)
  })

  it('eaten away 50 mm across is not rejected by size, 51 mm is (New Zealand, general trailers 3-1)', () => {
    const shallow = { pitDepthM: 0.0005, wallM: 0.004 }
    expect(structureOf({ ...shallow, areaM2: circle(0.05) })).toBe('pitted')
    expect(structureOf({ ...shallow, areaM2: circle(0.051) })).toBe('eaten away')
    expect(acrossOf(circle(0.05))).toBeCloseTo(corrosionLimits.eatenAcrossM, 9)
  })

  it('50 mm across within ± 1 mm may be 51: the worse end counts', () => {
    const graded = gradeSpot(spot({ pitDepthM: 0.0005, wallM: 0.004, areaM2: circle(0.05), areaUncertaintyM2: circle(0.051) - circle(0.05) }), [])
    expect(graded.structure).toMatchObject({ finding: 'eaten away', isCautious: true })
  })

  it('a frame member with a rust hole fails (Québec C-24.2 r. 32 s. 98; UK inspection manual), a pit right through likewise', () => {
    expect(gradeSpot(spot({ kind: 'hole' }), [])).toMatchObject({ gravest: 'hole', verdict: 'fail' })
    expect(structureOf({ pitDepthM: 0.004, wallM: 0.004 })).toBe('hole')
    expect(rowOf('hole').sources).toContain(corrosionSources.perforated)
  })

  it('a hole in a mudguard, which bears no load, does not', () => {
    expect(gradeSpot(spot({ kind: 'hole', component: 'mudguard' }), [])).toMatchObject({ gravest: 'holed, no load', verdict: 'advisory' })
  })

  it('corrosion that takes the rigidity of a member is a major defect, so a fail (Directive 2014/45/EU 6.1.1(c), UK likewise)', () => {
    expect(rowOf('too thin')).toMatchObject({ verdict: 'fail', by: 'before it is towed' })
    expect(rowOf('too thin').sources).toContain(corrosionSources.rigidity)
  })

  it('within 30 cm of a mounting an advisory wants measuring before it is towed (UK inspection manual, Appendix A)', () => {
    expect(gradeSpot(spot({ nearMounting: true, pitDepthM: 0.0008, wallM: 0.004 }), []).structure).toMatchObject({ finding: 'near a mounting', also: ['pitted'], by: 'before it is towed' })
  })
})
