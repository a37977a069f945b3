import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { mayStandBeside, neighbourToPass, putBeside } from '../../../renderer/contact-sheet/moves'
import type { SheetPhotograph } from '../../../renderer/contact-sheet/sheet-photograph'
import { photographOf } from './some-photographs'

const row = (number: number, checkId?: string): SheetPhotograph => {
  const photograph = photographOf(number, checkId === undefined ? {} : { checkId, position: 'rig' })
  return { id: String(number), photograph, owner: undefined, station: undefined, taken: undefined, name: '', where: '', warnings: [], alike: [] }
}
const ids = ['a', 'b', 'c', 'd', 'e']

describe('putting photographs beside another', () => {
  it.each([
    [['a'], 'd', 'before', 'bcade'], [['a'], 'd', 'after', 'bcdae'], [['e'], 'a', 'before', 'eabcd'], [['b', 'e'], 'c', 'after', 'acbed'],
    [['e', 'b'], 'a', 'before', 'beacd'], [['b', 'c'], 'c', 'after', 'abcde'], [['b', 'd'], 'd', 'before', 'acbde'],
  ] as const)('%j at %s, %s: %s', (moved, target, side, order) => expect(putBeside(ids, new Set(moved), target, side).join('')).toBe(order))

  it('loses and doubles none, keeps all others in their order, and puts those moved together', () => {
    const picks = fc.subarray(ids, { minLength: 1 })
    fc.assert(fc.property(picks, fc.constantFrom(...ids), fc.constantFrom('before' as const, 'after' as const), (moved, target, side) => {
      const order = putBeside(ids, new Set(moved), target, side)
      expect(order.toSorted()).toEqual(ids)
      expect(order.filter((id) => !moved.includes(id))).toEqual(ids.filter((id) => !moved.includes(id)))
      expect(order.join('')).toContain(moved.join(''))
    }))
  })
})

describe('what may be put where', () => {
  const [one, two, other] = [row(1, 'hubs'), row(2, 'hubs'), row(3, 'frame')]

  it('anywhere in the survey’s own order', () => expect(mayStandBeside([one, other], two, 'own')).toBe(true))
  it('in walking order among those of one check', () => {
    expect(mayStandBeside([one], two, 'walk')).toBe(true)
    expect(mayStandBeside([one], other, 'walk')).toBe(false)
    expect(mayStandBeside([one, other], two, 'walk')).toBe(false)
    expect(mayStandBeside([row(4)], row(5), 'walk')).toBe(true)
  })
  it('nowhere by time or arrival', () => {
    expect(mayStandBeside([one], two, 'taken')).toBe(false)
    expect(mayStandBeside([one], two, 'arrival')).toBe(false)
  })
  it('one step earlier or later passes the neighbour that is shown, and stops at the ends', () => {
    const shown = [one, two, other]
    expect(neighbourToPass(shown, [two], 'earlier', 'own')).toBe(one)
    expect(neighbourToPass(shown, [two], 'later', 'own')).toBe(other)
    expect(neighbourToPass(shown, [two], 'later', 'walk')).toBeUndefined()
    expect(neighbourToPass(shown, [one], 'earlier', 'own')).toBeUndefined()
    expect(neighbourToPass(shown, [], 'later', 'own')).toBeUndefined()
  })
})
