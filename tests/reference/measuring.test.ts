import { describe, expect, it } from 'vitest'
import { Refusal } from '../../shared-logic/contract/refusal'
import { measuredArea } from '../../shared-logic/measuring/area'
import type { PixelPoint, Scale } from '../../shared-logic/measuring/measurement'
import { pixelCount, polygonMask } from '../../shared-logic/measuring/mask'
import { polygonArea } from '../../shared-logic/measuring/polygon'
import { maskRegion } from '../../shared-logic/measuring/region'
import { surfaceMapOf, toSurface } from '../../shared-logic/measuring/surface-map'
import { tiltNote } from '../../shared-logic/measuring/tilt'

const picture = { widthPx: 1600, heightPx: 1200 }
const perPx = (metrePerPx: number, longPx = 800): Scale => ({ kind: 'length', from: [100, 900], to: [100 + longPx, 900], lengthM: metrePerPx * longPx })
const areaMm2 = (scale: Scale, points: PixelPoint[]): number => measuredArea({ ...picture, scale, outline: { by: 'polygon', points } }).areaM2 * 1e6

const pentagon: PixelPoint[] = [[100, 100], [400, 100], [400, 300], [250, 380], [100, 300]]
const slanted: PixelPoint[] = [[10, 10], [60, 20], [70, 70], [30, 90], [5, 50]]
const lShape: PixelPoint[] = [[0, 0], [120, 0], [120, 40], [60, 40], [60, 90], [0, 90]]

describe('areas by the shoelace formula', () => {
  it.each([['a pentagon', pentagon, 72_000], ['a slanted outline', slanted, 3_600], ['the same, the other way round', slanted.toReversed(), 3_600], ['an L', lShape, 7_800]] as const)('%s encloses its px²', (_, points, px2) => {
    expect(polygonArea(points)).toBe(px2)
  })
  it('the pentagon at 100 mm to 800 px is 1,125 mm², 11.25 cm²', () => expect(areaMm2(perPx(0.000_125), pentagon)).toBeCloseTo(1_125, 8))
  it('the L at 0.5 mm a px is 1,950 mm²', () => expect(areaMm2(perPx(0.000_5), lShape)).toBeCloseTo(1_950, 8))
  it('a square of 30 px at 1 mm a px is 9.00 cm²', () => expect(areaMm2(perPx(0.001), [[0, 0], [30, 0], [30, 30], [0, 30]])).toBeCloseTo(900, 8))
  it('reading the bar of 800 px wrong by 2 px changes the area by half a per cent (2 · δL / L)', () => {
    const right = areaMm2(perPx(0.000_125), pentagon)
    const wrong = areaMm2({ kind: 'length', from: [100, 900], to: [902, 900], lengthM: 0.1 }, pentagon)
    expect(wrong / right - 1).toBeCloseTo(-0.005, 4)
  })
})

describe('areas by counting pixels', () => {
  it('18,240 px at 0.2 mm a px are 729.6 mm²', () => {
    const mask = polygonMask({ width: 1600, height: 1200 }, [[100, 100], [252, 100], [252, 220], [100, 220]])
    expect(pixelCount(mask)).toBe(18_240)
    expect(maskRegion(mask, picture).areaM2(surfaceMapOf(perPx(0.000_2))) * 1e6).toBeCloseTo(729.6, 8)
  })
})

describe('a plate of 200 × 150 mm seen in perspective, far edge first (plane geometry)', () => {
  const scale: Scale = { kind: 'rectangle', corners: [[300, 200], [900, 200], [1000, 800], [200, 800]], widthM: 0.2, heightM: 0.15 }
  const [far, near]: [PixelPoint[], PixelPoint[]] = [[[550, 300], [650, 300], [650, 400], [550, 400]], [[550, 600], [650, 600], [650, 700], [550, 700]]]

  it('maps by u = (0.375x + 0.0625y − 125)/w, v = (0.375y − 75)/w, w = 0.000625y + 1', () => {
    const map = surfaceMapOf(scale)
    for (const [x, y] of [[300, 200], [612.5, 433], [123, 777]] as const) {
      const w = 0.000_625 * y + 1
      const [u, v] = toSurface(map, [x, y])
      expect(u * 1000).toBeCloseTo((0.375 * x + 0.0625 * y - 125) / w, 9)
      expect(v * 1000).toBeCloseTo((0.375 * y - 75) / w, 9)
    }
  })
  it.each([['the far square', far, 875.07], ['the near square', near, 569.45]] as const)('%s of 100 px has its true area', (_, square, mm2) => {
    expect(areaMm2(scale, square)).toBeCloseTo(mm2, 2)
    const mask = polygonMask({ width: 1600, height: 1200 }, square)
    expect(maskRegion(mask, picture).areaM2(surfaceMapOf(scale)) * 1e6).toBeCloseTo(mm2, 2)
  })
  it('one scale off the far edge would make 1,111.11 mm² of either square, one off the near edge 625.00 mm²', () => {
    expect(areaMm2({ kind: 'length', from: [300, 200], to: [900, 200], lengthM: 0.2 }, far)).toBeCloseTo(1_111.11, 2)
    expect(areaMm2({ kind: 'length', from: [200, 800], to: [1000, 800], lengthM: 0.2 }, near)).toBeCloseTo(625, 8)
  })
  it('four points, three on one line, give no map: refused', () => {
    const line: Scale = { ...scale, corners: [[300, 200], [600, 200], [900, 200], [200, 800]] }
    expect(() => areaMm2(line, far)).toThrow(Refusal)
  })
})

describe('what a known length leaves in', () => {
  it.each([[10, 1.52], [15, 3.41], [20, 6.03], [30, 13.4], [45, 29.29]])('a tilt of %i° takes %d %% off the area (cosine)', (degrees, percent) => {
    expect((tiltNote.find((row) => row.degrees === degrees)?.missingShare ?? 0) * 100).toBeCloseTo(percent, 2)
  })
  it.each([[10, 21], [50, 4.04], [100, 2.01]])('an outline one px too wide makes a disc of %i px %d %% too large, the border once round, to second order (plane geometry)', (radius, percent) => {
    const disc = polygonMask({ width: 1600, height: 1200 }, Array.from({ length: 600 }, (_, index): PixelPoint => [400 + radius * Math.cos((index * Math.PI) / 300), 400 + radius * Math.sin((index * Math.PI) / 300)]))
    const region = maskRegion(disc, picture)
    const map = surfaceMapOf(perPx(0.001))
    const secondOrder = (100 / radius ** 2)
    expect((region.borderM2PerPx(map) / region.areaM2(map)) * 100 + secondOrder).toBeCloseTo(percent, radius === 10 ? 0 : 1)
  })
})
