import { describe, expect, it } from 'vitest'
import { measuredArea } from '../../../shared-logic/measuring/area'
import type { PixelPoint, Scale } from '../../../shared-logic/measuring/measurement'
import { polygonRegion } from '../../../shared-logic/measuring/region'
import { surfaceMapOf } from '../../../shared-logic/measuring/surface-map'

/** The same figures as the program states: 1 px of a 1600 px picture a coordinate, 1 px along the whole border, half a millimetre of the rule. */
const stated = { pointPx: 2.5, borderPx: 2.5, ruleHalfM: 0.0005 }
const picture = { widthPx: 4000, heightPx: 3000 }
const draws = 5_000

const chanceOf = (seed: number) => {
  let state = seed
  const next = (): number => { state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0; return (state + 0.5) / 2 ** 32 }
  return { even: () => 2 * next() - 1, normal: () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next()) }
}

const disc = (x: number, y: number, radius: number): PixelPoint[] =>
  Array.from({ length: 60 }, (_, index): PixelPoint => [x + radius * Math.cos((2 * Math.PI * index) / 60), y + radius * Math.sin((2 * Math.PI * index) / 60)])

const misread = (scale: Scale, chance: ReturnType<typeof chanceOf>): Scale => {
  const point = ([x, y]: PixelPoint): PixelPoint => [x + stated.pointPx * chance.normal(), y + stated.pointPx * chance.normal()]
  const metres = (value: number): number => value + stated.ruleHalfM * chance.even()
  if (scale.kind === 'length') return { ...scale, from: point(scale.from), to: point(scale.to), lengthM: metres(scale.lengthM) }
  const [a, b, c, d] = scale.corners
  return { ...scale, corners: [point(a), point(b), point(c), point(d)], widthM: metres(scale.widthM), heightM: metres(scale.heightM) }
}

/** Standard deviation of the area over many hands, each with its own errors. */
const scatter = (scale: Scale, [x, y]: PixelPoint, radius: number): number => {
  const chance = chanceOf(7)
  const areas = Array.from({ length: draws }, () => polygonRegion(disc(x, y, radius + stated.borderPx * chance.normal())).areaM2(surfaceMapOf(misread(scale, chance))))
  const mean = areas.reduce((sum, area) => sum + area, 0) / draws
  return Math.sqrt(areas.reduce((sum, area) => sum + (area - mean) ** 2, 0) / (draws - 1))
}

describe('the interval of about 95 %, against a Monte Carlo of the same errors (JCGM 101:2008)', () => {
  it.each<[string, Scale, PixelPoint, number]>([
    ['a spot by a long bar', { kind: 'length', from: [200, 2800], to: [3200, 2800], lengthM: 0.3 }, [1800, 1500], 300],
    ['a spot by a short bar', { kind: 'length', from: [200, 2800], to: [600, 2750], lengthM: 0.05 }, [1800, 1500], 600],
    ['a small spot, its border telling most', { kind: 'length', from: [200, 2800], to: [3200, 2800], lengthM: 0.3 }, [1800, 1500], 60],
    ['a spot on a plate seen squarely', { kind: 'rectangle', corners: [[800, 500], [3000, 520], [2990, 2200], [810, 2180]], widthM: 0.2, heightM: 0.15 }, [1900, 1300], 400],
    ['a spot on a plate in steep perspective', { kind: 'rectangle', corners: [[1300, 700], [2500, 760], [3300, 2500], [500, 2300]], widthM: 0.2, heightM: 0.2 }, [1900, 1300], 300],
    ['a spot beside a small card', { kind: 'rectangle', corners: [[600, 2000], [1000, 2010], [1040, 2300], [580, 2280]], widthM: 0.0856, heightM: 0.054 }, [1500, 1900], 250],
  ])('of %s agrees within a twentieth', (_, scale, middle, radius) => {
    const { uncertaintyM2 } = measuredArea({ ...picture, scale, outline: { by: 'polygon', points: disc(...middle, radius) } })
    const ratio = uncertaintyM2 / 2 / scatter(scale, middle, radius)
    expect(ratio).toBeGreaterThan(0.95)
    expect(ratio).toBeLessThan(1.05)
  })

  it('is wider for a brush than for a fine outline of the same disc', () => {
    const scale: Scale = { kind: 'length', from: [200, 2800], to: [3200, 2800], lengthM: 0.3 }
    const brush = measuredArea({ ...picture, scale, outline: { by: 'brush', strokes: [{ does: 'adds', radiusPx: 300, points: [[1800, 1500]] }] } })
    expect(brush.uncertaintyM2).toBeGreaterThan(1.5 * measuredArea({ ...picture, scale, outline: { by: 'polygon', points: disc(1800, 1500, 300) } }).uncertaintyM2)
  })

  it('is narrower on the full photograph than on a small one of the same scene', () => {
    const small = measuredArea({ widthPx: 800, heightPx: 600, scale: { kind: 'length', from: [40, 560], to: [640, 560], lengthM: 0.3 }, outline: { by: 'polygon', points: disc(360, 300, 60) } })
    const full = measuredArea({ ...picture, scale: { kind: 'length', from: [200, 2800], to: [3200, 2800], lengthM: 0.3 }, outline: { by: 'polygon', points: disc(1800, 1500, 300) } })
    expect(small.areaM2).toBeCloseTo(full.areaM2, 9)
    expect(small.uncertaintyM2).toBeGreaterThan(1.5 * full.uncertaintyM2)
  })
})
