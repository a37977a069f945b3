import { describe, expect, it } from 'vitest'
import type { Trailer } from '../../../shared-logic/rig/trailer'
import type { RuleBook } from '../../../shared-logic/rules/rule-book'
import { askedAt, expectCase, expectChoices, expectEveryOutcomeReached, judged, type ByVerdict, type Case } from './judged'
import { brakeSumsCases } from './rests-on-sums'

const poundKg = 0.45359237
const psi = 6894.757
const ofMass = (pounds: number, more: Trailer = {}) => ({ trailer: { ...more, maximumMassKg: pounds * poundKg } })
const eu = (trailer: Trailer) => ({ trailer, ruleBook: 'eu' }) as const
const none = { fitted: 'none' }
const changed = (date: string, water: string) => ({ record: 'date known', changed: date, water })
const measured = (limit: number, found: number) => ({ mark: 'readable mark', limit, found })

const required: readonly Case[] = [
  ...brakeSumsCases,
  { states: 'brakes on all wheels pass whatever the mass', check: 'brakes.required', values: { fitted: 'on all wheels' }, outcome: 'on all wheels', verdict: 'pass' },
  { states: 'none at 3,000 lb is inside the federal benchmark', check: 'brakes.required', values: none, given: ofMass(3000), outcome: 'not called for', verdict: 'pass' },
  { states: 'none at 3,001 lb is an advisory by the federal benchmark', check: 'brakes.required', values: none, given: ofMass(3001), outcome: 'called for by the benchmark', verdict: 'advisory' },
  { states: 'none at 3,000 lb fails in California', check: 'brakes.required', values: { fitted: 'none', place: 'California' }, given: ofMass(3000, { builtYear: 1990 }), outcome: 'called for by law', verdict: 'fail' },
  { states: 'none at 2,999 lb passes in California', check: 'brakes.required', values: { fitted: 'none', place: 'California' }, given: ofMass(2999, { builtYear: 1990 }), outcome: 'not called for', verdict: 'pass' },
  { states: 'in California a trailer of unknown year waits for it', check: 'brakes.required', values: { fitted: 'none', place: 'California' }, given: ofMass(3500), outcome: 'year not known', verdict: 'not seen' },
  { states: 'brakes on two of four wheels are enough in California', check: 'brakes.required', values: { fitted: 'on some wheels', place: 'California' }, given: ofMass(3500, { builtYear: 1990 }), outcome: 'some are enough', verdict: 'pass' },
  { states: 'brakes on two of four wheels are an advisory in the District of Columbia', check: 'brakes.required', values: { fitted: 'on some wheels', place: 'District of Columbia' }, given: ofMass(3500), outcome: 'on some wheels', verdict: 'advisory' },
  { states: 'none at 750 kg passes in Europe', check: 'brakes.required', values: none, given: eu({ maximumMassKg: 750 }), outcome: 'not called for', verdict: 'pass' },
  { states: 'none at 751 kg fails in Europe', check: 'brakes.required', values: none, given: eu({ maximumMassKg: 751 }), outcome: 'called for by law', verdict: 'fail', by: 'before it is towed' },
  { states: 'an American place does not count in Europe', check: 'brakes.required', values: { fitted: 'none', place: 'California' }, given: eu({ maximumMassKg: 800 }), outcome: 'called for by law', verdict: 'fail' },
  { states: 'of unknown mass it cannot be worked out', check: 'brakes.required', values: none, outcome: 'mass not known', verdict: 'not seen' },

  { states: '10,500 lb behind 6,000 lb is allowed', check: 'brakes.surge-match', values: { vehicle: 'known', rating: 6000 * poundKg }, given: ofMass(10_500), outcome: 'allowed', verdict: 'pass' },
  { states: '10,501 lb behind 6,000 lb is outside the benchmark', check: 'brakes.surge-match', values: { vehicle: 'known', rating: 6000 * poundKg }, given: ofMass(10_501), outcome: 'too light a vehicle', verdict: 'advisory' },
  { states: 'an unknown vehicle is not seen', check: 'brakes.surge-match', values: { vehicle: 'not known' }, given: ofMass(3000), outcome: 'vehicle not known', verdict: 'not seen' },
  { states: 'an unknown mass cannot be worked out', check: 'brakes.surge-match', values: { vehicle: 'known', rating: 2700 }, outcome: 'mass not known', verdict: 'not seen' },
]

const actuator: readonly Case[] = [
  { states: '25.4 mm of travel passes', check: 'brakes.actuator-travel', values: { travel: 0.0254 }, outcome: 'short', verdict: 'pass' },
  { states: '26 mm of travel is an advisory', check: 'brakes.actuator-travel', values: { travel: 0.026 }, outcome: 'long', verdict: 'advisory' },
  { states: '18 of 90 mm leaves 80 %', check: 'brakes.actuator-travel', values: { travel: 0.018, stroke: 0.09 }, outcome: 'short, with reserve', verdict: 'pass' },
  { states: '30 of 90 mm is long', check: 'brakes.actuator-travel', values: { travel: 0.03, stroke: 0.09 }, outcome: 'long, with reserve', verdict: 'advisory' },
  { states: '60 of 90 mm leaves just a third', check: 'brakes.actuator-travel', values: { travel: 0.06, stroke: 0.09 }, outcome: 'long, with reserve', verdict: 'advisory' },
  { states: '61 of 90 mm leaves less than a third and fails', check: 'brakes.actuator-travel', values: { travel: 0.061, stroke: 0.09 }, outcome: 'little reserve', verdict: 'fail' },
  { states: 'a short actuator at its end fails though its travel is short', check: 'brakes.actuator-travel', values: { travel: 0.02, stroke: 0.02 }, outcome: 'little reserve', verdict: 'fail' },
]

const cable = (value: string) => ({ cable: value })
const breakaway: readonly Case[] = [
  { states: 'free and to its own anchor passes', check: 'brakes.breakaway-cable', values: cable('free, to its own anchor'), outcome: 'free, to its own anchor', verdict: 'pass' },
  { states: 'stiff is an advisory', check: 'brakes.breakaway-cable', values: cable('pin or lever stiff'), outcome: 'pin or lever stiff', verdict: 'advisory' },
  { states: 'hooked to the chains is an advisory', check: 'brakes.breakaway-cable', values: cable('hooked to the chains'), outcome: 'hooked to the chains', verdict: 'advisory' },
  { states: 'over the ball fails', check: 'brakes.breakaway-cable', values: cable('looped over the ball'), outcome: 'looped over the ball', verdict: 'fail' },
  { states: 'frayed fails', check: 'brakes.breakaway-cable', values: cable('frayed or kinked'), outcome: 'frayed or kinked', verdict: 'fail' },
  { states: 'missing on a braked trailer over 3,000 lb fails', check: 'brakes.breakaway-cable', values: cable('missing'), given: ofMass(3001, { brakes: 'surge' }), outcome: 'missing', verdict: 'fail' },
  { states: 'missing on a light braked trailer is an advisory', check: 'brakes.breakaway-cable', values: cable('missing'), given: ofMass(3000, { brakes: 'surge' }), outcome: 'missing, not surely called for', verdict: 'advisory' },
  { states: 'missing on a braked trailer of unknown mass is an advisory', check: 'brakes.breakaway-cable', values: cable('missing'), given: { trailer: { brakes: 'electric' } }, outcome: 'missing, not surely called for', verdict: 'advisory' },
  { states: 'missing on a braked trailer in Europe fails', check: 'brakes.breakaway-cable', values: cable('missing'), given: eu({ brakes: 'surge' }), outcome: 'missing', verdict: 'fail' },
  { states: 'missing where the brakes are not known cannot be worked out', check: 'brakes.breakaway-cable', values: cable('missing'), outcome: 'missing, brakes not known', verdict: 'not seen' },

  { states: 'held 15 minutes passes', check: 'brakes.breakaway-hold', values: { held: 900 }, outcome: 'holds', verdict: 'pass' },
  { states: 'held 14 minutes fails', check: 'brakes.breakaway-hold', values: { held: 840 }, outcome: 'lets go too soon', verdict: 'fail' },
  { states: 'did not come on at all fails', check: 'brakes.breakaway-hold', values: { held: 0 }, outcome: 'does not hold', verdict: 'fail' },

  { states: '12.6 V is full', check: 'brakes.breakaway-battery', values: { voltage: 12.6 }, outcome: 'full', verdict: 'pass' },
  { states: '12.5 V is charged in part', check: 'brakes.breakaway-battery', values: { voltage: 12.5 }, outcome: 'part charged', verdict: 'pass' },
  { states: '12.0 V is charged in part', check: 'brakes.breakaway-battery', values: { voltage: 12 }, outcome: 'part charged', verdict: 'pass' },
  { states: '11.9 V is low', check: 'brakes.breakaway-battery', values: { voltage: 11.9 }, outcome: 'low', verdict: 'advisory' },
  { states: '10.5 V is low', check: 'brakes.breakaway-battery', values: { voltage: 10.5 }, outcome: 'low', verdict: 'advisory' },
  { states: '10.4 V is flat and fails', check: 'brakes.breakaway-battery', values: { voltage: 10.4 }, outcome: 'flat', verdict: 'fail' },

  { states: 'holding on the slope passes', check: 'brakes.parking', values: { holds: 'holds on the slope' }, outcome: 'holds on the slope', verdict: 'pass' },
  { states: 'a long lever is an advisory', check: 'brakes.parking', values: { holds: 'lever travels far' }, outcome: 'lever travels far', verdict: 'advisory' },
  { states: 'one side only fails', check: 'brakes.parking', values: { holds: 'holds on one side' }, outcome: 'holds on one side', verdict: 'fail' },
  { states: 'not holding fails', check: 'brakes.parking', values: { holds: 'does not hold' }, outcome: 'does not hold', verdict: 'fail' },
  { states: 'none on a braked trailer fails', check: 'brakes.parking', values: { holds: 'not fitted' }, given: eu({ brakes: 'surge' }), outcome: 'not fitted', verdict: 'fail' },
  { states: 'none where the brakes are not known cannot be worked out', check: 'brakes.parking', values: { holds: 'not fitted' }, given: eu({}), outcome: 'not fitted, brakes not known', verdict: 'not seen' },
  { states: 'not tried is not seen', check: 'brakes.parking', values: { holds: 'not tried' }, outcome: 'not tried', verdict: 'not seen' },
]

const fluid: readonly Case[] = [
  { states: 'DOT 3 at 155 °C is well above', check: 'brakes.fluid-boiling-point', values: { grade: 'DOT 3', boiling: 155 }, outcome: 'above', verdict: 'pass' },
  { states: 'DOT 3 at 140 °C is near its limit', check: 'brakes.fluid-boiling-point', values: { grade: 'DOT 3', boiling: 140 }, outcome: 'near', verdict: 'advisory' },
  { states: 'DOT 3 at 139 °C fails', check: 'brakes.fluid-boiling-point', values: { grade: 'DOT 3', boiling: 139 }, outcome: 'below', verdict: 'fail' },
  { states: 'DOT 4 at 150 °C fails', check: 'brakes.fluid-boiling-point', values: { grade: 'DOT 4', boiling: 150 }, outcome: 'below', verdict: 'fail' },
  { states: 'DOT 5.1 at 179 °C fails', check: 'brakes.fluid-boiling-point', values: { grade: 'DOT 5.1', boiling: 179 }, outcome: 'below', verdict: 'fail' },
  { states: 'an unknown grade at 139 °C is below any', check: 'brakes.fluid-boiling-point', values: { grade: 'not known', boiling: 139 }, outcome: 'below any grade', verdict: 'fail' },
  { states: 'an unknown grade at 200 °C cannot be worked out', check: 'brakes.fluid-boiling-point', values: { grade: 'not known', boiling: 200 }, outcome: 'grade not known', verdict: 'not seen' },

  { states: 'in fresh water two years are in date', check: 'brakes.fluid-age', values: changed('2023-06-01', 'fresh water'), outcome: 'in date', verdict: 'pass' },
  { states: 'in fresh water two years and a day are overdue', check: 'brakes.fluid-age', values: changed('2023-05-31', 'fresh water'), outcome: 'overdue', verdict: 'advisory' },
  { states: 'in salt water a year and a day is overdue', check: 'brakes.fluid-age', values: changed('2024-05-31', 'salt water'), outcome: 'overdue', verdict: 'advisory' },
  { states: 'water not known counts as salt', check: 'brakes.fluid-age', values: changed('2024-05-31', 'not known'), outcome: 'overdue', verdict: 'advisory' },
  { states: 'in salt water two years and a day is long overdue, still an advisory', check: 'brakes.fluid-age', values: changed('2023-05-31', 'salt water'), outcome: 'long overdue', verdict: 'advisory' },
  { states: 'an unknown date is not determined', check: 'brakes.fluid-age', values: { record: 'not known' }, outcome: 'not determined', verdict: 'advisory' },
]

const friction: readonly Case[] = [
  { states: 'a bonded lining of 3.1 mm passes', check: 'brakes.lining', values: { thickness: 0.0031 }, outcome: 'thick', verdict: 'pass' },
  { states: 'a bonded lining of 3.0 mm is an advisory', check: 'brakes.lining', values: { thickness: 0.003, fixing: 'bonded' }, outcome: 'low', verdict: 'advisory' },
  { states: 'a bonded lining of 1.6 mm is an advisory', check: 'brakes.lining', values: { thickness: 0.0016 }, outcome: 'low', verdict: 'advisory' },
  { states: 'a bonded lining of 1/16 in is not below the limit (49 CFR 393.47(d): 1.6 mm, 1/16 in)', check: 'brakes.lining', values: { thickness: 0.0254 / 16 }, outcome: 'low', verdict: 'advisory' },
  { states: 'a bonded lining of 1.5 mm fails', check: 'brakes.lining', values: { thickness: 0.0015 }, outcome: 'below', verdict: 'fail' },
  { states: '1.6 mm over the rivets passes', check: 'brakes.lining', values: { thickness: 0.0016, fixing: 'riveted' }, outcome: 'thick', verdict: 'pass' },
  { states: '0.8 mm over the rivets is an advisory', check: 'brakes.lining', values: { thickness: 0.0008, fixing: 'riveted' }, outcome: 'low', verdict: 'advisory' },
  { states: '0.7 mm over the rivets fails', check: 'brakes.lining', values: { thickness: 0.0007, fixing: 'riveted' }, outcome: 'below', verdict: 'fail' },

  { states: 'a disc at its mark passes', check: 'brakes.disc-thickness', values: measured(0.01, 0.01), outcome: 'inside', verdict: 'pass' },
  { states: 'a disc under its mark fails', check: 'brakes.disc-thickness', values: measured(0.01, 0.0099), outcome: 'beyond', verdict: 'fail' },
  { states: 'a disc without a readable mark is not determined, an advisory', check: 'brakes.disc-thickness', values: { mark: 'no readable mark' }, outcome: 'no mark', verdict: 'advisory' },
  { states: 'a drum at its mark passes', check: 'brakes.drum-diameter', values: measured(0.256, 0.256), outcome: 'inside', verdict: 'pass' },
  { states: 'a drum over its mark fails', check: 'brakes.drum-diameter', values: measured(0.256, 0.2561), outcome: 'beyond', verdict: 'fail' },
  { states: 'a drum without a readable mark is not determined, an advisory', check: 'brakes.drum-diameter', values: { mark: 'no readable mark' }, outcome: 'no mark', verdict: 'advisory' },
]

const twoBrakes = { trailer: { axleCount: 1 } }
const unit = (pressurePsi?: number, platePsi?: number) => ({
  unit: 'builds pressure', ...(pressurePsi === undefined ? {} : { pressure: pressurePsi * psi }), ...(platePsi === undefined ? {} : { plate: platePsi * psi }),
})
const electric: readonly Case[] = [
  { states: 'two brakes on 12 AWG over 7.6 m lose 5 %', check: 'brakes.feed-wire', values: { gauge: '12 AWG', run: 7.6 }, given: twoBrakes, outcome: 'thick enough', verdict: 'pass' },
  { states: 'two brakes on 16 AWG over 7.6 m lose 13 %', check: 'brakes.feed-wire', values: { gauge: '16 AWG', run: 7.6 }, given: twoBrakes, outcome: 'thin', verdict: 'advisory' },
  { states: 'only the braked axles count', check: 'brakes.feed-wire', values: { gauge: '14 AWG', run: 7.6 }, given: { trailer: { axleCount: 2, brakedAxleCount: 1 } }, outcome: 'thick enough', verdict: 'pass' },
  { states: 'an unknown gauge cannot be worked out', check: 'brakes.feed-wire', values: { gauge: 'not known', run: 7.6 }, given: twoBrakes, outcome: 'gauge not known', verdict: 'not seen' },
  { states: 'an unknown number of axles cannot be worked out', check: 'brakes.feed-wire', values: { gauge: '12 AWG', run: 7.6 }, outcome: 'brakes not counted', verdict: 'not seen' },

  { states: '90 % of the plate’s pressure passes', check: 'brakes.hydraulic-unit', values: unit(1440, 1600), outcome: 'builds pressure', verdict: 'pass' },
  { states: 'under 90 % of the plate’s pressure is an advisory', check: 'brakes.hydraulic-unit', values: unit(1430, 1600), outcome: 'weak', verdict: 'advisory' },
  { states: 'no plate, no verdict on its pressure', check: 'brakes.hydraulic-unit', values: unit(1600), outcome: 'not measured', verdict: 'not seen' },
  { states: 'slow is an advisory', check: 'brakes.hydraulic-unit', values: { unit: 'slow' }, outcome: 'slow', verdict: 'advisory' },
  { states: 'leaking fails', check: 'brakes.hydraulic-unit', values: { unit: 'leaking' }, outcome: 'leaking', verdict: 'fail' },
  { states: 'not running fails', check: 'brakes.hydraulic-unit', values: { unit: 'does not run' }, outcome: 'does not run', verdict: 'fail' },
]

const cases = [...required, ...actuator, ...breakaway, ...fluid, ...friction, ...electric]

const choices: readonly (readonly [string, ByVerdict])[] = [
  ['brakes.actuator-condition', { pass: ['free and firm'], advisory: ['dry or stiff', 'rollers or bushes worn', 'no damping'], fail: ['seized', 'leaking', 'cracked or rusted through'] }],
  ['brakes.static-test', { pass: ['holds after a few inches', 'resists, then releases'], fail: ['holds on one side', 'rolls away freely'], 'not seen': ['not tried'] }],
  ['brakes.reverse-lockout', { pass: ['backs freely'], advisory: ['only by pin or key', 'brakes in reverse'], fail: ['stays locked out going forward'], 'not seen': ['not tried'] }],
  ['brakes.overrun-linkage', { pass: ['free and even', 'hydraulic, no linkage'], advisory: ['needs adjusting', 'cable stiff or rusted'], fail: ['cable frayed or broken'] }],
  ['brakes.chocks', { pass: ['two that fit'], advisory: ['one, or worn', 'none'], 'not applicable': ['parking brake fitted'] }],
  ['brakes.controller', { pass: ['all brakes answer'], advisory: ['one side weaker'], fail: ['some do not answer', 'none answers'], 'not seen': ['no vehicle to try with'] }],
  ['brakes.magnets', { pass: ['worn evenly'], advisory: ['worn unevenly'], fail: ['windings to be seen', 'lever seized'], 'not seen': ['drum not taken off'] }],
  ['brakes.wiring', { pass: ['sound'], advisory: ['clip missing', 'joint corroded'], fail: ['frayed', 'parted'] }],
  ['brakes.fluid-level', { pass: ['at the mark'], advisory: ['too full', 'low', 'vent blocked or cap leaking'], fail: ['empty'] }],
  ['brakes.fluid-condition', { pass: ['clear'], advisory: ['dark'], fail: ['cloudy or milky', 'rust or dirt in it', 'grades mixed'] }],
  ['brakes.flushing', { pass: ['fitted and used', 'rinsed by hose each time', 'not put under water'], advisory: ['fitted, nozzle blocked', 'fitted, not used', 'not fitted, used in salt'] }],
  ['brakes.lines', { pass: ['sound'], advisory: ['surface rust', 'clip missing or chafing'], fail: ['pitted or scaled', 'flattened or kinked', 'leaking'] }],
  ['brakes.hoses', { pass: ['sound'], advisory: ['fine cracks', 'twisted or tight'], fail: ['chafed or cut', 'bulging or leaking'] }],
  ['brakes.calipers', { pass: ['slides freely'], advisory: ['pins dry', 'pads worn unevenly'], fail: ['seized', 'leaking'], 'not seen': ['not seen with the wheel on'] }],
  ['brakes.wheel-cylinders', { pass: ['dry and free'], advisory: ['damp under the boot'], fail: ['seized', 'leaking'], 'not seen': ['drum not taken off'] }],
  ['brakes.disc-surface', { pass: ['clean and smooth', 'flash rust'], advisory: ['grooved', 'one face not used'], fail: ['deeply pitted', 'cracked'] }],
  ['brakes.drum-surface', { pass: ['clean and smooth', 'flash rust'], advisory: ['grooved or lipped', 'springs or adjuster rusted'], fail: ['greased or wet with oil', 'cracked or scaling'], 'not seen': ['drum not taken off'] }],
  ['brakes.drag', { pass: ['lets go', 'brushes evenly'], advisory: ['drags'], fail: ['hot or smells'], 'not seen': ['not lifted'] }],
]

const askedOf = (trailer: Trailer, ruleBook: RuleBook = 'us'): string[] => askedAt('brakes', trailer, ruleBook)

describe('brakes', () => {
  it.each(cases)('$check: $states', (each) => expectCase(each))
  it.each(choices)('%s: each choice has its verdict', (id, expected) => expectChoices(id, expected))
  it('every way a measured check can come out is tested', () => expectEveryOutcomeReached('brakes', cases))

  it('a trailer without brakes is asked only whether it ought to have them, and for chocks', () => {
    expect(askedOf({ brakes: 'none' })).toEqual(['brakes.required', 'brakes.chocks'])
    expect(askedOf({ brakes: 'none' }, 'eu')).toEqual(['brakes.required'])
  })

  it('surge disc brakes are asked for actuator, lock-out, lines and discs, not for magnets or drums', () => {
    const asked = askedOf({ brakes: 'surge', brakeForm: 'disc', axleCount: 2 })
    expect(asked).toEqual(expect.arrayContaining(['brakes.actuator-travel', 'brakes.reverse-lockout', 'brakes.lines', 'brakes.calipers', 'brakes.disc-thickness', 'brakes.breakaway-hold']))
    expect(asked.filter((id) => /magnet|drum|cylinder|battery|controller|parking|linkage|unit|feed/.test(id))).toEqual([])
  })

  it('electric drum brakes are asked for magnets, battery and feed, not for fluid or actuator', () => {
    const asked = askedOf({ brakes: 'electric', brakeForm: 'drum', axleCount: 1 })
    expect(asked).toEqual(expect.arrayContaining(['brakes.magnets', 'brakes.breakaway-battery', 'brakes.feed-wire', 'brakes.drum-surface']))
    expect(asked.filter((id) => /fluid|actuator|lines|hoses|disc|caliper|static/.test(id))).toEqual([])
  })

  it('a European overrun trailer is asked for parking brake and linkage, not for a 15 minute hold', () => {
    const asked = askedOf({ brakes: 'surge', brakeForm: 'drum', axleCount: 1 }, 'eu')
    expect(asked).toEqual(expect.arrayContaining(['brakes.parking', 'brakes.overrun-linkage']))
    expect(asked.filter((id) => /hold|match|chocks/.test(id))).toEqual([])
  })

  it('says what is left of the stroke, and that state law varies', () => {
    expect(judged('brakes.actuator-travel', { travel: 0.07, stroke: 0.09 }).because).toBe('Travel 70 mm of 90 mm: only 22.2 % left.')
    expect(judged('brakes.required', none, ofMass(3001)).because).toContain('State law varies.')
  })
})
