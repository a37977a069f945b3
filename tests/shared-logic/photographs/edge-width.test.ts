import { beforeAll, describe, expect, test } from 'vitest'
import { edgeWidthPx } from '../../../shared-logic/photographs/edge-width'
import type { Samples } from '../../../shared-logic/photographs/samples'
import { blurred, coded, greyOf, moved, noisy, scenes } from './scenes'

/** The bell curve's integral. Source: Abramowitz and Stegun, 7.1.26, good to 1.5e-7. */
const bellIntegral = (at: number): number => {
  const z = Math.abs(at) / Math.SQRT2
  const t = 1 / (1 + 0.327_591_1 * z)
  const erf = 1 - (((((1.061_405_429 * t - 1.453_152_027) * t) + 1.421_413_741) * t - 0.284_496_736) * t + 0.254_829_592) * t * Math.exp(-z * z)
  return at < 0 ? (1 - erf) / 2 : (1 + erf) / 2
}

/** Upright bars from dark to light and back, every 40 px, each edge blurred by a Gaussian of `sigmaPx` exactly. */
const bars = (sigmaPx: number, isLying = false): Samples => {
  const edge = 400
  const data = new Uint8Array(edge * edge)
  for (let y = 0; y < edge; y++)
    for (let x = 0; x < edge; x++) {
      const along = isLying ? y : x
      const place = (along % 80) - 40
      const share = sigmaPx === 0 ? (Math.abs(place) < 20 ? 1 : 0) : bellIntegral((20 - Math.abs(place)) / sigmaPx)
      data[y * edge + x] = Math.round(40 + 160 * share)
    }
  return { width: edge, height: edge, channels: 1, data }
}

describe('an edge of known blur', () => {
  test('a hard one is a pixel wide', () => {
    expect(edgeWidthPx(bars(0))).toBeCloseTo(1, 0)
  })

  // The steepest slope of a step blurred by a Gaussian is the step over s times the square root of 2 pi.
  test.each([1.5, 2, 3, 4, 5])('blurred by %f px is 2.5 times as wide, upright and lying', (sigmaPx) => {
    for (const isLying of [false, true]) {
      const found = edgeWidthPx(bars(sigmaPx, isLying)) ?? Number.NaN
      expect(Math.abs(found / (sigmaPx * Math.sqrt(2 * Math.PI)) - 1)).toBeLessThan(0.08)
    }
  })

  test('is as wide in colour as in grey, and with a see-through ground behind it', () => {
    const { width, height, data } = bars(3)
    const spread = (channels: 2 | 3 | 4): Samples => ({ width, height, channels, data: Uint8Array.from({ length: data.length * channels }, (_, index) => (channels !== 3 && index % channels === channels - 1 ? 255 : (data[Math.floor(index / channels)] ?? 0))) })
    for (const channels of [2, 3, 4] as const) expect(edgeWidthPx(spread(channels))).toBe(edgeWidthPx(bars(3)))
  })
})

const painted = (value: (index: number) => number): Samples => ({ width: 200, height: 150, channels: 1, data: Uint8Array.from({ length: 30_000 }, (_, index) => value(index)) })

test('where there is nothing to judge by nothing is said: a plain wall, a soft shade, a few pixels', () => {
  expect(edgeWidthPx(painted(() => 128))).toBeUndefined()
  expect(edgeWidthPx(painted((index) => (index % 200) / 2))).toBeUndefined()
  for (const [width, height] of [[1, 1], [3, 3], [5, 2], [1, 400]] as const) expect(edgeWidthPx({ width, height, channels: 3, data: new Uint8Array(width * height * 3) })).toBeUndefined()
})

const least = (all: readonly number[]): number => Math.min(...all)
const most = (all: readonly number[]): number => Math.max(...all)

describe('pictures degraded by known amounts', () => {
  let found: ReadonlyMap<string, Samples>
  beforeAll(async () => {
    found = await scenes()
  }, 120_000)

  const widths = async (degrade: (samples: Samples) => Samples | Promise<Samples>): Promise<number[]> => {
    const all: number[] = []
    for (const samples of found.values()) all.push(edgeWidthPx(await degrade(samples)) ?? Number.NaN)
    return all
  }
  test('grow with every step of blur, in every picture', async () => {
    let before = await widths((samples) => samples)
    for (const sigmaPx of [1, 1.5, 2, 3, 4, 6]) {
      const now = await widths((samples) => blurred(samples, sigmaPx))
      for (const [index, width] of now.entries()) expect(width, `${[...found.keys()][index]} at ${sigmaPx}`).toBeGreaterThan(before[index] ?? Number.NaN)
      before = now
    }
  })

  test('whatever is shown: the softest picture in focus is sharper than the sharpest one blurred by 2 px', async () => {
    const [inFocus, soft, bad] = [await widths((samples) => samples), await widths((samples) => blurred(samples, 2)), await widths((samples) => blurred(samples, 4))]
    expect(most(inFocus)).toBeLessThan(least(soft))
    expect(most(soft)).toBeLessThan(least(bad))
    expect(most(soft) / least(soft)).toBeLessThan(2)
  })

  // Drawn lying across the whole picture: a movement along it finds no edge to widen, and cannot be seen.
  const lying = 'strap-frayed'
  test.each([['across', [1, 0]], ['down', [0, 1]], ['aslant', [1, 1]]] as const)('grow with every step of a movement %s, though the edges along it stay sharp', async (_, way) => {
    const names = [...found.keys()].filter((name) => name !== lying || way[1] === 1)
    const widthsOf = (lengthPx: number): number[] => names.map((name) => edgeWidthPx(moved(greyOf(found.get(name) ?? painted(() => 0)), lengthPx, way)) ?? Number.NaN)
    const still = widthsOf(1)
    let before = still
    for (const lengthPx of [5, 9, 17, 25]) {
      const now = widthsOf(lengthPx)
      for (const [index, width] of now.entries()) expect(width, `${names[index]} at ${lengthPx}`).toBeGreaterThan(before[index] ?? Number.NaN)
      before = now
    }
    expect(least(before)).toBeGreaterThan(most(still))
  })

  test('noise of a sensor in poor light hides no blur of 3 px and makes none', async () => {
    expect(most(await widths((samples) => noisy(samples, 4)))).toBeLessThan(least(await widths(async (samples) => noisy(await blurred(samples, 3), 4))))
  })

  test.each([90, 60, 35])('coding as JPEG of quality %i hides no blur of 3 px and makes none', async (quality) => {
    expect(most(await widths((samples) => coded(samples, quality)))).toBeLessThan(least(await widths(async (samples) => coded(await blurred(samples, 3), quality))))
  })
}, 300_000)
