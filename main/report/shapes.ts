import type { Verdict } from '../../shared-logic/survey/verdict'
import { softInk, verdictColour } from './colours'
import type { Sheet } from './page'
import { styles } from './styles'

/** The shape of a verdict, `r` its half height. Beside it always stands the word. */
export const verdictShape = (pdf: PDFKit.PDFDocument, verdict: Verdict, x: number, y: number, r: number): void => {
  const colour = verdictColour[verdict]
  const weight = Math.max(r * 0.28, 0.9)
  pdf.save().lineWidth(weight).strokeColor(colour).fillColor(colour)
  switch (verdict) {
    case 'pass':
      pdf.circle(x, y, r).fill()
      break
    case 'advisory':
      pdf.polygon([x, y - r], [x - r, y], [x, y + r]).fill()
      pdf.polygon([x, y - r], [x + r, y], [x, y + r], [x - r, y]).stroke()
      break
    case 'fail': {
      const a = r * 0.88
      pdf.rect(x - a, y - a, a * 2, a * 2).stroke()
      pdf.moveTo(x - a, y - a).lineTo(x + a, y + a).moveTo(x + a, y - a).lineTo(x - a, y + a).stroke()
      break
    }
    case 'not seen':
      pdf.dash((Math.PI * r) / 6, { space: (Math.PI * r) / 6 }).circle(x, y, r * 0.9).stroke()
      break
    case 'not applicable':
      pdf.moveTo(x - r, y).lineTo(x + r, y).stroke()
      break
  }
  pdf.restore()
}

/** Half the height of a numbered mark. */
export const markRadius = 8.5

/** A finding's number in the outline of its verdict: square for a fail, diamond for an advisory. Drawn into the tag now open. */
export const numberedMark = (sheet: Sheet, number: number, verdict: Verdict, x: number, y: number): void => {
  const { pdf, setter } = sheet
  const r = markRadius
  pdf.save().lineWidth(1.2).strokeColor(verdictColour[verdict]).fillColor('#ffffff')
  if (verdict === 'fail') pdf.rect(x - r * 0.85, y - r * 0.85, r * 1.7, r * 1.7).fillAndStroke()
  else pdf.polygon([x, y - r * 1.12], [x + r * 1.12, y], [x, y + r * 1.12], [x - r * 1.12, y]).fillAndStroke()
  pdf.restore()
  const style = { ...styles.smallStrong, size: number > 99 ? 6.5 : 8.5 }
  const [line] = setter.lines(String(number), style, 100)
  if (line !== undefined) sheet.setLines([line], style, { x: x - line.width / 2, width: line.width }, y - style.leading / 2)
}

/** Word and shape of a verdict in one line, the word beginning at `x` + 14. Answers nothing; the pen stays. */
export const wordedVerdict = (sheet: Sheet, verdict: Verdict, word: string, x: number, top: number, width: number): void => {
  sheet.tags.decoration(() => verdictShape(sheet.pdf, verdict, x + 5, top + styles.strong.leading / 2, 4.5))
  sheet.place(word, styles.strong, { x: x + 16, width: width - 16 }, top)
}

/** A dot from which a leader runs to its marks. */
export const leaderDot = (pdf: PDFKit.PDFDocument, x: number, y: number): void => {
  pdf.save().fillColor(softInk).circle(x, y, 1.6).fill().restore()
}
