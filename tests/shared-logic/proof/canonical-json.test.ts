import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { canonicalJson, type Json } from '../../../shared-logic/proof/canonical-json'

/** Source of every example: RFC 8785, JSON Canonicalization Scheme (JCS), June 2020; the section stands beside it. */

/** Section 3.2.2, the input as printed. */
const sample = String.raw`{
  "numbers": [333333333.33333329, 1E30, 4.50,
              2e-3, 0.000000000000000000000000001],
  "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
  "literals": [null, true, false]
}`

/** Section 3.2.4, its canonical form as UTF-8. */
const sampleBytes = `
  7b 22 6c 69 74 65 72 61 6c 73 22 3a 5b 6e 75 6c 6c 2c 74 72
  75 65 2c 66 61 6c 73 65 5d 2c 22 6e 75 6d 62 65 72 73 22 3a
  5b 33 33 33 33 33 33 33 33 33 2e 33 33 33 33 33 33 33 2c 31
  65 2b 33 30 2c 34 2e 35 2c 30 2e 30 30 32 2c 31 65 2d 32 37
  5d 2c 22 73 74 72 69 6e 67 22 3a 22 e2 82 ac 24 5c 75 30 30
  30 66 5c 6e 41 27 42 5c 22 5c 5c 5c 5c 5c 22 2f 22 7d`

/** Section 3.2.3, the test data for sorting, and the order its members come to. */
const unsorted = String.raw`{
  "\u20ac": "Euro Sign",
  "\r": "Carriage Return",
  "\ufb33": "Hebrew Letter Dalet With Dagesh",
  "1": "One",
  "\ud83d\ude00": "Emoji: Grinning Face",
  "\u0080": "Control",
  "\u00f6": "Latin Small Letter O With Diaeresis"
}`
const sorted = ['Carriage Return', 'One', 'Control', 'Latin Small Letter O With Diaeresis', 'Euro Sign', 'Emoji: Grinning Face', 'Hebrew Letter Dalet With Dagesh']

/** Appendix B: doubles by their bits, and how they are written. */
const numbers = [
  ['0000000000000000', '0'], ['8000000000000000', '0'], ['0000000000000001', '5e-324'], ['8000000000000001', '-5e-324'],
  ['7fefffffffffffff', '1.7976931348623157e+308'], ['ffefffffffffffff', '-1.7976931348623157e+308'], ['4340000000000000', '9007199254740992'],
  ['c340000000000000', '-9007199254740992'], ['4430000000000000', '295147905179352830000'], ['44b52d02c7e14af5', '9.999999999999997e+22'],
  ['44b52d02c7e14af6', '1e+23'], ['44b52d02c7e14af7', '1.0000000000000001e+23'], ['444b1ae4d6e2ef4e', '999999999999999700000'],
  ['444b1ae4d6e2ef4f', '999999999999999900000'], ['444b1ae4d6e2ef50', '1e+21'], ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
  ['3eb0c6f7a0b5ed8d', '0.000001'], ['41b3de4355555553', '333333333.3333332'], ['41b3de4355555554', '333333333.33333325'],
  ['41b3de4355555555', '333333333.3333333'], ['41b3de4355555556', '333333333.3333334'], ['41b3de4355555557', '333333333.33333343'],
  ['becbf647612f3696', '-0.0000033333333333333333'], ['43143ff3c1cb0959', '1424953923781206.2'],
] as const
/** Appendix B: not a number and infinity, which are refused. */
const noNumbers = ['7fffffffffffffff', '7ff0000000000000']

const doubleOf = (bits: string): number => {
  const view = new DataView(new ArrayBuffer(8))
  view.setBigUint64(0, BigInt(`0x${bits}`))
  return view.getFloat64(0)
}
const read = (text: string): Json => JSON.parse(text) as Json

describe('the canonical form', () => {
  it('is, byte for byte, what the standard’s example comes to', () => {
    expect(Buffer.from(canonicalJson(read(sample)), 'utf8').toString('hex')).toBe(sampleBytes.replaceAll(/\s/g, ''))
  })

  it('sorts members by the code units of UTF-16', () => {
    expect([...canonicalJson(read(unsorted)).matchAll(/:"([^"]*)"/g)].map((match) => match[1])).toEqual(sorted)
  })

  it.each(numbers)('writes the double %s as %s', (bits, written) => {
    expect(canonicalJson(doubleOf(bits))).toBe(written)
  })

  it('refuses what the standard refuses: numbers that are none, and half a surrogate pair in text or name', () => {
    for (const bits of noNumbers) expect(() => canonicalJson({ a: [doubleOf(bits)] })).toThrow('no canonical form')
    expect(() => canonicalJson(['\udead'])).toThrow('half a surrogate pair')
    expect(() => canonicalJson({ '\ud83d': 1 })).toThrow('half a surrogate pair')
  })

  it('reads back as what it was written from, and is the same however members stood', () => {
    const turned = (value: Json): Json => {
      if (Array.isArray(value)) return value.map(turned)
      if (typeof value !== 'object' || value === null) return value
      return Object.fromEntries(Object.entries(value).toReversed().map(([name, member]) => [name, turned(member)]))
    }
    fc.assert(fc.property(fc.jsonValue(), (given) => {
      const value = read(JSON.stringify(given))
      fc.pre(JSON.stringify(value).isWellFormed() && !/\\ud[89a-f]/i.test(JSON.stringify(value)))
      const text = canonicalJson(value)
      expect(read(text)).toEqual(value)
      expect(canonicalJson(turned(value))).toBe(text)
    }))
  })
})
