import { expect, it } from 'vitest'
import { Allowance } from '../../../main/phone/allowance'

const taken = (allowance: Allowance, from: string, tries: number, nowMs: number): number => Array.from({ length: tries }, () => allowance.take(from, nowMs)).filter(Boolean).length

it('allows so many at once, so many a second after, and never more than at first', () => {
  const allowance = new Allowance(10, 2)
  expect(taken(allowance, 'a', 100, 0)).toBe(10)
  expect(taken(allowance, 'a', 100, 499)).toBe(0)
  expect(taken(allowance, 'a', 100, 1_000)).toBe(2)
  expect(taken(allowance, 'a', 100, 4_000)).toBe(6)
  expect(taken(allowance, 'a', 100, 1_000_000)).toBe(10)
})

it('one address does not use up another’s; all together are bounded too, where it is said', () => {
  const each = new Allowance(10, 2)
  for (const from of ['a', 'b', 'c']) expect(taken(each, from, 100, 0)).toBe(10)
  const together = new Allowance(10, 2, 2)
  expect(['a', 'b', 'c'].map((from) => taken(together, from, 100, 0))).toEqual([10, 10, 0])
  // What one address wants beyond its own takes nothing from the others.
  expect(taken(together, 'a', 1_000, 1_000)).toBe(2)
  expect(taken(together, 'b', 1_000, 1_000)).toBe(2)
})

it('a clock that is set back neither gives nor takes', () => {
  const allowance = new Allowance(3, 1)
  expect(taken(allowance, 'a', 3, 10_000)).toBe(3)
  expect(taken(allowance, 'a', 3, 0)).toBe(0)
  expect(taken(allowance, 'a', 3, 2_000)).toBe(2)
})

it('from ever new addresses no more than all together may', () => {
  const allowance = new Allowance(10, 2, 5)
  const all = Array.from({ length: 10_000 }, (_, address) => allowance.take(String(address), 0)).filter(Boolean)
  expect(all).toHaveLength(50)
})
