import { join } from 'node:path'
import { assetsFolder } from '../assets-folder'
import type { Style, Weight } from './styles'

/** A face as pdfkit knows it. 'reading' is the house face; 'wide' has Greek, Cyrillic, Vietnamese, arrows and signs. */
type Face = `${'reading' | 'wide'} ${Weight}`

/** Letters of one face that stand together. `actual` is what was written, where no face has the letter. */
export interface Run {
  readonly text: string
  readonly face: Face
  readonly actual?: string
}

const files: Readonly<Record<Face, string>> = {
  'reading regular': 'AtkinsonHyperlegibleNext-Regular.ttf',
  'reading bold': 'AtkinsonHyperlegibleNext-Bold.ttf',
  'wide regular': 'DejaVuSans.ttf',
  'wide bold': 'DejaVuSans-Bold.ttf',
}

const pathOf = (face: Face): string => join(assetsFolder(), 'fonts', files[face])

/** Where the first face of a document is found, for pdfkit wants one before anything else. */
export const firstFace = (): string => pathOf('reading regular')

/** Shown for a letter that no face has; the letter itself stays in the text that is copied or read aloud. */
const replacement = '\u25a1'
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

/** Controls, zero-width marks of direction and half surrogates have no picture and would only do harm. */
export const printable = (text: string): string =>
  text.toWellFormed().normalize('NFC').replaceAll(/\r\n?/g, '\n').replaceAll('\t', '  ').replaceAll(/[\p{Cc}\p{Co}\p{Cn}\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/gu, (sign) => (sign === '\n' ? '\n' : ''))

/** The faces of one document: which letters each has, and how wide they run. */
export class Faces {
  readonly #has = new Map<Face, (codePoint: number) => boolean>()
  readonly #widths = new Map<string, number>()

  readonly #paths = new Map<Face, string>()

  constructor(readonly pdf: PDFKit.PDFDocument) {}

  /** By its path: a face registered under a second name pdfkit 0.20 would open anew at every change. */
  #choose(face: Face): PDFKit.PDFDocument {
    const path = this.#paths.get(face) ?? pathOf(face)
    this.#paths.set(face, path)
    return this.pdf.font(path)
  }

  #carries(face: Face, text: string): boolean {
    let has = this.#has.get(face)
    if (has === undefined) {
      const { font } = this.#choose(face)._font
      const known = new Map<number, boolean>()
      has = (codePoint) => known.get(codePoint) ?? (known.set(codePoint, font.hasGlyphForCodePoint(codePoint)), known.get(codePoint) ?? false)
      this.#has.set(face, has)
    }
    for (const letter of text) if (!has(letter.codePointAt(0) ?? 0)) return false
    return true
  }

  /** One word in as few faces as can be: a word with one Greek letter is set whole in the face that has it. */
  runsOf(word: string, weight: Weight): Run[] {
    const faces: Face[] = [`reading ${weight}`, `wide ${weight}`]
    const whole = faces.find((face) => this.#carries(face, word))
    if (whole !== undefined) return [{ text: word, face: whole }]
    const runs: Run[] = []
    for (const { segment } of graphemes.segment(word)) {
      const face = faces.find((each) => this.#carries(each, segment))
      const last = runs.at(-1)
      if (face === undefined) runs.push({ text: replacement, face: `wide ${weight}`, actual: segment })
      else if (last?.face === face && last.actual === undefined) runs[runs.length - 1] = { text: last.text + segment, face }
      else runs.push({ text: segment, face })
    }
    return runs
  }

  widthOf({ text, face }: Run, { size, tabular }: Style): number {
    const key = `${face} ${tabular ?? ''} ${text}`
    const known = this.#widths.get(key)
    if (known !== undefined) return known * size
    const width = this.#choose(face).fontSize(100).widthOfString(text, tabular ? { features: ['tnum'] } : {}) / 100
    this.#widths.set(key, width)
    return width * size
  }

  /** Sets one run with its left end and baseline at x, y; answers its width. */
  draw(run: Run, style: Style, x: number, baseline: number): number {
    const { pdf } = this
    if (run.actual !== undefined) pdf.markContent('Span', { actual: run.actual })
    this.#choose(run.face).fontSize(style.size).fillColor(style.colour)
    pdf.text(run.text, x, baseline, { lineBreak: false, baseline: 'alphabetic', ...(style.tabular && { features: ['tnum'] }) })
    if (run.actual !== undefined) pdf.endMarkedContent()
    return this.widthOf(run, style)
  }
}
