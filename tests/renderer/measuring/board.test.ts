import { describe, expect, it } from 'vitest'
import { boardOf, emptyBoard, keyStep, onPicture, placeFor, wantedOf, withPointAdded, withPoints, type Board } from '../../../renderer/measuring/board'
import { begun, put, redone, undone } from '../../../renderer/measuring/history'
import { brought, fitted, toFrame, toPicture, zoomed } from '../../../renderer/measuring/view'
import type { Measurement, PixelPoint } from '../../../shared-logic/measuring/measurement'

const size = { widthPx: 4000, heightPx: 3000 }
const square: readonly PixelPoint[] = [[100, 100], [300, 100], [300, 300], [100, 300]]
const scaled: Board = { ...emptyBoard, lengthM: 0.1, points: { ...emptyBoard.points, length: [[0, 0], [1000, 0]] } }

describe('what is on the board', () => {
  it('waits for scale, length and outline in turn, and then is whole', () => {
    expect(wantedOf(emptyBoard, size).waits).toBe('two points')
    expect(wantedOf(withPoints(emptyBoard, 'length', [[0, 0], [10, 0]]), size).waits).toBe('length')
    expect(wantedOf({ ...emptyBoard, scaleBy: 'rectangle' }, size).waits).toBe('four corners')
    expect(wantedOf({ ...withPoints(emptyBoard, 'corners', square), scaleBy: 'rectangle', widthM: 0.1 }, size).waits).toBe('sides')
    expect(wantedOf(scaled, size).waits).toBe('outline')
    expect(wantedOf({ ...scaled, outlineBy: 'brush' }, size).waits).toBe('strokes')
    const { waits, wanted } = wantedOf(withPoints(scaled, 'polygon', square), size)
    expect(waits).toBeUndefined()
    expect(wanted).toEqual({ isScaled: true, given: { ...size, scale: { kind: 'length', from: [0, 0], to: [1000, 0], lengthM: 0.1 }, outline: { by: 'polygon', points: square } } })
  })

  it('shows what is found before there is a scale, and tells no area by it', () => {
    const { wanted, waits } = wantedOf({ ...emptyBoard, outlineBy: 'finder' }, size)
    expect(wanted?.isScaled).toBe(false)
    expect(waits).toBe('two points')
  })

  it('measures nothing by a face of two points', () => {
    const { wanted, waits } = wantedOf(withPoints(withPoints(scaled, 'polygon', square), 'face', [[0, 0], [9, 9]]), size)
    expect([wanted?.isScaled, waits]).toEqual([false, 'face'])
  })

  it('lays a kept measurement out again as it was', () => {
    const given = wantedOf(withPoints(withPoints(scaled, 'polygon', square), 'face', [[0, 0], [900, 0], [900, 900]]), size).wanted?.given
    if (given === undefined) throw new Error('this board is whole')
    const kept: Measurement = { ...given, sha256: '0'.repeat(64), result: { areaM2: 1, uncertaintyM2: 0.1 } }
    expect(wantedOf(boardOf(kept), size).wanted?.given).toEqual(given)
  })

  it('takes two ends of a length and four corners, no more', () => {
    const full = withPoints(emptyBoard, 'length', [[0, 0], [10, 0]])
    expect(withPointAdded(full, 'length', [5, 5])).toBe(full)
    expect(withPointAdded(withPoints(emptyBoard, 'corners', square), 'corners', [5, 5]).points.corners).toHaveLength(4)
  })

  it('puts a point that was set on an edge between its ends, any other at the end', () => {
    expect(placeFor(square, [200, 104], 9)).toBe(0)
    expect(placeFor(square, [96, 200], 9)).toBe(3)
    expect(placeFor(square, [200, 200], 9)).toBe(3)
    expect(withPointAdded(withPoints(emptyBoard, 'polygon', square), 'polygon', [200, 104], 0).points.polygon[1]).toEqual([200, 104])
  })

  it('keeps points on the picture and steps by px of the preview', () => {
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
