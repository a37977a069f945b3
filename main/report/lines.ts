import { printable, type Faces, type Run } from './type'
import type { Style } from './styles'

/** One set line. `width` in points, without the blank at its end. */
export interface Line {
  readonly runs: readonly Run[]
  readonly width: number
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

/** Words with the blank that follows; a long word may also break after a hyphen or stroke. */
const wordsOf = (text: string): string[] => (text.match(/[^ ]+ */g) ?? []).flatMap((word) => word.split(/(?<=[-–—/\\_])(?=[\p{L}\d])/u))

const join = (runs: readonly Run[]): Run[] => {
  const joined: Run[] = []
  for (const run of runs) {
    const last = joined.at(-1)
    if (last !== undefined && last.face === run.face && last.actual === undefined && run.actual === undefined) joined[joined.length - 1] = { ...last, text: last.text + run.text }
    else joined.push(run)
  }
  return joined
}

const trimmed = (runs: readonly Run[]): Run[] => {
  const last = runs.at(-1)
  if (last === undefined) return []
  return [...runs.slice(0, -1), { ...last, text: last.text.trimEnd() }].filter(({ text }) => text !== '')
}

/** Sets running text into lines no wider than `width`. Line ends in the text are kept; a word wider than the line is broken. */
export class Setter {
  constructor(readonly faces: Faces) {}

  widthOf(text: string, style: Style): number {
    return wordsOf(printable(text)).flatMap((word) => this.faces.runsOf(word, style.weight)).reduce((sum, run) => sum + this.faces.widthOf(run, style), 0)
  }

  lines(text: string, style: Style, width: number): Line[] {
    return printable(text).trim().split('\n').flatMap((paragraph) => this.#paragraph(paragraph, style, width))
  }

  #paragraph(text: string, style: Style, width: number): Line[] {
    const lines: Line[] = []
    let runs: Run[] = []
    let used = 0
    const end = (): void => {
      const set = join(trimmed(runs))
      lines.push({ runs: set, width: set.reduce((sum, run) => sum + this.faces.widthOf(run, style), 0) })
      runs = []
      used = 0
    }
    for (const word of wordsOf(text)) {
      const bare = this.#measure(word.trimEnd(), style)
      if (used > 0 && used + bare > width) end()
      for (const part of bare > width ? this.#broken(word, style, width) : [word]) {
        const partWidth = this.#measure(part, style)
        if (used > 0 && used + this.#measure(part.trimEnd(), style) > width) end()
        runs.push(...this.faces.runsOf(part, style.weight))
        used += partWidth
      }
    }
    end()
    return lines
  }

  #measure(text: string, style: Style): number {
    return this.faces.runsOf(text, style.weight).reduce((sum, run) => sum + this.faces.widthOf(run, style), 0)
  }

  #broken(word: string, style: Style, width: number): string[] {
    const parts: string[] = []
    let part = ''
    let used = 0
    for (const { segment } of graphemes.segment(word)) {
      const own = this.#measure(segment, style)
      if (part !== '' && used + own > width) {
        parts.push(part)
        part = ''
        used = 0
      }
      part += segment
      used += own
    }
    return [...parts, part]
  }
}
