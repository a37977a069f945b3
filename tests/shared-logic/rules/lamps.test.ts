import { describe, expect, it } from 'vitest'
import type { Trailer } from '../../../shared-logic/rig/trailer'
import { lampPositions, reflectorPositions } from '../../../shared-logic/rules/lamp-positions'
import { isRequired, lampRowOf, lampTable } from '../../../shared-logic/rules/lamp-table'
import { ruleBooks, type RuleBook } from '../../../shared-logic/rules/rule-book'

const calledFor = (position: string, ruleBook: RuleBook, trailer: Trailer): boolean | 'unknown' => {
  const row = lampRowOf(position, ruleBook)
  if (!row) throw new Error(`no row ${position}`)
  return isRequired(row, trailer)
}

describe('the lamp tables', () => {
  it.each(ruleBooks)('%s: no place stands twice', (book) => {
    const { lamps, reflectors } = lampTable(book)
    const places = [...lamps, ...reflectors].map((row) => row.position)
    expect(new Set(places).size).toBe(places.length)
  })

  it.each(ruleBooks)('%s: what has a left has a right, under the same condition and in the same colour', (book) => {
    const { lamps, reflectors } = lampTable(book)
    for (const row of [...lamps, ...reflectors].filter(({ position }) => position.endsWith(' left'))) {
      expect(lampRowOf(row.position.replace(/left$/, 'right'), book)).toEqual({ ...row, position: row.position.replace(/left$/, 'right') })
    }
  })

  it('American turn signals are red or amber, European ones amber', () => {
    expect(lampRowOf('lamp turn left', 'us')?.colour).toBe('red or amber')
    expect(lampRowOf('lamp turn left', 'eu')?.colour).toBe('amber')
  })

  it('a trailer of unknown size is asked about every lamp it may need', () => {
    expect(lampPositions({}, 'us')).toHaveLength(16)
    expect(reflectorPositions({}, 'us')).toHaveLength(8)
    expect(lampPositions({}, 'eu')).toHaveLength(11)
    expect(reflectorPositions({}, 'eu')).toHaveLength(4)
  })

  it.each<[string, RuleBook, Trailer, boolean | 'unknown']>([
    ['lamp stop left', 'us', {}, true],
    ['lamp clearance left', 'us', { widthM: 2.032 }, true],
    ['lamp clearance left', 'us', { widthM: 2.0319 }, false],
    ['lamp clearance left', 'us', {}, 'unknown'],
    ['reflector side middle left', 'us', { lengthM: 9.144 }, true],
    ['reflector side middle left', 'us', { lengthM: 9.143 }, false],
    ['lamp fog', 'eu', { widthM: 1.3 }, false],
    ['lamp fog', 'eu', { widthM: 1.31 }, true],
    ['lamp front marker left', 'eu', { widthM: 1.6 }, true],
    ['lamp front marker left', 'eu', { widthM: 1.59 }, false],
    ['lamp reversing', 'eu', { brakes: 'none', builtYear: 2015 }, false],
    ['lamp reversing', 'eu', { brakes: 'surge', builtYear: 2011 }, false],
    ['lamp reversing', 'eu', { brakes: 'surge', builtYear: 2012 }, 'unknown'],
    ['lamp reversing', 'eu', { brakes: 'surge', builtYear: 2013 }, true],
    ['lamp reversing', 'eu', { builtYear: 2011 }, false],
    ['lamp reversing', 'eu', { builtYear: 2013 }, 'unknown'],
    ['reflector front left', 'eu', { builtYear: 1989 }, false],
    ['reflector front left', 'eu', { builtYear: 1990 }, 'unknown'],
    ['reflector front left', 'eu', { builtYear: 1991 }, true],
  ])('%s in %s, %o: %s', (position, book, trailer, expected) => expect(calledFor(position, book, trailer)).toBe(expected))
})
