import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { z } from 'zod'
import { readArrived, readChecks, readPair, readPhotograph, readRefusal } from '../../../renderer/phone/read-replies'
import { arrivedReplySchema, checksReplySchema, pairReplySchema, phoneRefusalSchema, photographReplySchema } from '../../../shared-logic/phone/phone-door'

const instant = fc.integer({ min: 0, max: 4e12 }).map((ms) => new Date(ms).toISOString())
const words = fc.string({ minLength: 1, maxLength: 40 })
const id = fc.stringMatching(/^[A-Za-z0-9_-]{16,40}$/)
const name = fc.uuid()
const photograph = fc.record({ pictureId: id, alreadyThere: fc.boolean(), warnings: fc.array(fc.string(), { maxLength: 3 }) })
const check = fc.record({ checkId: words, position: words, title: words, place: fc.string(), isOpen: fc.boolean() })

const replies: readonly (readonly [name: string, schema: z.ZodType, read: (value: unknown) => unknown, sample: fc.Arbitrary<object>])[] = [
  ['paired', pairReplySchema, readPair, fc.record({ closesAt: instant, connectionId: name })],
  ['checks', checksReplySchema, readChecks, fc.record({ closesAt: instant, connectionId: name, stations: fc.array(fc.record({ title: words, checks: fc.array(check, { maxLength: 3 }) }), { maxLength: 3 }) })],
  ['photograph', photographReplySchema, readPhotograph, photograph],
  ['arrived', arrivedReplySchema, readArrived, fc.record({ pictureIds: fc.array(id, { maxLength: 5 }), told: fc.array(photograph, { maxLength: 3 }) })],
]

it.each(replies)('%s: whatever the door’s schema allows is read whole', (_name, schema, read, sample) => {
  fc.assert(fc.property(sample, (value) => {
    expect(schema.safeParse(value).success).toBe(true)
    expect(read(value)).toEqual(value)
  }))
})

it.each(replies)('%s: with any one field gone or of another kind it is refused, as by the schema', (_name, schema, read, sample) => {
  fc.assert(fc.property(sample, fc.nat(), fc.constantFrom(undefined, null, 7, {}), (value, at, other) => {
    const keys = Object.keys(value)
    const broken = { ...value, [keys[at % keys.length] ?? '']: other }
    expect(schema.safeParse(broken).success).toBe(false)
    expect(read(broken)).toBeUndefined()
  }))
})

it('a check with a field gone or of another kind is refused, as by the schema', () => {
  fc.assert(fc.property(instant, check, fc.nat(), fc.constantFrom(undefined, null, 7, {}), (closesAt, one, at, other) => {
    const keys = Object.keys(one)
    const reply = { closesAt, connectionId: 'a-connection', stations: [{ title: 'Hubs', checks: [{ ...one, [keys[at % keys.length] ?? '']: other }] }] }
    expect(checksReplySchema.safeParse(reply).success).toBe(false)
    expect(readChecks(reply)).toBeUndefined()
  }))
})

it('anything else is no reply', () => {
  fc.assert(fc.property(fc.anything(), (value) => {
    expect(replies.every(([, schema, read]) => schema.safeParse(value).success || read(value) === undefined)).toBe(true)
  }))
})

it('a refusal is read with its code and sentence', () => {
  const refusal = { refusal: { code: 'phone.closed' }, sentence: 'The door is closed.' }
  expect(phoneRefusalSchema.safeParse(refusal).success).toBe(true)
  expect(readRefusal(refusal)).toEqual({ code: 'phone.closed', sentence: 'The door is closed.' })
  for (const value of ['<html>', null, {}, { refusal: {}, sentence: 'x' }, { refusal: { code: 'x' } }]) expect(readRefusal(value)).toBeUndefined()
})
