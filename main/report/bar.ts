import { hairline, ink, softInk, verdictColour } from './colours'
import type { Frame } from './drawing'

/** A load against its rating, as shares of the rating: `wanted` is where the reserve begins. */
export interface Bar {
  readonly used: number
  readonly wanted: number
}

/** The rating stands here across the bar's room; what is too much runs past it, cut off at the end. */
const ratingAt = 0.8

const colourOf = ({ used, wanted }: Bar): string => {
  if (used > 1 + 1e-9) return verdictColour.fail
  return used > wanted + 1e-9 ? verdictColour.advisory : verdictColour.pass
}

/** The load as a bar, the rating as a post, the reserve wanted shaded before it. Drawn into the mark now open; the figure stands beside it. */
export const drawBar = (pdf: PDFKit.PDFDocument, bar: Bar, { x, y, width, height }: Frame): void => {
  const post = width * ratingAt
  const long = Math.min(bar.used * post, width)
  pdf.save().lineWidth(0.5)
  pdf.rect(x + bar.wanted * post, y - 1, post * (1 - bar.wanted), height + 2).fill('#e4e8ea')
  pdf.moveTo(x, y + height + 1).lineTo(x + width, y + height + 1).stroke(hairline)
  pdf.rect(x, y, long, height).fillAndStroke(colourOf(bar), softInk)
  pdf.lineWidth(1.4).moveTo(x + post, y - 2).lineTo(x + post, y + height + 2).stroke(ink)
  pdf.restore()
}
