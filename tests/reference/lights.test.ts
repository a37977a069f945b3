import { describe, expect, it } from 'vitest'
import { contactsOf, functionsOf } from '../../shared-logic/rules/connectors'
import { lampPositions, reflectorPositions } from '../../shared-logic/rules/lamp-positions'
import { lampRowOf } from '../../shared-logic/rules/lamp-table'
import { dropShare, voltageDropV, type WireGauge } from '../../shared-logic/rules/voltage-drop'
import { judged } from '../shared-logic/checks/judged'

const inch = 0.0254
const foot = 0.3048
const middle = (positions: readonly string[]) => positions.filter((position) => position.includes('middle'))
const bladeAt = (clock: number) => contactsOf('7 blade', 'us')?.find((contact) => contact.at === clock)?.does
const sized = (widthIn: number, lengthFt: number) => ({ widthM: widthIn * inch, lengthM: lengthFt * foot })

describe('lamps by size (49 CFR 571.108, agency letters and restatements)', () => {
  it.each([[79.9, 0], [80, 3]])('at %f in wide: %i clearance and identification lamps', (width, count) => {
    expect(lampPositions(sized(width, 20), 'us').filter((position) => /clearance|identification/.test(position))).toHaveLength(count)
  })
  it.each([[29.9, 0], [30, 2]])('at %f ft long: %i intermediate markers, and as many reflectors', (length, count) => {
    expect(middle(lampPositions(sized(70, length), 'us'))).toHaveLength(count)
    expect(middle(reflectorPositions(sized(70, length), 'us'))).toHaveLength(count)
  })
  it('a boat trailer 84 in wide with a double-faced lamp each side meets the clearance lamps (agency letter of 1974)', () => {
    const asked = lampPositions(sized(84, 20), 'us').filter((position) => position.includes('clearance'))
    expect(asked).toEqual(['lamp clearance left', 'lamp clearance right'])
    expect(asked.map((position) => lampRowOf(position, 'us')?.colour)).toEqual(Array(2).fill('amber to the front, red to the rear'))
    expect(asked.map((position) => judged('lights.lamp', { state: 'works' }, { position, trailer: sized(84, 20) }).verdict)).toEqual(['pass', 'pass'])
  })
  it('a cluster of five behind does not meet the identification lamps: three (agency letter 00433.ztv)', () => {
    expect(judged('lights.identification-cluster', { lamps: 5 }, { trailer: sized(84, 20) }).verdict).toBe('fail')
  })
  it('identification lamps 5 in apart do not meet 6 to 12 in', () => {
    expect([5, 6, 12, 13].map((spacing) => judged('lights.identification-cluster', { lamps: 3, spacing: spacing * inch }).verdict)).toEqual(['fail', 'pass', 'pass', 'fail'])
  })
})

describe('UK lamps (guides to the Road Vehicles Lighting Regulations 1989)', () => {
  it.each([[1.25, false], [1.3, false], [1.35, true]])('%f m wide: rear fog lamp called for: %s', (widthM, called) => {
    expect(lampPositions({ widthM }, 'eu').includes('lamp fog')).toBe(called)
  })
  it('a braked trailer of 2015 without reversing lamp fails', () => {
    expect(judged('lights.lamp', { state: 'missing' }, { position: 'lamp reversing', ruleBook: 'eu', trailer: { brakes: 'surge', builtYear: 2015 } }).verdict).toBe('fail')
  })
  it('59, 60, 120, 121 flashes a minute: fail, pass, pass, fail', () => {
    expect([59, 60, 120, 121].map((rate) => judged('lights.flash-rate', { rate }, { ruleBook: 'eu' }).verdict)).toEqual(['fail', 'pass', 'pass', 'fail'])
  })
})

describe('connectors', () => {
  it.each([
    [1, 'left turn', 'yellow'], [2, 'rear fog', 'blue'], [3, 'return', 'white'], [4, 'right turn', 'green'], [5, 'tail', 'brown'], [6, 'stop', 'red'],
    [7, 'tail', 'black'], [8, 'reversing', 'pink'], [9, 'permanent supply', 'orange'], [10, 'switched supply', 'grey'], [11, 'return', 'black/white'], [13, 'return', 'white/red'],
  ] as const)('ISO 11446 pin %i: %s, %s', (pin, does, colour) => {
    expect(contactsOf('13 round', 'eu')?.find(({ at }) => at === pin)).toEqual({ at: pin, does: [does], colour })
  })
  it('ISO 1724 is pins 1 to 7', () => expect(contactsOf('7 round', 'eu')?.map(({ at }) => at)).toEqual([1, 2, 3, 4, 5, 6, 7]))
  it('US 7-way blade, mating face: electric brakes at five o’clock, blue (7-way connector pages)', () => {
    expect(contactsOf('7 blade', 'us')?.find(({ at }) => at === 5)).toEqual({ at: 5, does: ['electric brakes'], colour: 'blue' })
  })
  it('US 7-way blade: left turn and stop share nine o’clock, right turn and stop three', () => {
    expect([bladeAt(9), bladeAt(3)]).toEqual([['left turn', 'stop'], ['right turn', 'stop']])
  })
  it('only the fifth way of a flat plug carries reversing', () => {
    expect([functionsOf('4 flat', 'us')?.has('reversing'), functionsOf('5 flat', 'us')?.has('reversing')]).toEqual([false, true])
  })
  it('layouts of the American round seven-pin differ: none is told', () => expect(functionsOf('7 round', 'us')).toBeUndefined())
})

describe('voltage drop, 2 · L · I · r (resistance of copper by gauge: from memory)', () => {
  it.each<[WireGauge, number, number, number]>([['16 AWG', 7.6, 5, 1], ['14 AWG', 7.6, 5, 0.63], ['18 AWG', 7.6, 5, 1.59], ['12 AWG', 7.6, 12, 0.95]])(
    '%s over %f m at %f A loses %f V', (gauge, run, current, drop) => expect(voltageDropV(gauge, run, current)).toBeCloseTo(drop, 2),
  )
  it.each<[WireGauge, number, number]>([['16 AWG', 5, 8.3], ['14 AWG', 5, 5.2], ['18 AWG', 5, 13.3], ['12 AWG', 12, 7.9]])('%s over 7.6 m at %f A loses %f % of 12 V', (gauge, current, percent) =>
    expect(dropShare(voltageDropV(gauge, 7.6, current)) * 100).toBeCloseTo(percent, 1))
})
