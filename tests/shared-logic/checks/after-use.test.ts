import { describe, expect, it } from 'vitest'
import { askedOf } from './asked-of'
import { expectCase, expectChoices, expectEveryOutcomeReached, type ByVerdict, type Case } from './judged'

const cases: readonly Case[] = [
  { states: 'serviced twelve months ago to the day is in date', check: 'after-use.service-record', values: { record: 'seen', last: '2024-06-01' }, outcome: 'in date', verdict: 'pass' },
  { states: 'serviced a day longer ago is overdue', check: 'after-use.service-record', values: { record: 'seen', last: '2024-05-31' }, outcome: 'overdue', verdict: 'advisory' },
  { states: 'twice the interval to the day is overdue', check: 'after-use.service-record', values: { record: 'seen', last: '2023-06-01' }, outcome: 'overdue', verdict: 'advisory' },
  { states: 'more than twice the interval is long overdue', check: 'after-use.service-record', values: { record: 'seen', last: '2023-05-31' }, outcome: 'long overdue', verdict: 'advisory', by: 'before next trip' },
  { states: 'a record not dated leaves it open', check: 'after-use.service-record', values: { record: 'seen' }, outcome: undefined, verdict: 'not seen' },
  { states: 'a service only told of is an advisory', check: 'after-use.service-record', values: { record: 'told, not shown' }, outcome: 'told, not shown', verdict: 'advisory' },
  { states: 'no record is an advisory', check: 'after-use.service-record', values: { record: 'no record' }, outcome: 'no record', verdict: 'advisory' },
]

const choices: readonly (readonly [string, ByVerdict])[] = [
  ['after-use.rinse', { pass: ['after every use', 'never in salt water'], advisory: ['now and then', 'never', 'salt or sand found'] }],
  ['after-use.brake-flush', { pass: ['after every use', 'never immersed'], advisory: ['kit fitted, not used', 'no flushing kit', 'never'] }],
  ['after-use.brakes-parked', { pass: ['chocked, brake off'], advisory: ['brake left on', 'nothing holds it'] }],
  ['after-use.lights', { pass: ['rinsed, plug greased'], advisory: ['plug dry and green', 'water in lamps', 'plug drags or hangs'] }],
  ['after-use.hubs-cooled', { pass: ['left to cool first'], advisory: ['straight into the water'], 'not seen': ['not known'] }],
  ['after-use.oil-baths-turned', { pass: ['turned now and then', 'in use all year'], advisory: ['stands for months'] }],
  ['after-use.storage', { pass: ['on stands, covered', 'short storage, tyres up'], advisory: ['weight on the tyres', 'stands in wet grass', 'tyres in the sun', 'bow low, water stands'] }],
  ['after-use.inhibitor', { pass: ['done this year', 'never in salt water'], advisory: ['not done', 'over rust'] }],
  ['after-use.straps-stored', { pass: ['rinsed, dry, dark'], advisory: ['left wet or salty', 'left in the sun'], 'not applicable': ['none to store'] }],
]

describe('after-use care', () => {
  it.each(cases)('$check: $states', (one) => {
    expect(() => expectCase(one)).not.toThrow()
  })
  it.each(choices)('%s: each choice has its verdict', (id, expected) => {
    expect(() => expectChoices(id, expected)).not.toThrow()
  })
  it('every way a measured check can come out is tested', () => {
    expect(() => expectEveryOutcomeReached('after-use', cases)).not.toThrow()
  })

  it('flushing is asked of hydraulic brakes and while the brakes are unknown', () => {
    expect(askedOf({ brakes: 'surge' })).toContain('after-use.brake-flush')
    expect(askedOf({ brakes: 'electric over hydraulic' })).toContain('after-use.brake-flush')
    expect(askedOf({})).toContain('after-use.brake-flush')
    expect(askedOf({ brakes: 'electric' })).not.toContain('after-use.brake-flush')
    expect(askedOf({ brakes: 'none' }).filter((id) => id.startsWith('after-use.brake'))).toEqual([])
  })

  it('turning the wheels in storage is asked of oil-bath hubs', () => {
    expect(askedOf({ hubLubrication: 'oil bath' })).toContain('after-use.oil-baths-turned')
    expect(askedOf({ hubLubrication: 'grease' })).not.toContain('after-use.oil-baths-turned')
  })
})
