import type { Drawing, Shape } from '../../shared-logic/drawings/drawing'
import { areaColour, roleColour } from './colours'
import type { Sheet } from './page'
import { styles } from './styles'

export interface Frame {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** How a drawing's own units fall on the page. */
export interface Fitted {
  readonly scale: number
  readonly at: (x: number, y: number) => { x: number; y: number }
  readonly width: number
  readonly height: number
}

/** Default stroke of a drawing, in its own units. */
const weight = 1.5

export const fitDrawing = ({ viewBox: [left, top, width, height] }: Drawing, frame: Frame): Fitted => {
  const scale = Math.min(frame.width / width, frame.height / height)
  const x0 = frame.x + (frame.width - width * scale) / 2
  return { scale, width: width * scale, height: height * scale, at: (x, y) => ({ x: x0 + (x - left) * scale, y: frame.y + (y - top) * scale }) }
}

const paint = (pdf: PDFKit.PDFDocument, { fill, stroke }: Shape): void => {
  if (fill !== undefined && stroke !== undefined) pdf.fillAndStroke(areaColour[fill], roleColour[stroke])
  else if (fill !== undefined) pdf.fill(areaColour[fill])
  else pdf.stroke(roleColour[stroke ?? 'ink'])
}

const drawText = (sheet: Sheet, shape: Extract<Shape, { kind: 'text' }>): void => {
  const style = { ...(shape.bold ? styles.strong : styles.body), size: shape.size, leading: shape.size * 1.3, colour: roleColour[shape.fill ?? 'ink'] }
  const [line] = sheet.setter.lines(shape.text, style, Number.POSITIVE_INFINITY)
  if (line === undefined) return
  const shift = shape.anchor === 'middle' ? line.width / 2 : shape.anchor === 'end' ? line.width : 0
  let x = shape.x - shift
  for (const run of line.runs) x += sheet.setter.faces.draw(run, style, x, shape.y)
}

const drawShape = (sheet: Sheet, shape: Shape): void => {
  const { pdf } = sheet
  if (shape.kind === 'text') return drawText(sheet, shape)
  pdf.lineWidth(shape.weight ?? weight)
  if (shape.dashed) pdf.dash(6, { space: 5 })
  if (shape.kind === 'circle') pdf.circle(shape.x, shape.y, shape.r)
  else pdf.path(shape.d)
  paint(pdf, shape)
  if (shape.dashed) pdf.undash()
}

/** Paints a drawing as vector paths into its frame, inside the tag now open. */
export const drawDrawing = (sheet: Sheet, drawing: Drawing, frame: Frame): Fitted => {
  const fitted = fitDrawing(drawing, frame)
  const [left, top] = drawing.viewBox
  const corner = fitted.at(left, top)
  sheet.pdf.save().translate(corner.x, corner.y).scale(fitted.scale).translate(-left, -top).lineJoin('round').lineCap('round')
  for (const shape of drawing.shapes) drawShape(sheet, shape)
  sheet.pdf.restore()
  return fitted
}
