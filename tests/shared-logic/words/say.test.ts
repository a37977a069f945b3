import { describe, expect, it } from 'vitest'
import { measured } from '../../../shared-logic/units/quantity'
import { sayPosition } from '../../../shared-logic/words/position'
import { say, sayDate } from '../../../shared-logic/words/say'

describe('a sentence', () => {
  it('shows its figures in the reader’s units', () => {
    const template = 'Travel {travel}; more than {limit} means the brakes need adjustment.'
    const values = { travel: measured('smallLength', 0.03), limit: measured('smallLength', 0.0254) }
    expect(say(template, values, 'metric')).toBe('Travel 30 mm; more than 25.4 mm means the brakes need adjustment.')
    expect(say(template, values, 'us')).toBe('Travel 1.181 in; more than 1 in means the brakes need adjustment.')
  })
  it('keeps an unfilled gap visible', () => {
    expect(say('Tread {depth}.', undefined, 'us')).toBe('Tread {depth}.')
  })
  it('says a date in full', () => {
    expect(sayDate('2026-11-05')).toBe('5 November 2026')
  })
})

describe('a position', () => {
  it.each([
    ['axle 1 left', 2, 'left front'], ['axle 2 right', 2, 'right rear'], ['axle 2 left', 3, 'left middle'], ['axle 1 left', 1, 'left'],
    ['axle 1', 2, 'front axle'], ['axle 1', 1, 'axle'], ['lamp stop left', 1, 'stop left'], ['strap bow tie', 1, 'bow tie strap'],
    ['chain left', 1, 'left chain'], ['bunk right', 1, 'right bunk'], ['rig', 1, ''], ['all axles', undefined, 'all axles'],
  ] as const)('%s on %s axles is said “%s”', (position, axleCount, said) => {
    expect(sayPosition(position, axleCount)).toBe(said)
  })
})
