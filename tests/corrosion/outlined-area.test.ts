import { beforeAll, describe, expect, it } from 'vitest'
import { quantile } from './judge'
import { onAllCores } from './on-all-cores'
import type { Reading } from './scene-tasks'
import { lights, type SceneOptions } from './scenes/plan'

const over = (readings: readonly Reading[], limit: number, of: (reading: Reading) => number): string[] =>
  readings.filter((reading) => Math.abs(of(reading)) > limit).map((reading) => `${reading.title}: ${(of(reading) * 100).toFixed(2)} %`)

const summary = (readings: readonly Reading[], of: (reading: Reading) => number): string => {
  const errors = readings.map((reading) => Math.abs(of(reading)) * 100)
  return `median ${quantile(errors, 0.5).toFixed(2)} %, worst ${Math.max(...errors).toFixed(2)} %`
}

const scenesEach = 30

/** Every light in turn, JPEG 60 to 95. */
const jobs = (firstSeed: number, optionsOf: (i: number) => SceneOptions): { seed: number, options: SceneOptions }[] => Array.from({ length: scenesEach }, (_, i) => (
  { seed: firstSeed + 2 * i, options: { light: lights[i % lights.length] ?? 'daylight', jpegQuality: 60 + ((i * 13) % 36), ...optionsOf(i) } }
))

describe('the area of an outlined spot in rendered photographs of known truth', () => {
  let flat: readonly Reading[] = []
  let tilted: readonly Reading[] = []
  beforeAll(async () => {
    const all = await onAllCores('outlined-area', 'measured', [
      ...jobs(3001, (i) => ({ tiltRadians: 0, scaleBy: i % 2 === 0 ? 'rule' : 'card' })),
      ...jobs(4001, (i) => ({ tiltRadians: 0.18 + (0.55 * i) / scenesEach, scaleBy: 'card' })),
    ])
    flat = all.slice(0, scenesEach)
    tilted = all.slice(scenesEach)
    console.log(`outlined area: flat ${summary(flat, (r) => r.error)}; perspective ${summary(tilted, (r) => r.error)}; rust as masked: flat ${summary(flat, (r) => r.maskError)}; perspective ${summary(tilted, (r) => r.maskError)}`)
  }, 600_000)

  it('is within 2 % seen flat: outline moved by up to 1 px a corner, rule ends by up to 0.5 px, the card read from the picture, JPEG 60 to 95, every light', () => {
    expect(flat).toHaveLength(scenesEach)
    expect(Math.min(...flat.map(({ quality }) => quality))).toBeLessThan(63)
    expect(over(flat, 0.02, ({ error }) => error)).toEqual([])
  })

  it('is within 4 % in perspective of 10 to 42 degrees: outline moved by up to 1 px a corner, the four corners of the card or sheet read from the picture', () => {
    expect(tilted).toHaveLength(scenesEach)
    expect(over(tilted, 0.04, ({ error }) => error)).toEqual([])
  })

  it('is, for all rust of the scene as a mask over the whole face, within 2 % flat and 4 % in perspective of the sum of its pixels on the plane', () => {
    expect(over(flat, 0.02, ({ maskError }) => maskError)).toEqual([])
    expect(over(tilted, 0.04, ({ maskError }) => maskError)).toEqual([])
  })
})
