import { describe, expect, it } from 'vitest'
import { measured } from '../../../shared-logic/units/quantity'
import { namePlace, sayPosition } from '../../../shared-logic/words/position'
import { say, sayDate, sayDay } from '../../../shared-logic/words/say'

describe('a sentence', () => {
  it('shows its figures in the reader’s units', () => {
    const template = 'Travel {travel}; more than {limit} means the brakes need adjustment.'
    const values = { travel: measured('smallLength', 0.03), limit: measured('smallLength', 0.0254) }
    expect(say(template, values, 'metric')).toBe('Travel 30 mm; more than 25.4 mm means the brakes need adjustment.')
    expect(say(template, values, 'us')).toBe('Travel 1.18 in; more than 1 in means the brakes need adjustment.')
  })
  it('never makes two figures read alike that are not: the finer one is shown', () => {
    const over = { load: measured('mass', 3503.4 * 0.45359237), rating: measured('mass', 3500 * 0.45359237) }
    expect(say('{load} on a rating of {rating}', over, 'us')).toBe('3,503 lb on a rating of 3,500 lb')
    expect(say('{load}', over, 'us')).toBe('3,503 lb')
    expect(say('{load}', { load: over.load }, 'us')).toBe('3,500 lb')
    expect(say('{loss}; more than {limit} fails', { loss: measured('ratio', 0.1004), limit: measured('ratio', 0.1) }, 'metric')).toBe('10.04 %; more than 10 % fails')
  })
  it('one figure reckoned in two ways stays one', () => {
    expect(say('{a} of {b}', { a: measured('mass', 1588), b: measured('mass', 1588 * (1 + 1e-12)) }, 'us')).toBe('3,500 lb of 3,500 lb')
  })
  it('keeps an unfilled gap visible', () => {
    expect(say('Tread {depth}.', undefined, 'us')).toBe('Tread {depth}.')
  })
  it('says a date in full', () => {
    expect(sayDate('2026-11-05')).toBe('5 November 2026')
    expect(sayDay('2026-11-05T10:00:00', true)).toBe('5 Nov')
    expect(sayDay('2025-05-30', false)).toBe('30 May 2025')
  })
})

describe('a position', () => {
  it.each([
    ['axle 1 left', 2, 'left front'], ['axle 2 right', 2, 'right rear'], ['axle 2 left', 3, 'left middle'], ['axle 1 left', 1, 'left'],
    ['axle 1', 2, 'front axle'], ['axle 1', 1, 'axle'], ['lamp stop left', 1, 'left stop lamp'], ['lamp side marker front left', 2, 'left front side marker lamp'], ['reflector rear right', 2, 'right rear reflector'],
    ['strap transom left', 2, 'left transom strap'], ['lamp plate', 2, 'plate lamp'], ['left rail', 2, 'left rail'], ['strap bow tie', 1, 'bow tie strap'],
    ['chain left', 1, 'left chain'], ['bunk right', 1, 'right bunk'], ['rig', 1, ''], ['all axles', undefined, 'all axles'],
  ] as const)('%s on %s axles is said “%s”', (position, axleCount, said) => {
    expect(sayPosition(position, axleCount)).toBe(said)
  })
})

describe('a check at its place', () => {
  it.each([
    ['Oil level', 'left front', 'Oil level, left front'], ['Lamp', 'right stop lamp', 'Right stop lamp'], ['Reflector', 'left rear reflector', 'Left rear reflector'],
    ['Chain hook', 'right chain', 'Chain hook, right chain'], ['Jack', '', 'Jack'],
  ])('“%s” at “%s” is named “%s”', (title, place, name) => expect(namePlace(title, place)).toBe(name))
})
