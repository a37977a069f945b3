import { describe, expect, it } from 'vitest'
import { begun, put, redone, undone } from '../../../renderer/picture-board/history'
import { keyStep, onPicture } from '../../../renderer/picture-board/on-picture'
import { brought, fitted, toFrame, toPicture, zoomed } from '../../../renderer/picture-board/view'
import type { PixelPoint } from '../../../shared-logic/measuring/measurement'

const size = { widthPx: 4000, heightPx: 3000 }

describe('a point put on the picture', () => {
  it('stays on it, and steps by px of the preview', () => {
    expect(onPicture([-5, 3000.44], size)).toEqual([0, 3000])
    expect(keyStep(size, false)).toBe(2.5)
    expect(keyStep(size, true)).toBe(25)
    expect(keyStep({ widthPx: 800, heightPx: 600 }, false)).toBe(1)
  })
})

describe('undo and redo', () => {
  it('a drag of many steps is one step back', () => {
    const dragged = [1, 2, 3].reduce((history, value) => put(history, value, 'drag 1'), begun(0))
    expect(undone(dragged).now).toBe(0)
    expect(redone(undone(dragged)).now).toBe(3)
  })

  it('two drags are two steps, and something new forgets what was undone', () => {
    const twice = put(put(begun(0), 1, 'drag 1'), 2, 'drag 2')
    expect(undone(twice).now).toBe(1)
    expect(put(undone(twice), 9).future).toEqual([])
    expect(undone(begun(0)).now).toBe(0)
    expect(redone(begun(0)).now).toBe(0)
  })
})

describe('how the picture lies in its frame', () => {
  const frame = { width: 844, height: 644 }
  const whole = fitted(frame, size)

  it('is whole and in the middle, with room round it for points on its border', () => {
    expect(toFrame(whole, [0, 0])[0]).toBeGreaterThanOrEqual(22)
    expect(toFrame(whole, [4000, 3000])[1]).toBeLessThanOrEqual(644 - 22)
    expect(toFrame(whole, [2000, 1500])).toEqual([422, 322])
  })

  it('comes closer round the pointer, and never further off than the whole', () => {
    const at: PixelPoint = [500, 300]
    const close = zoomed(whole, 3, at, frame, size)
    const [x, y] = toPicture(close, at)
    const [beforeX, beforeY] = toPicture(whole, at)
    expect(x).toBeCloseTo(beforeX, 6)
    expect(y).toBeCloseTo(beforeY, 6)
    expect(zoomed(whole, 0.1, at, frame, size).scale).toBeCloseTo(whole.scale, 12)
  })

  it('moves until a point is well in sight', () => {
    const close = zoomed(whole, 8, [422, 322], frame, size)
    const [x, y] = toFrame(brought(close, [100, 100], frame, size), [100, 100])
    expect(x).toBeGreaterThanOrEqual(47.9)
    expect(y).toBeGreaterThanOrEqual(47.9)
  })
})
