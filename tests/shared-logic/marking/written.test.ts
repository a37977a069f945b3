import fc from 'fast-check'
import PDFDocument from 'pdfkit'
import { describe, expect, it } from 'vitest'
import { lettersOf, lineWidth } from '../../../shared-logic/marking/letter-widths'
import { plateAt, plateShapes } from '../../../shared-logic/marking/plates'
import { writtenLines } from '../../../shared-logic/marking/written-lines'
import { evenly } from '../evenly'

const face = new PDFDocument().font('assets/fonts/AtkinsonHyperlegibleNext-Bold.ttf').fontSize(1000)
/** Printable letters of Latin-1 and Latin Extended-A, and the signs of print. */
const letters = [...Array.from({ length: 0x180 - 0x20 }, (_, index) => index + 0x20).filter((code) => !(code >= 0x7f && code <= 0xa0) && code !== 0xad).map((code) => String.fromCodePoint(code)), '–', '—', '‘', '’', '“', '”', '…', '€']
const inFace = letters.filter((letter) => face._font.font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0))
const text = fc.array(fc.constantFrom(...inFace, ' ', ' ', ' ', 'Ж', '漢'), { minLength: 1, maxLength: 120 }).map((parts) => parts.join('').trim()).filter((words) => words !== '')

describe('what is written on a photograph', () => {
  it('runs as wide as the house face itself says, letter by letter', () => {
    expect(inFace.length).toBeGreaterThan(280)
    const wrong = inFace.filter((letter) => Math.abs(lineWidth(letter) - face.widthOfString(letter, { features: [] }) / 1000) > 0.0051)
    expect(wrong).toEqual([])
  })

  it('takes a letter the face does not have to be wider than nearly all it has', () => {
    const wider = inFace.filter((letter) => lineWidth(letter) > lineWidth('漢'))
    expect(wider.length).toBeLessThan(10)
  })

  it('breaks between words where it can, in a word where it must, and loses no letter', () => {
    fc.assert(fc.property(text, evenly(2, 30), (words, most) => {
      const lines = writtenLines(words, most)
      expect(lines.join('').replaceAll(/\s/gu, '')).toBe(words.normalize('NFC').replaceAll(/\s/gu, ''))
      for (const line of lines) expect(lineWidth(line) <= most || lettersOf(line).length === 1).toBe(true)
    }), { numRuns: 300 })
    expect(writtenLines('crack at the weld', 4.5)).toEqual(['crack at', 'the weld'])
    expect(writtenLines('crack', 1.2)).toEqual(['cr', 'ac', 'k'])
  })

  it('lies wholly on the picture, wherever it was put', () => {
    fc.assert(fc.property(text, evenly(0, 1), evenly(0, 1), fc.constantFrom([4000, 3000], [3000, 4000], [1600, 1600]), (words, u, v, [widthPx = 0, heightPx = 0]) => {
      const size = { widthPx, heightPx }
      const plate = plateAt(words, { x: u * widthPx, y: v * heightPx }, size)
      expect(plate.x >= 0 && plate.y >= 0).toBe(true)
      expect(plate.x + plate.width <= widthPx + 1e-6 && plate.y + plate.height <= heightPx + 1e-6).toBe(true)
      for (const shape of plateShapes(plate, size)) {
        if (shape.kind !== 'text') continue
        expect(shape.x + lineWidth(shape.text) * shape.size).toBeLessThanOrEqual(plate.x + plate.width + 0.2)
        expect(shape.y > plate.y && shape.y < plate.y + plate.height).toBe(true)
      }
    }), { numRuns: 300 })
  })
})
