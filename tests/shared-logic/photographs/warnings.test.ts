import { describe, expect, test } from 'vitest'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import { checksWithNeeds, needFigures, needOf } from '../../../shared-logic/photographs/needs'
import type { Quality } from '../../../shared-logic/photographs/quality'
import { warningKeys, warningsOf } from '../../../shared-logic/photographs/warnings'
import { en } from '../../../shared-logic/words/en'
import { sayWarnings, shortWarnings } from '../../../shared-logic/words/say-photograph'

const good: Quality = { edgeWidthPx: 2, burntShare: 0.01, blackShare: 0.02, medianLuminance: 0.18 }
const large = { widthPx: 4000, heightPx: 3000 }
const keysOf = (checkId: string | undefined, quality: Partial<Quality>, size = large): string[] => warningsOf({ checkId, ...size, quality: { ...good, ...quality } }).map(({ key }) => key)

const [reading, part, overview, lamp, paper] = ['wheels.age', 'hubs.seal', 'frame.straight', 'lights.lamp', 'papers.registration'] as const

test('every check that is said to need more or less is in the catalogue, and none both', () => {
  const known = new Set(catalogue.map(({ id }) => id))
  expect(checksWithNeeds.filter((id) => !known.has(id))).toEqual([])
  expect([needOf(reading).need, needOf(part).need, needOf(overview).need]).toEqual(['fine', 'part', 'overview'])
  expect(needOf(undefined).need).toBe('overview')
  expect(needOf('no.such-check').need).toBe('overview')
})

test('finer needs ask for more, in every figure', () => {
  expect(needFigures.fine.leastLongEdgePx).toBeGreaterThan(needFigures.part.leastLongEdgePx)
  expect(needFigures.part.leastLongEdgePx).toBeGreaterThan(needFigures.overview.leastLongEdgePx)
  expect(needFigures.fine.widestEdgePx).toBeLessThan(needFigures.part.widestEdgePx)
  expect(needFigures.part.widestEdgePx).toBeLessThan(needFigures.overview.widestEdgePx)
})

test('a good photograph gives no warning at any check', () => {
  for (const { id } of catalogue) expect(keysOf(id, {})).toEqual([])
})

describe('at the edge of each figure', () => {
  test.each([reading, part, overview])('blur at %s', (checkId) => {
    const { widestEdgePx } = needOf(checkId)
    expect(keysOf(checkId, { edgeWidthPx: widestEdgePx })).toEqual([])
    expect(keysOf(checkId, { edgeWidthPx: widestEdgePx - 0.1 })).toEqual([])
    expect(keysOf(checkId, { edgeWidthPx: widestEdgePx + 0.1 })).toEqual(['blurred'])
  })

  test.each([reading, part, overview])('size at %s counts along the long edge, lying or standing', (checkId) => {
    const least = needOf(checkId).leastLongEdgePx
    expect(keysOf(checkId, {}, { widthPx: least, heightPx: 500 })).toEqual([])
    expect(keysOf(checkId, {}, { widthPx: 500, heightPx: least + 1 })).toEqual([])
    expect(keysOf(checkId, {}, { widthPx: 500, heightPx: least - 1 })).toEqual(['tooSmall'])
  })

  test('a plate wants more pixels than the whole rig: 1280 px do for this, not for that', () => {
    expect(keysOf('papers.rating-plate', {}, { widthPx: 1280, heightPx: 960 })).toEqual(['tooSmall'])
    expect(keysOf(overview, {}, { widthPx: 1280, heightPx: 960 })).toEqual([])
  })

  test('darkness: four stops under a grey card', () => {
    expect(keysOf(part, { medianLuminance: 0.18 / 16 })).toEqual([])
    expect(keysOf(part, { medianLuminance: 0.18 / 16 - 0.001 })).toEqual(['tooDark'])
  })

  test('a lamp may be photographed at night', () => {
    expect(keysOf(lamp, { medianLuminance: 0.001, blackShare: 0.9 })).toEqual([])
  })

  test.each([reading, part, overview])('white at %s', (checkId) => {
    const { mostBurntShare } = needOf(checkId)
    expect(keysOf(checkId, { burntShare: mostBurntShare })).toEqual([])
    expect(keysOf(checkId, { burntShare: mostBurntShare + 0.01 })).toEqual(['burntOut'])
  })

  test('a copied paper may be white all over', () => {
    expect(keysOf(paper, { burntShare: 0.95 })).toEqual([])
  })
})

test('one picture may be warned of for several reasons', () => {
  expect(keysOf(reading, { edgeWidthPx: 20, medianLuminance: 0, burntShare: 0.5 }, { widthPx: 320, heightPx: 240 })).toEqual([...warningKeys])
})

test('a photograph from before its quality was measured is judged by its size alone; one without edges by all but blur', () => {
  expect(warningsOf({ checkId: part, ...large })).toEqual([])
  expect(warningsOf({ checkId: part, widthPx: 300, heightPx: 200 }).map(({ key }) => key)).toEqual(['tooSmall'])
  expect(keysOf(part, { edgeWidthPx: undefined })).toEqual([])
})

test('every warning has its sentence with every figure in it, and its word', () => {
  const bad = { checkId: reading, widthPx: 320, heightPx: 240, quality: { edgeWidthPx: 8.04, burntShare: 0.4, blackShare: 0.9, medianLuminance: 0.004 } }
  const sentences = sayWarnings(en, bad)
  expect(sentences).toHaveLength(warningKeys.length)
  for (const sentence of sentences) expect(sentence).not.toMatch(/[{}]|undefined|NaN/)
  expect(sentences[0]).toContain('spread over 8 px')
  expect(sentences[1]).toContain('0.4 %')
  expect(sentences[2]).toContain('40 %')
  expect(sentences[3]).toContain('320 × 240 px')
  expect(shortWarnings(en, bad)).toEqual(['Blurred', 'Too dark', 'Burnt out', 'Small'])
})
