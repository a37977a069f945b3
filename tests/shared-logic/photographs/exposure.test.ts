import { beforeAll, describe, expect, test } from 'vitest'
import { exposureOf } from '../../../shared-logic/photographs/exposure'
import type { Samples } from '../../../shared-logic/photographs/samples'
import { exposed, scenes } from './scenes'

const flat = (red: number, green: number, blue: number): Samples => ({ width: 70, height: 70, channels: 3, data: Uint8Array.from({ length: 14_700 }, (_, index) => [red, green, blue][index % 3] ?? 0) })

describe('the light of a picture of one colour', () => {
  // Source: IEC 61966-2-1: an 18 % grey card is stored as 118, half the light as 188; ITU-R BT.709: green is 0.7152 of the light.
  test.each([[118, 0.18], [188, 0.5], [255, 1], [0, 0]])('%i is %f of full white', (value, light) => {
    expect(exposureOf(flat(value, value, value)).medianLuminance).toBeCloseTo(light, 2)
  })

  test('white is burnt out, black is black, grey is neither', () => {
    expect(exposureOf(flat(255, 255, 255))).toMatchObject({ burntShare: 1, blackShare: 0 })
    expect(exposureOf(flat(2, 2, 2))).toMatchObject({ burntShare: 0, blackShare: 1 })
    expect(exposureOf(flat(128, 128, 128))).toMatchObject({ burntShare: 0, blackShare: 0 })
  })

  test('a full red lamp is not burnt out', () => {
    expect(exposureOf(flat(255, 0, 0)).burntShare).toBe(0)
  })
})

test('a picture of one part white, one part black and the rest grey says their shares', () => {
  const data = Uint8Array.from({ length: 100_000 }, (_, index) => (index < 30_000 ? 255 : index < 50_000 ? 0 : 118))
  const { burntShare, blackShare, medianLuminance } = exposureOf({ width: 1000, height: 100, channels: 1, data })
  expect(burntShare).toBeCloseTo(0.3, 2)
  expect(blackShare).toBeCloseTo(0.2, 2)
  expect(medianLuminance).toBeCloseTo(0.18, 2)
})

describe('pictures exposed longer and shorter, by stops', () => {
  let found: ReadonlyMap<string, Samples>
  beforeAll(async () => {
    found = await scenes()
  }, 120_000)

  test('a stop doubles the light in the middle, as long as it is not cut off', () => {
    for (const [name, samples] of found) {
      const before = exposureOf(samples).medianLuminance
      for (const stops of [-2, -1, 1].filter((each) => before * 2 ** each < 0.7))
        expect(Math.abs(exposureOf(exposed(samples, stops)).medianLuminance / (before * 2 ** stops) - 1), `${name}, ${stops} stops`).toBeLessThan(0.12)
    }
    expect(found.size).toBeGreaterThan(9)
  })

  test('longer burns more and blackens less, shorter the other way round; five stops either way leave little', () => {
    for (const samples of found.values()) {
      const series = [-5, -3, -1, 0, 1, 3, 5].map((stops) => exposureOf(exposed(samples, stops)))
      for (const [index, { burntShare, blackShare, medianLuminance }] of series.entries()) {
        const before = series[index - 1]
        if (before === undefined) continue
        expect(burntShare).toBeGreaterThanOrEqual(before.burntShare)
        expect(blackShare).toBeLessThanOrEqual(before.blackShare)
        expect(medianLuminance).toBeGreaterThanOrEqual(before.medianLuminance)
      }
      expect(series[0]?.medianLuminance).toBeLessThan(0.02)
      expect(series.at(-1)?.burntShare).toBeGreaterThan(0.35)
    }
  })
})
