import { describe, expect, it } from 'vitest'
import type { Trailer } from '../../../shared-logic/rig/trailer'
import { positionsOf } from '../../../shared-logic/checks/positions'
import { expectCase, expectChoices, expectEveryOutcomeReached, judged, type ByVerdict, type Case } from './judged'

const inch = 0.0254
const wide = 80 * inch
const lamp = (position: string, trailer: Trailer = {}) => ({ position, trailer }) as const
const euLamp = (position: string, trailer: Trailer = {}) => ({ position, trailer, ruleBook: 'eu' }) as const
const missing = { state: 'missing' }

const lamps: readonly Case[] = [
  { states: 'a working lamp passes', check: 'lights.lamp', values: { state: 'works' }, given: lamp('lamp stop left'), outcome: 'works', verdict: 'pass' },
  { states: 'a dim lamp is an advisory', check: 'lights.lamp', values: { state: 'dim' }, given: lamp('lamp stop left'), outcome: 'dim', verdict: 'advisory' },
  { states: 'a dead stop lamp: not to be towed', check: 'lights.lamp', values: { state: 'dead' }, given: lamp('lamp stop left'), outcome: 'dead', verdict: 'fail', by: 'before it is towed' },
  { states: 'a dead tail lamp: not to be towed', check: 'lights.lamp', values: { state: 'dead' }, given: lamp('lamp tail right'), outcome: 'dead', verdict: 'fail', by: 'before it is towed' },
  { states: 'a dead side marker fails, before the next trip', check: 'lights.lamp', values: { state: 'dead' }, given: lamp('lamp side marker front left'), outcome: 'dead, lesser', verdict: 'fail', by: 'before next trip' },
  { states: 'the wrong colour fails', check: 'lights.lamp', values: { state: 'wrong colour' }, given: lamp('lamp turn left'), outcome: 'wrong colour', verdict: 'fail' },
  { states: 'a broken lens fails', check: 'lights.lamp', values: { state: 'lens broken' }, given: lamp('lamp turn left'), outcome: 'lens broken', verdict: 'fail' },
  { states: 'water inside is an advisory', check: 'lights.lamp', values: { state: 'water inside' }, given: lamp('lamp turn left'), outcome: 'water inside', verdict: 'advisory' },
  { states: 'a missing turn signal: not to be towed', check: 'lights.lamp', values: missing, given: lamp('lamp turn left'), outcome: 'missing', verdict: 'fail', by: 'before it is towed' },
  { states: 'a missing plate lamp fails, before the next trip', check: 'lights.lamp', values: missing, given: lamp('lamp plate'), outcome: 'missing, lesser', verdict: 'fail', by: 'before next trip' },
  { states: 'a missing clearance lamp at exactly 80 in fails', check: 'lights.lamp', values: missing, given: lamp('lamp clearance left', { widthM: wide }), outcome: 'missing, lesser', verdict: 'fail' },
  { states: 'a missing clearance lamp at 79.9 in is not called for', check: 'lights.lamp', values: missing, given: lamp('lamp clearance left', { widthM: 79.9 * inch }), outcome: 'missing, not called for', verdict: 'not applicable' },
  { states: 'a missing clearance lamp of a trailer of unknown width cannot be worked out', check: 'lights.lamp', values: missing, given: lamp('lamp clearance left'), outcome: 'missing, width not known', verdict: 'not seen' },
  { states: 'a missing middle marker of a trailer of unknown length cannot be worked out', check: 'lights.lamp', values: missing, given: lamp('lamp side marker middle left'), outcome: 'missing, length not known', verdict: 'not seen' },
  { states: 'a missing fog lamp at 1.35 m fails in Europe', check: 'lights.lamp', values: missing, given: euLamp('lamp fog', { widthM: 1.35 }), outcome: 'missing, lesser', verdict: 'fail' },
  { states: 'a missing reversing lamp of a braked trailer of 2015 fails', check: 'lights.lamp', values: missing, given: euLamp('lamp reversing', { brakes: 'surge', builtYear: 2015 }), outcome: 'missing, lesser', verdict: 'fail' },
  { states: 'a missing reversing lamp of a braked trailer of 2012 is an advisory: the month decides', check: 'lights.lamp', values: missing, given: euLamp('lamp reversing', { brakes: 'surge', builtYear: 2012 }), outcome: 'missing, year does not decide', verdict: 'advisory' },
  { states: 'a missing reversing lamp of unknown year cannot be worked out', check: 'lights.lamp', values: missing, given: euLamp('lamp reversing', { brakes: 'surge' }), outcome: 'missing, year not known', verdict: 'not seen' },
  { states: 'a missing reversing lamp where the brakes are not known cannot be worked out', check: 'lights.lamp', values: missing, given: euLamp('lamp reversing', { builtYear: 2015 }), outcome: 'missing, brakes not known', verdict: 'not seen' },
]

const reflectors: readonly Case[] = [
  { states: 'clean and whole passes', check: 'lights.reflector', values: { state: 'clean and whole' }, given: lamp('reflector rear left'), outcome: 'clean and whole', verdict: 'pass' },
  { states: 'faded is an advisory', check: 'lights.reflector', values: { state: 'faded' }, given: lamp('reflector rear left'), outcome: 'faded', verdict: 'advisory' },
  { states: 'hidden fails', check: 'lights.reflector', values: { state: 'hidden' }, given: lamp('reflector rear left'), outcome: 'hidden', verdict: 'fail' },
  { states: 'broken fails', check: 'lights.reflector', values: { state: 'broken' }, given: lamp('reflector rear left'), outcome: 'broken', verdict: 'fail' },
  { states: 'the wrong colour fails', check: 'lights.reflector', values: { state: 'wrong colour' }, given: lamp('reflector rear left'), outcome: 'wrong colour', verdict: 'fail' },
  { states: 'a missing rear reflector fails', check: 'lights.reflector', values: missing, given: lamp('reflector rear left'), outcome: 'missing, lesser', verdict: 'fail' },
  { states: 'a missing middle reflector at 29.9 ft is not called for', check: 'lights.reflector', values: missing, given: lamp('reflector side middle left', { lengthM: 29.9 * 0.3048 }), outcome: 'missing, not called for', verdict: 'not applicable' },
  { states: 'a missing middle reflector at unknown length cannot be worked out', check: 'lights.reflector', values: missing, given: lamp('reflector side middle left'), outcome: 'missing, length not known', verdict: 'not seen' },
  { states: 'a missing front reflector of 1990 is an advisory: the month decides', check: 'lights.reflector', values: missing, given: euLamp('reflector front left', { builtYear: 1990 }), outcome: 'missing, year does not decide', verdict: 'advisory' },
  { states: 'a missing front reflector of unknown year cannot be worked out', check: 'lights.reflector', values: missing, given: euLamp('reflector front left'), outcome: 'missing, year not known', verdict: 'not seen' },
]

const suits = (plug: string, trailer: Trailer, ruleBook: 'us' | 'eu' = 'us'): Pick<Case, 'check' | 'values' | 'given'> => ({ check: 'lights.plug-suits', values: { plug }, given: { trailer, ruleBook } })
const fault = (plug: Trailer['plug'], what: string): Pick<Case, 'check' | 'values' | 'given'> => ({ check: 'lights.plug-test', values: { result: 'one at fault', fault: what }, given: { trailer: { plug } } })

const others: readonly Case[] = [
  { states: 'four ways are enough for an unbraked trailer', ...suits('4 flat', { brakes: 'none' }), outcome: 'suits', verdict: 'pass' },
  { states: 'four ways do not feed electric brakes', ...suits('4 flat', { brakes: 'electric' }), outcome: 'no brake feed', verdict: 'fail' },
  { states: 'seven blades feed electric brakes', ...suits('7 blade', { brakes: 'electric' }), outcome: 'suits', verdict: 'pass' },
  { states: 'four ways do not release surge discs in reverse', ...suits('4 flat', { brakes: 'surge', brakeForm: 'disc' }), outcome: 'no reversing feed', verdict: 'advisory' },
  { states: 'five ways do', ...suits('5 flat', { brakes: 'surge', brakeForm: 'disc' }), outcome: 'suits', verdict: 'pass' },
  { states: 'surge drums back freely on four ways', ...suits('4 flat', { brakes: 'surge', brakeForm: 'drum' }), outcome: 'suits', verdict: 'pass' },
  { states: 'a European seven-pin has no reversing feed', ...suits('7 round', { brakes: 'surge', builtYear: 2015, widthM: 2 }, 'eu'), outcome: 'no reversing feed', verdict: 'advisory' },
  { states: 'a four-way flat has no fog feed', ...suits('4 flat', { brakes: 'none', widthM: 2 }, 'eu'), outcome: 'no fog feed', verdict: 'advisory' },
  { states: 'thirteen pins carry it all', ...suits('13 round', { brakes: 'surge', builtYear: 2015, widthM: 2 }, 'eu'), outcome: 'suits', verdict: 'pass' },
  { states: 'layouts of the American round seven-pin differ', ...suits('7 round', { brakes: 'electric' }), outcome: 'layout not known', verdict: 'not seen' },
  { states: 'brakes not known: cannot be worked out', ...suits('7 blade', {}), outcome: 'brakes not known', verdict: 'not seen' },

  { states: 'all right passes', check: 'lights.plug-test', values: { result: 'all right' }, outcome: 'all right', verdict: 'pass' },
  { states: 'stop belongs at pin 6 of thirteen', ...fault('13 round', 'stop'), outcome: 'fault at a pin', verdict: 'fail' },
  { states: 'brakes belong at five o’clock of seven blades', ...fault('7 blade', 'electric brakes'), outcome: 'fault at a blade', verdict: 'fail' },
  { states: 'reversing belongs in the centre of seven blades', ...fault('7 blade', 'reversing'), outcome: 'fault at the centre', verdict: 'fail' },
  { states: 'without a known plug the place is not said', ...fault(undefined, 'stop'), outcome: 'one at fault', verdict: 'fail' },
  { states: 'several crossed fail', check: 'lights.plug-test', values: { result: 'several crossed' }, outcome: 'several crossed', verdict: 'fail' },
  { states: 'not tested is not seen', check: 'lights.plug-test', values: { result: 'not tested' }, outcome: 'not tested', verdict: 'not seen' },

  { states: '59 a minute fails', check: 'lights.flash-rate', values: { rate: 59 }, outcome: 'slow', verdict: 'fail' },
  { states: '60 a minute passes', check: 'lights.flash-rate', values: { rate: 60 }, outcome: 'inside', verdict: 'pass' },
  { states: '120 a minute passes', check: 'lights.flash-rate', values: { rate: 120 }, outcome: 'inside', verdict: 'pass' },
  { states: '121 a minute fails', check: 'lights.flash-rate', values: { rate: 121 }, outcome: 'fast', verdict: 'fail' },
  { states: 'no flash at all: not to be towed', check: 'lights.flash-rate', values: { rate: 0 }, outcome: 'no flash', verdict: 'fail', by: 'before it is towed' },

  { states: 'lamps at 72 in and reflectors at 60 in pass in the United States', check: 'lights.heights', values: { lamps: 72 * inch, reflectors: 60 * inch }, outcome: 'inside', verdict: 'pass' },
  { states: 'lamps at 15 in and reflectors at 15 in pass', check: 'lights.heights', values: { lamps: 15 * inch, reflectors: 15 * inch }, outcome: 'inside', verdict: 'pass' },
  { states: 'lamps at 14.9 in fail', check: 'lights.heights', values: { lamps: 14.9 * inch, reflectors: 20 * inch }, outcome: 'lamps outside', verdict: 'fail' },
  { states: 'reflectors at 60.1 in fail', check: 'lights.heights', values: { lamps: 40 * inch, reflectors: 60.1 * inch }, outcome: 'reflectors outside', verdict: 'fail' },
  { states: 'both too high fail', check: 'lights.heights', values: { lamps: 73 * inch, reflectors: 61 * inch }, outcome: 'both outside', verdict: 'fail' },
  { states: 'a triangle at 950 mm fails in Europe', check: 'lights.heights', values: { lamps: 0.95, reflectors: 0.95 }, given: { ruleBook: 'eu' }, outcome: 'reflectors outside', verdict: 'fail' },

  { states: 'three lamps 6 in apart pass', check: 'lights.identification-cluster', values: { lamps: 3, spacing: 6 * inch }, outcome: 'right', verdict: 'pass' },
  { states: 'three lamps 5 in apart fail', check: 'lights.identification-cluster', values: { lamps: 3, spacing: 5 * inch }, outcome: 'wrong spacing', verdict: 'fail' },
  { states: 'three lamps 12.1 in apart fail', check: 'lights.identification-cluster', values: { lamps: 3, spacing: 12.1 * inch }, outcome: 'wrong spacing', verdict: 'fail' },
  { states: 'five lamps fail', check: 'lights.identification-cluster', values: { lamps: 5 }, given: { trailer: { widthM: 84 * inch } }, outcome: 'not three', verdict: 'fail' },
  { states: 'none on a trailer of unknown width cannot be worked out', check: 'lights.identification-cluster', values: { lamps: 0 }, outcome: 'width not known', verdict: 'not seen' },

  { states: 'whole tape passes', check: 'lights.conspicuity', values: { tape: 'whole' }, outcome: 'whole', verdict: 'pass' },
  { states: 'lifting tape is an advisory', check: 'lights.conspicuity', values: { tape: 'lifting or dirty' }, outcome: 'lifting or dirty', verdict: 'advisory' },
  { states: 'missing tape fails on a wide, heavy trailer', check: 'lights.conspicuity', values: { tape: 'missing' }, given: { trailer: { widthM: wide, maximumMassKg: 5000 } }, outcome: 'missing', verdict: 'fail' },
  { states: 'missing tape on a trailer of unknown mass cannot be worked out', check: 'lights.conspicuity', values: { tape: 'missing' }, given: { trailer: { widthM: wide } }, outcome: 'size not known', verdict: 'not seen' },

  { states: '0.5 V lost is good', check: 'lights.voltage-drop', values: { plug: 12.6, lamp: 12.1 }, outcome: 'good', verdict: 'pass' },
  { states: '0.6 V lost is an advisory', check: 'lights.voltage-drop', values: { plug: 12.6, lamp: 12 }, outcome: 'fair', verdict: 'advisory', by: 'at next service' },
  { states: '1.0 V lost is fair', check: 'lights.voltage-drop', values: { plug: 12.6, lamp: 11.6 }, outcome: 'fair', verdict: 'advisory', by: 'at next service' },
  { states: 'over 1 V lost is attended to before the next trip', check: 'lights.voltage-drop', values: { plug: 12.6, lamp: 11.5 }, outcome: 'attend', verdict: 'advisory', by: 'before next trip' },
  { states: 'more at the lamp than at the plug is no reading', check: 'lights.voltage-drop', values: { plug: 12, lamp: 12.6 }, outcome: 'impossible', verdict: 'not seen' },
]

const cases = [...lamps, ...reflectors, ...others]

const choices: readonly (readonly [string, ByVerdict])[] = [
  ['lights.connector', { pass: ['clean and whole'], advisory: ['dull pins', 'cable pulled from its grip', 'green or pitted pins'], fail: ['bent or burnt pins', 'body or latch broken'] }],
  ['lights.to-be-seen', { pass: ['clear of the boat', 'hidden by the boat, light board used'], fail: ['partly hidden', 'hidden'] }],
  ['lights.mounting', { pass: ['firm and sealed'], advisory: ['bracket rusted', 'seal open', 'loose'], fail: ['hanging by its wires'] }],
  ['lights.number-plate', { pass: ['readable and held'], 'not applicable': ['not called for here'], advisory: ['dirty or bent'], fail: ['hidden by the boat', 'missing'] }],
  ['lights.wiring-run', { pass: ['clipped and whole'], advisory: ['hanging', 'cover cracked'], fail: ['chafed or frayed', 'pinched', 'bare conductor'] }],
  ['lights.wiring-joints', { pass: ['sealed'], advisory: ['taped or twisted', 'clip-on taps', 'green with corrosion'], fail: ['loose'] }],
  ['lights.wiring-entries', { pass: ['grommets in place', 'no entries into metal'], advisory: ['grommet missing'], fail: ['cut into by the edge'] }],
  ['lights.earth-connection', { pass: ['clean and tight'], advisory: ['rusted or loose'], fail: ['only through the ball'], 'not seen': ['not found'] }],
  ['lights.unplugged', { pass: ['always unplugged'], advisory: ['sealed lamps, left plugged', 'left plugged'], 'not seen': ['not known'] }],
]

describe('lights and wiring', () => {
  it.each(cases)('$check: $states', (each) => expectCase(each))
  it.each(choices)('%s: each choice has its verdict', (id, expected) => expectChoices(id, expected))
  it('every way a measured check can come out is tested', () => expectEveryOutcomeReached('lights', cases))

  it('says at which contact the fault is to be looked for', () => {
    expect(judged('lights.plug-test', { result: 'one at fault', fault: 'stop' }, { trailer: { plug: '13 round' } }).because).toContain('pin 6')
    expect(judged('lights.plug-test', { result: 'one at fault', fault: 'electric brakes' }, { trailer: { plug: '7 blade' } }).because).toContain('5 o’clock')
  })

  it('a trailer known to be narrow and short is not asked for clearance, identification or middle lamps', () => {
    const asked = positionsOf('lamp', { name: 'Rig', trailer: { widthM: 2, lengthM: 7 } }, 'us')
    expect(asked.filter((position) => /clearance|identification|middle/.test(position))).toEqual([])
    expect(asked).toHaveLength(11)
  })
})
