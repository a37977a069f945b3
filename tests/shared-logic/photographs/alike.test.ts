import { expect, test } from 'vitest'
import { alikeAmong, alikeTo, alikeWithinBits } from '../../../shared-logic/photographs/alike'
import type { Photograph } from '../../../shared-logic/survey/records'
import { en } from '../../../shared-logic/words/en'
import { sayAlike } from '../../../shared-logic/words/say-photograph'

const photograph = (id: string, sha256: string, lookHash: string | undefined, place: { readonly checkId?: string; readonly position?: string } = {}): Photograph => ({
  id, sha256, ...(lookHash !== undefined && { lookHash }), ...place, caption: '', fileName: `${id}.jpg`, format: 'jpeg', byteCount: 1, widthPx: 4000, heightPx: 3000, addedAt: '2026-05-16T10:00:00Z', source: 'file', quarterTurns: 0, isPrinted: true,
})

/** A fingerprint that differs from nought in so many bits. */
const bits = (count: number): string => ((1n << BigInt(count)) - 1n).toString(16).padStart(16, '0')

const oil = { checkId: 'hubs.oil-level', position: 'axle 1 left' }
const seal = { checkId: 'hubs.seal', position: 'axle 1 right' }

test('alike within eight bits of 64, not beyond, and never itself', () => {
  const own = photograph('own', 'a', bits(0))
  const others = [own, photograph('near', 'b', bits(alikeWithinBits)), photograph('far', 'c', bits(alikeWithinBits + 1))]
  expect(alikeTo(own, others)).toEqual([{ id: 'near', isSame: false }])
})

test('the very same picture at another place counts too, and comes first, measured or not', () => {
  const own = photograph('own', 'a', undefined)
  expect(alikeTo(own, [photograph('other', 'b', bits(0)), photograph('same', 'a', undefined)])).toEqual([{ id: 'same', isSame: true }])
  const measured = photograph('own', 'a', bits(0))
  expect(alikeTo(measured, [photograph('near', 'b', bits(1)), photograph('same', 'a', bits(0))]).map(({ id }) => id)).toEqual(['same', 'near'])
})

test('among many each is told of the others: both sides, and as it is told by itself', () => {
  const all = [0, 3, 30, 33, 60].map((count, index) => photograph(`p${index}`, index === 4 ? 'p0' : `p${index}`, bits(count)))
  const found = alikeAmong(all)
  for (const each of all) expect(found.get(each.id) ?? []).toEqual(alikeTo(each, all))
  expect(found.get('p0')).toEqual([{ id: 'p4', isSame: true }, { id: 'p1', isSame: false }])
  expect(found.get('p3')).toEqual([{ id: 'p2', isSame: false }])
  expect(alikeAmong(all.slice(0, 1)).size).toBe(0)
})

test('is said by name and place', () => {
  const own = photograph('own', 'a', bits(0), oil)
  const photographs = [own, photograph('b', 'b', bits(1), oil), photograph('c', 'c', bits(2), oil), photograph('d', 'a', bits(0), seal), photograph('e', 'e', bits(1))]
  const survey = { photographs, rig: { trailer: { axleCount: 2 } } }
  expect(sayAlike(en, own, alikeTo(own, photographs), survey)).toEqual(['The same picture, “d.jpg”, also stands at “Seal, right front”.', 'It looks like “b.jpg” here.', 'It looks like “c.jpg” here.', 'And like 1 more.'])
})

test('by its caption where it has one, and told where it has no check', () => {
  const own = photograph('own', 'a', bits(0), oil)
  const photographs = [own, { ...photograph('b', 'b', bits(1)), caption: ' Seal seen from below ' }, photograph('c', 'a', bits(0))]
  const survey = { photographs, rig: { trailer: { axleCount: 2 } } }
  expect(sayAlike(en, own, alikeTo(own, photographs), survey)).toEqual(['The same picture, “c.jpg”, also stands without a check.', 'It looks like “Seal seen from below”, which has no check.'])
})

test('500 photographs are compared with one another within a frame or two', () => {
  const many = Array.from({ length: 500 }, (_, index) => photograph(`p${index}`, `s${index}`, (BigInt(index) * 0x9e37_79b9_7f4a_7c15n & 0xffff_ffff_ffff_ffffn).toString(16).padStart(16, '0')))
  alikeAmong(many)
  const start = performance.now()
  alikeAmong(many)
  expect(performance.now() - start).toBeLessThan(200)
})
