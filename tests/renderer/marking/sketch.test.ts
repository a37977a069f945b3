import { describe, expect, it } from 'vitest'
import { choiceAt, chosenMark, everyChoice, knownProblem, layerOf, sketchOf, uprightLayerOf, withMark, withoutMark, type Sketch } from '../../../renderer/marking/sketch'
import { drawnMark, toolKeys, toolOfKey, tools, withDrawn } from '../../../renderer/marking/tools'
import { platesOf } from '../../../shared-logic/marking/marks-drawing'
import type { MarkLayer } from '../../../shared-logic/marking/marks'
import { en } from '../../../shared-logic/words/en'

const size = { widthPx: 1600, heightPx: 1200 }
const layer: MarkLayer = {
  ...size, scale: { kind: 'length', from: [100, 1100], to: [1100, 1100], lengthM: 0.1 },
  marks: [{ kind: 'box', from: [100, 100], to: [700, 700] }, { kind: 'circle', from: [300, 300], to: [500, 500] }, { kind: 'text', at: [1200, 300], text: 'crack' }],
}

describe('a sketch', () => {
  it('laid out turned and kept again is the layer it came from, whatever the turn', () => {
    for (const turns of [0, 1, 2, 3]) {
      const turned = turns % 2 === 1 ? { widthPx: 1200, heightPx: 1600 } : size
      expect(uprightLayerOf(sketchOf(layer, turns), turned, turns)).toEqual(layer)
    }
    expect(sketchOf(undefined, 0)).toEqual({ marks: [], known: undefined })
  })

  it('has no scale while the known length was not typed, is out of bounds, or too short to measure by', () => {
    const drawn = (known: Sketch['known']): Sketch => ({ marks: [], known })
    const line = { from: [100, 100], to: [900, 100] } as const
    expect(knownProblem(drawn(undefined), size)).toBeUndefined()
    expect(knownProblem(drawn({ from: [...line.from], to: [...line.to], lengthM: 0.1 }), size)).toBeUndefined()
    for (const lengthM of [undefined, 0, -1, 0.0005, 21, NaN]) {
      const sketch = drawn({ from: [...line.from], to: [...line.to], lengthM })
      expect(knownProblem(sketch, size)).toBe('length')
      expect(layerOf(sketch, size).scale).toBeUndefined()
    }
    const short = drawn({ from: [100, 100], to: [110, 100], lengthM: 0.1 })
    expect(knownProblem(short, size)).toMatchObject({ code: 'measure.scale-too-short' })
    expect(layerOf(short, size).scale).toBeUndefined()
  })

  it('drawn anew, a known length has to be told anew how long it is', () => {
    const sketch = sketchOf(layer, 0)
    expect(withDrawn(sketch, 'known', { kind: 'length', from: [0, 0], to: [50, 50] }).known).toEqual({ from: [0, 0], to: [50, 50], lengthM: undefined })
    // Moved by an end it stays what it is.
    expect(withMark(sketch, 'known', { kind: 'length', from: [0, 0], to: [50, 50] }).known?.lengthM).toBe(0.1)
  })

  it('gives the mark whose line is nearest to the finger, the one on top of two, words by their ground, and none beyond reach', () => {
    const sketch = sketchOf(layer, 0)
    const plates = platesOf(layer, { words: en, units: 'metric' })
    const at = (x: number, y: number) => choiceAt(sketch, [x, y], 20, plates)
    expect(at(104, 400)).toBe(0)
    expect(at(503, 400)).toBe(1)
    expect(at(400, 400)).toBeUndefined()
    expect(at(1200, 300)).toBe(2)
    expect(at(600, 1105)).toBe('known')
    expect(at(60, 400)).toBeUndefined()
    const twice = { ...sketch, marks: [...sketch.marks, ...sketch.marks.slice(0, 1)] }
    expect(choiceAt(twice, [104, 400], 20, plates)).toBe(3)
  })

  it('is walked through from the known length on, and taken from one by one', () => {
    let sketch = sketchOf(layer, 0)
    expect(everyChoice(sketch)).toEqual(['known', 0, 1, 2])
    sketch = withoutMark(withoutMark(sketch, 'known'), 1)
    expect(everyChoice(sketch)).toEqual([0, 1])
    expect(chosenMark(sketch, 1)).toMatchObject({ kind: 'text' })
    expect(chosenMark(sketch, 'known')).toBeUndefined()
    expect(chosenMark(sketch, 2)).toBeUndefined()
  })
})

describe('the tools', () => {
  it('each have a key of their own', () => {
    expect(new Set(Object.values(toolKeys)).size).toBe(tools.length)
    for (const tool of tools) expect(toolOfKey(toolKeys[tool].toUpperCase())).toBe(tool)
    expect(toolOfKey('Enter')).toBeUndefined()
  })

  it('draw nothing that has no size', () => {
    expect(drawnMark('arrow', [[5, 5]])).toBeUndefined()
    expect(drawnMark('arrow', [[5, 5], [5, 5]])).toBeUndefined()
    expect(drawnMark('freehand', [[5, 5], [5, 5], [5, 5]])).toBeUndefined()
    expect(drawnMark('move', [[5, 5], [9, 9]])).toBeUndefined()
    expect(drawnMark('circle', [[5, 5], [7, 7], [9, 9]])).toEqual({ kind: 'circle', from: [5, 5], to: [9, 9] })
  })
})
