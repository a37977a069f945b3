import { describe, expect, it } from 'vitest'
import { boardOf, emptyBoard, placeFor, wantedOf, withPointAdded, withPoints, type Board } from '../../../renderer/measuring/board'
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
})
