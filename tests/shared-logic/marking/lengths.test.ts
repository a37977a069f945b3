import fc from 'fast-check'
import { cos, evaluate } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { measuredLength } from '../../../shared-logic/marking/length-of'
import type { MarkLayer } from '../../../shared-logic/marking/marks'
import { roundedLength } from '../../../shared-logic/marking/rounded-length'
import { sayLengthsHold, sayMarks } from '../../../shared-logic/marking/say-marks'
import { marksDrawing } from '../../../shared-logic/marking/marks-drawing'
import type { PixelPoint, Scale } from '../../../shared-logic/measuring/measurement'
import { readingErrors } from '../../../shared-logic/measuring/reading-errors'
import { formatAsWritten, parseQuantity } from '../../../shared-logic/units/convert'
import { lengthSymbols, units, type LengthSymbol } from '../../../shared-logic/units/unit-table'
import { en } from '../../../shared-logic/words/en'
import { evenly } from '../evenly'

const size = { widthPx: 1600, heightPx: 1200 }
const point: fc.Arbitrary<PixelPoint> = fc.tuple(evenly(0, 1600), evenly(0, 1200))
const apart = ([ax, ay]: PixelPoint, [bx, by]: PixelPoint): number => Math.hypot(ax - bx, ay - by)
const scaleOf = (from: PixelPoint, to: PixelPoint, lengthM: number): Scale => ({ kind: 'length', from, to, lengthM })
const metric = { words: en, units: 'metric' } as const

describe('a measured length', () => {
  it('is to the known length as their px are, and as uncertain as the rule for a product says', () => {
    fc.assert(fc.property(point, point, point, point, evenly(0.01, 2), (a, b, from, to, knownM) => {
      fc.pre(apart(a, b) > 100 && apart(from, to) > 100)
      const { lengthM, uncertaintyM } = measuredLength(scaleOf(a, b, knownM), size, from, to)
      expect(lengthM).toBeCloseTo((knownM * apart(from, to)) / apart(a, b), 9)
      // Each end is off by a px in x and in y, so each length in px by √2 px. JCGM 100:2008 (GUM), 5.1.6: relative variances of a product add up.
      const relative = Math.hypot((Math.SQRT2 * readingErrors.pointPx) / apart(from, to), (Math.SQRT2 * readingErrors.pointPx) / apart(a, b), readingErrors.knownLengthM / knownM)
      expect(uncertaintyM / (2 * relative * lengthM)).toBeCloseTo(1, 2)
    }), { numRuns: 300 })
  })

  it('on an original of twice the px is read in px twice as fine, and comes to the same', () => {
    const double = ([x, y]: PixelPoint): PixelPoint => [2 * x, 2 * y]
    const [a, b, from, to]: PixelPoint[] = [[100, 100], [900, 130], [300, 500], [1200, 800]]
    if (!a || !b || !from || !to) throw new Error('four points')
    const small = measuredLength(scaleOf(a, b, 0.1), size, from, to)
    const large = measuredLength(scaleOf(double(a), double(b), 0.1), { widthPx: 3200, heightPx: 2400 }, double(from), double(to))
    expect(large.lengthM).toBeCloseTo(small.lengthM, 12)
    expect(large.uncertaintyM).toBeCloseTo(small.uncertaintyM, 12)
  })

  it('is read out to the digits its uncertainty allows (GUM, 7.2.6), in the reader’s unit', () => {
    const inMm = (lengthM: number, uncertaintyM: number) => {
      const rounded = roundedLength({ lengthM, uncertaintyM }, 'metric')
      return [rounded.lengthM * 1000, rounded.uncertaintyM * 1000].map((value) => Number(value.toFixed(6)))
    }
    expect(inMm(0.042_374, 0.001_432)).toEqual([42.4, 1.4])
    expect(inMm(0.847_21, 0.023_4)).toEqual([847, 23])
    expect(inMm(2.501_7, 0.184)).toEqual([2500, 180])
    expect(inMm(0.005_123_4, 0.000_051_2)).toEqual([5.12, 0.05])
    const inches = roundedLength({ lengthM: 0.042_374, uncertaintyM: 0.001_432 }, 'us')
    // 42.374 mm are 1.6683 in; 1.432 mm are 0.0564 in (25.4 mm to the inch, exactly).
    expect([inches.lengthM / 0.0254, inches.uncertaintyM / 0.0254].map((value) => Number(value.toFixed(6)))).toEqual([1.668, 0.056])
  })
})

describe('what is said of marks', () => {
  const marks: MarkLayer['marks'] = [
    { kind: 'arrow', from: [100, 100], to: [300, 300] },
    { kind: 'text', at: [500, 100], text: 'crack' },
    { kind: 'length', from: [400, 600], to: [800, 600] },
  ]
  const withScale: MarkLayer = { ...size, scale: { kind: 'length', from: [200, 1000], to: [1200, 1000], lengthM: 0.1 }, marks }
  const writtenOn = (layer: MarkLayer): string => marksDrawing(layer, 0, metric).shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : [])).join(' | ')

  it('is their kinds, their words and their lengths in a row', () => {
    expect(sayMarks(withScale, metric)).toMatch(/^marked: arrow, “crack”, 40 mm ± 0\.3\d mm, known: 100 mm$/)
    expect(sayMarks(withScale, { ...metric, units: 'us' })).toMatch(/^marked: arrow, “crack”, 1\.575 in ± 0\.01\d in, known: 3\.94 in$/)
    expect(sayMarks(undefined, metric)).toBe('')
    expect(sayMarks({ ...size, marks: [] }, metric)).toBe('')
  })

  it('has no figure for a length while nothing in the picture is known', () => {
    const unknown = { ...size, marks }
    expect(sayMarks(unknown, metric)).toBe('marked: arrow, “crack”, length not known')
    expect(writtenOn(unknown)).toBe('crack | length not known')
    expect(writtenOn(unknown)).not.toMatch(/\d/)
    expect(writtenOn(withScale)).toMatch(/^known: 100 mm \| crack \| 40 mm ± 0\.3\d mm$/)
  })

  it('goes with where lengths hold and what the ± covers, wherever one is told', () => {
    const sentence = sayLengthsHold(withScale, metric) ?? ''
    const [, degrees = '', share = ''] = /(\d+)° askew is (\d+) %/.exec(sentence) ?? []
    // cos 20° = 0.9397 by mathjs, and by Math: seen so far off square, a length reads that much of itself.
    expect(Number(evaluate('cos(20 deg)'))).toBeCloseTo(0.94, 2)
    expect(degrees).toBe('20')
    expect(Number(share)).toBe(Math.round((1 - cos((Number(degrees) * Math.PI) / 180)) * 100))
    expect(Math.cos((20 * Math.PI) / 180)).toBeCloseTo(cos((20 * Math.PI) / 180), 15)
    expect(sentence).toContain('The ± is for reading the ends and the rule alone.')
    expect(sayLengthsHold(undefined, metric)).toBeUndefined()
    expect(sayLengthsHold({ ...size, marks }, metric)).toBeUndefined()
    expect(sayLengthsHold({ ...withScale, marks: marks.slice(0, 2) }, metric)).toBeUndefined()
  })

  it('stands beside its line, not upon it, whichever way the line runs', () => {
    for (const [dx, dy] of [[400, 0], [-400, 0], [0, 400], [0, -400], [300, 300], [-300, 300]] as const) {
      const layer: MarkLayer = { ...withScale, marks: [{ kind: 'length', from: [800, 500], to: [800 + dx, 500 + dy] }] }
      const plate = marksDrawing(layer, 0, metric).shapes.filter((shape) => shape.kind === 'path' && shape.fill === 'casing').at(-1)
      const corners = plate?.kind === 'path' ? [...plate.d.matchAll(/([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const) : []
      const side = corners.map(([x, y]) => Math.sign((x - 800) * dy - (y - 500) * dx))
      expect(new Set(side).size).toBe(1)
    }
  })
})

describe('a known length', () => {
  const layer = (lengthM: number, writtenIn?: LengthSymbol): MarkLayer => ({ ...size, scale: { kind: 'length', from: [100, 100], to: [900, 100], lengthM, writtenIn }, marks: [] })
  const us = { words: en, units: 'us' } as const

  it('is told in the unit the rule was read in, whoever reads it; one kept before in the reader’s own', () => {
    for (const reader of [us, metric]) {
      expect(sayMarks(layer(0.05, 'mm'), reader)).toBe('marked: known: 50 mm')
      expect(sayMarks(layer(0.375 * 0.0254, 'in'), reader)).toBe('marked: known: 3/8 in')
      expect(sayMarks(layer(1.5, 'm'), reader)).toBe('marked: known: 1.5 m')
    }
    expect(sayMarks(layer(0.05), us)).toBe('marked: known: 1.97 in')
    expect(sayMarks(layer(0.05), metric)).toBe('marked: known: 50 mm')
  })

  it('comes back as it was written, in any unit of length', () => {
    for (const symbol of lengthSymbols)
      for (const written of [`50 ${symbol}`, `0.1 ${symbol}`, `12.7 ${symbol}`]) {
        const read = parseQuantity(written, 'smallLength', 'us')
        if (!read.ok) throw new Error(written)
        expect(read.unit).toBe(symbol)
        expect(formatAsWritten('smallLength', read.si, read.unit, 'us')).toBe(written)
      }
    expect(lengthSymbols).toEqual(units.smallLength.map(({ symbol }) => symbol))
  })
})
