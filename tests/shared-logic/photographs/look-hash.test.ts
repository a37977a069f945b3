import { beforeAll, describe, expect, test } from 'vitest'
import { chanceOf } from '../../corrosion/scenes/chance'
import { lookBitsOf, lookDistance, lookHashOf } from '../../../shared-logic/photographs/look-hash'
import type { Samples } from '../../../shared-logic/photographs/samples'
import { alikeWithinBits } from '../../../shared-logic/photographs/alike'
import { blurred, coded, cropped, exposed, scaled, scenes } from './scenes'

const distance = (a: string, b: string): number => lookDistance(lookBitsOf(a), lookBitsOf(b))

test('the distance counts differing bits', () => {
  expect(distance('0000000000000000', '0000000000000000')).toBe(0)
  expect(distance('0000000000000000', 'ffffffffffffffff')).toBe(64)
  expect(distance('8000000000000001', '0000000000000000')).toBe(2)
  expect(distance('00000000000000f0', '000000000000000f')).toBe(8)
  const chance = chanceOf(11)
  const drawn = (): string => Array.from({ length: 16 }, () => chance.below(16).toString(16)).join('')
  for (let round = 0; round < 500; round++) {
    const [a, b] = [drawn(), drawn()]
    const apart = (BigInt(`0x${a}`) ^ BigInt(`0x${b}`)).toString(2).replaceAll('0', '').length
    expect(distance(a, b)).toBe(apart)
  }
})

/** The same fingerprint the long way round: every wave of the whole transform, by its definition. Source: Zauner 2010, 3.2.1; ITU-T T.81, A.3.3 for the transform. */
const byDefinition = (samples: Samples): string => {
  const edge = 32
  const mean = (row: number, column: number): number => samples.data[row * edge + column] ?? 0
  const wave = (down: number, across: number): number => {
    let sum = 0
    for (let y = 0; y < edge; y++) for (let x = 0; x < edge; x++) sum += mean(y, x) * Math.cos((Math.PI * down * (2 * y + 1)) / (2 * edge)) * Math.cos((Math.PI * across * (2 * x + 1)) / (2 * edge))
    return sum
  }
  const waves = Array.from({ length: 64 }, (_, index) => wave(1 + Math.floor(index / 8), 1 + (index % 8)))
  const ordered = waves.toSorted((a, b) => a - b)
  const median = ((ordered[31] ?? 0) + (ordered[32] ?? 0)) / 2
  return BigInt(`0b${waves.map((each) => (each > median ? '1' : '0')).join('')}`).toString(16).padStart(16, '0')
}

test('a picture of 32 x 32 has the fingerprint its waves give by definition', () => {
  const chance = chanceOf(3)
  for (let round = 0; round < 20; round++) {
    const samples: Samples = { width: 32, height: 32, channels: 1, data: Uint8Array.from({ length: 1024 }, () => chance.below(256)) }
    expect(lookHashOf(samples)).toBe(byDefinition(samples))
  }
})

const plain = (value: (index: number) => number): Samples => ({ width: 640, height: 480, channels: 3, data: Uint8Array.from({ length: 640 * 480 * 3 }, (_, index) => value(index)) })

test('a picture that shows nothing has none: plain, or plain but for what coding makes of it', () => {
  expect(lookHashOf(plain(() => 97))).toBeUndefined()
  const chance = chanceOf(5)
  expect(lookHashOf(plain(() => 96 + chance.below(4)))).toBeUndefined()
  expect(lookHashOf({ width: 1, height: 1, channels: 1, data: new Uint8Array([9]) })).toBeUndefined()
})

test('has 16 hex digits, whatever the size', () => {
  for (const [width, height] of [[3, 500], [1600, 2], [33, 31], [5, 5]] as const) {
    const chance = chanceOf(width)
    expect(lookHashOf({ width, height, channels: 3, data: Uint8Array.from({ length: width * height * 3 }, () => chance.below(256)) })).toMatch(/^[0-9a-f]{16}$/)
  }
})

const apart = (a: Samples, b: Samples): number => distance(lookHashOf(a) ?? '', lookHashOf(b) ?? '')

describe('pictures of the trade', () => {
  let found: ReadonlyMap<string, Samples>
  beforeAll(async () => {
    found = await scenes()
  }, 120_000)

  test.each([
    ['coded again at quality 40', (samples: Samples) => coded(samples, 40)],
    ['at half the size', (samples: Samples) => scaled(samples, 0.5)],
    ['at a fifth of the size', (samples: Samples) => scaled(samples, 0.2)],
    ['half a stop darker', async (samples: Samples) => exposed(samples, -0.5)],
    ['out of focus by 3 px', (samples: Samples) => blurred(samples, 3)],
    ['cut by a hundredth', (samples: Samples) => cropped(samples, 0.01)],
  ])('%s is still alike', async (_, change) => {
    for (const [name, samples] of found) expect(apart(samples, await change(samples)), name).toBeLessThanOrEqual(alikeWithinBits)
  })

  test('two different ones are not', () => {
    const all = [...found]
    for (const [index, [name, samples]] of all.entries())
      for (const [other, others] of all.slice(index + 1)) expect(apart(samples, others), `${name}, ${other}`).toBeGreaterThan(alikeWithinBits + 4)
  })
})
