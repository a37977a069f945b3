import { describe, expect, it } from 'vitest'
import { Refusal } from '../../../shared-logic/contract/refusal'
import { checkLayer } from '../../../shared-logic/marking/check-layer'
import { markLayerSchema, type Mark, type MarkLayer } from '../../../shared-logic/marking/marks'
import { en } from '../../../shared-logic/words/en'
import { sayRefusal } from '../../../shared-logic/words/say-refusal'

const size = { widthPx: 1600, heightPx: 1200 }
const layerOf = (...marks: Mark[]): MarkLayer => ({ ...size, marks })
const saidOf = (layer: MarkLayer): string => {
  try {
    checkLayer(layer, size)
    return ''
  } catch (problem) {
    if (problem instanceof Refusal) return `${sayRefusal(en, problem.data)} (${problem.data.field})`
    throw problem
  }
}
const arrow: Mark = { kind: 'arrow', from: [10, 10], to: [200, 100] }

describe('a layer at the door', () => {
  it('is taken where every mark lies on its picture, border counted in', () => {
    expect(saidOf(layerOf(arrow, { kind: 'box', from: [0, 0], to: [1600, 1200] }, { kind: 'text', at: [1600, 0], text: 'rust' }))).toBe('')
    expect(saidOf(layerOf())).toBe('')
  })

  it.each<[string, Mark]>([
    ['an arrow beyond the right', { kind: 'arrow', from: [10, 10], to: [1600.1, 100] }],
    ['a box above', { kind: 'box', from: [10, -0.1], to: [100, 100] }],
    ['words below', { kind: 'text', at: [10, 1201], text: 'rust' }],
    ['one point of many to the left', { kind: 'freehand', points: [[10, 10], [-1, 20], [30, 30]] }],
  ])('is refused with the mark’s number where it leaves the picture: %s', (_what, mark) => {
    expect(saidOf(layerOf(arrow, mark))).toBe('Mark 2 leaves the picture. Keep every point on the photograph. (layer)')
  })

  it('is refused where a mark has no size, a known length none, or too little to measure by', () => {
    expect(saidOf(layerOf({ kind: 'circle', from: [50, 50], to: [50, 50] }))).toMatch(/^Mark 1 has both its ends in one place/)
    expect(saidOf(layerOf({ kind: 'freehand', points: [[50, 50], [50, 50]] }))).toMatch(/^Mark 1 has both its ends in one place/)
    expect(saidOf({ ...layerOf(arrow), scale: { kind: 'length', from: [10, 10], to: [1700, 10], lengthM: 0.1 } })).toMatch(/picture/)
    expect(saidOf({ ...layerOf(arrow), scale: { kind: 'length', from: [10, 10], to: [25, 10], lengthM: 0.1 } })).toMatch(/^The known length is only 15 px long in the picture/)
  })

  it('is refused on a picture of another size, which the sentence names', () => {
    expect(saidOf({ ...layerOf(arrow), widthPx: 1200, heightPx: 1600 })).toBe('These marks were drawn on a picture of another size. Draw them on this one, which is 1600 × 1200 px. (layer)')
  })

  it('by its schema holds no more than it may: words of 120 letters, lines of 2,000 points, 200 marks, finite places', () => {
    const takes = (layer: unknown): boolean => markLayerSchema.safeParse(layer).success
    expect(takes(layerOf({ kind: 'text', at: [1, 1], text: 'x'.repeat(120) }))).toBe(true)
    expect(takes(layerOf({ kind: 'text', at: [1, 1], text: 'x'.repeat(121) }))).toBe(false)
    expect(takes(layerOf({ kind: 'text', at: [1, 1], text: '  ' }))).toBe(false)
    expect(takes(layerOf({ kind: 'freehand', points: Array.from({ length: 2001 }, () => [1, 1]) }))).toBe(false)
    expect(takes(layerOf(...Array.from({ length: 201 }, () => arrow)))).toBe(false)
    expect(takes(layerOf({ kind: 'arrow', from: [NaN, 1], to: [5, 5] }))).toBe(false)
    expect(takes(layerOf({ kind: 'arrow', from: [1, 1], to: [Infinity, 5] }))).toBe(false)
    expect(takes({ ...size, marks: [{ kind: 'image', from: [1, 1], to: [5, 5], href: 'file:///etc' }] })).toBe(false)
  })
})
