import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pixelsOf, resolutionSteps } from '../../../renderer/camera/resolutions'
import { evenly } from '../../shared-logic/evenly'

const steps = (widthPx: number, heightPx: number): string[] => resolutionSteps({ widthPx, heightPx }).map((each) => `${each.widthPx} × ${each.heightPx}`)

describe('the resolutions offered', () => {
  it('begin with the largest and keep its shape', () => {
    expect(steps(4000, 3000)).toEqual(['4000 × 3000', '3264 × 2448', '2592 × 1944', '2048 × 1536', '1600 × 1200', '1280 × 960'])
    expect(steps(1920, 1080)).toEqual(['1920 × 1080', '1280 × 720', '640 × 360'])
  })

  it('stand upright where the camera does', () => {
    expect(steps(1080, 1920)).toEqual(['1080 × 1920', '720 × 1280', '360 × 640'])
  })

  it('leave out what is nearly the largest', () => {
    expect(steps(2688, 2016)).not.toContain('2592 × 1944')
  })

  it('are halves where the camera has a shape of its own', () => {
    expect(steps(1280, 1024)).toEqual(['1280 × 1024', '640 × 512', '320 × 256'])
  })

  it('never exceed the camera, and fall from step to step', () => {
    fc.assert(fc.property(evenly(16, 8000), evenly(16, 8000), (width, height) => {
      const largest = { widthPx: Math.round(width), heightPx: Math.round(height) }
      const offered = resolutionSteps(largest)
      expect(offered[0]).toEqual(largest)
      expect(offered.filter(({ widthPx, heightPx }) => widthPx > largest.widthPx || heightPx > largest.heightPx)).toEqual([])
      const sizes = offered.map(pixelsOf)
      expect(sizes).toEqual([...new Set(sizes)].toSorted((a, b) => b - a))
    }))
  })
})
