import type { PhotographLine } from '../../shared-logic/report/document'
import { drawDrawing, type Frame } from './drawing'
import type { Sheet } from './page'
import type { Picture } from './pictures'

type Laid = Pick<PhotographLine, 'quarterTurns' | 'marks'>

/** Width and height of a picture as it was turned. */
export const turnedPicture = ({ widthPx, heightPx }: Picture, { quarterTurns }: Laid): { readonly widthPx: number; readonly heightPx: number } =>
  quarterTurns % 2 === 1 ? { widthPx: heightPx, heightPx: widthPx } : { widthPx, heightPx }

/** Where the upper left corner of the picture comes to lie when it is turned clockwise, in shares of its frame. */
const corners = [[0, 0], [1, 0], [1, 1], [0, 1]] as const

const drawTurned = ({ pdf }: Sheet, picture: Picture, quarterTurns: number, { x, y, width, height }: Frame): void => {
  const [right, down] = corners[quarterTurns] ?? corners[0]
  const size = quarterTurns % 2 === 1 ? { width: height, height: width } : { width, height }
  pdf.save().translate(x + right * width, y + down * height).rotate(quarterTurns * 90)
  pdf.image(picture.image, 0, 0, size)
  pdf.restore()
}

/** A photograph as it was turned, its marks as lines and letters over it, inside the tag now open. The picture itself is embedded untouched. */
export const drawMarkedPicture = (sheet: Sheet, picture: Picture, { quarterTurns, marks }: Laid, frame: Frame): void => {
  drawTurned(sheet, picture, quarterTurns, frame)
  if (marks === undefined) return
  sheet.pdf.save().rect(frame.x, frame.y, frame.width, frame.height).clip()
  drawDrawing(sheet, marks, frame)
  sheet.pdf.restore()
}
