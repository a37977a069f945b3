import sharp from 'sharp'
import type { CorrosionPart, MeasuredPicture, SpotPart } from '../../shared-logic/report/corrosion-document'
import type { ReportDocument } from '../../shared-logic/report/document'
import { markedCopy } from '../photos/marked-copy'
import { foundOn, outlineRings } from '../photos/outline-rings'
import type { Bookmark } from './bookmarks'
import { drawCurves } from './corrosion-curves'
import { beginPart, beginSection } from './headings'
import type { Sheet } from './page'
import { drawMarkedPicture } from './marks'
import { frame } from './photographs'
import type { Album, Picture } from './pictures'
import { styles } from './styles'
import { drawSumsTable } from './sums/draw-sums'
import { drawSumsFigure } from './sums/figure'
import { drawSumsLines } from './sums/lines'
import { turnedMeasurement } from './turned-measurement'

/** Height of a measured photograph, points; a little smaller where only so much of the page is left. */
const tallest = 250
const least = 150
const gap = 4

/** Outline, scale bar and number burnt into a copy of the preview, as the photograph was turned: bar and number stand upright. */
const marked = async ({ spot, measurement, units, quarterTurns }: MeasuredPicture, preview: Uint8Array): Promise<Uint8Array> => {
  const rings = outlineRings(measurement, await foundOn(preview, measurement))
  if (quarterTurns === 0) return markedCopy(preview, { measurement, rings, number: spot, units })
  const upright = await sharp(preview).rotate(quarterTurns * 90).png({ compressionLevel: 1 }).toBuffer()
  return markedCopy(upright, { ...turnedMeasurement(measurement, rings, quarterTurns), number: spot, units })
}

const sizeOf = ({ widthPx, heightPx }: Picture, width: number, tall: number): { readonly width: number; readonly height: number } => {
  const scale = Math.min(width / widthPx, tall / heightPx)
  return { width: widthPx * scale, height: heightPx * scale }
}

const drawPicture = (sheet: Sheet, { caption, alternative, marks }: MeasuredPicture, picture: Picture | undefined, missing: string): void => {
  if (picture === undefined) return sheet.paragraph(missing, styles.label)
  const { x } = sheet.text
  const below = gap + sheet.heightOf(caption, styles.small, sheet.text.width)
  sheet.need(least + below)
  const { width, height } = sizeOf(picture, sheet.text.width, Math.min(tallest, sheet.room - below))
  const top = sheet.y
  sheet.tags.within('Figure', { alt: alternative, bbox: [x, top, x + width, top + height] }, () =>
    sheet.tags.leaf(() => drawMarkedPicture(sheet, picture, { quarterTurns: 0, marks }, { x, y: top, width, height })),
  )
  frame(sheet, { x, y: top, width, height })
  sheet.y += height + gap
  sheet.y += sheet.place(caption, styles.small, sheet.text, sheet.y, { tag: 'Caption' })
  sheet.y += 8
}

const drawSpot = (sheet: Sheet, spot: SpotPart, picture: Picture | undefined, labels: CorrosionPart['labels'], missing: string): void => {
  beginSection(sheet, spot.heading, 96)
  drawSumsLines(sheet, spot.lines)
  if (spot.cautions.length > 0) sheet.labelled(labels.caution, spot.cautions.join(' '), styles.small)
  if (spot.sources.length > 0) sheet.labelled(labels.sources, spot.sources.join('; '), styles.small)
  sheet.y += 6
  if (spot.curves) drawCurves(sheet, spot.curves)
  sheet.skip(spot.curves && spot.picture ? 12 : 0)
  if (spot.picture) drawPicture(sheet, spot.picture, picture, missing)
}

const drawMethod = (sheet: Sheet, { method, labels }: CorrosionPart): void => {
  method.forEach((paragraph, index) => {
    sheet.y += 4
    if (index === 0) sheet.labelled(labels.method, paragraph, styles.small)
    else sheet.paragraph(paragraph, styles.small)
  })
}

/** The corroded spots: where they are, a table, each in full with the picture it was measured on, and the method. Nothing where the report has none. */
export const drawCorrosion = async (sheet: Sheet, { corrosion, labels }: ReportDocument, bookmarks: Bookmark, album: Album): Promise<void> => {
  if (corrosion === undefined) return
  const part = beginPart(sheet, bookmarks, corrosion.title, 240)
  sheet.paragraph(corrosion.introduction, styles.small, sheet.whole)
  sheet.y += 8
  drawSumsFigure(sheet, corrosion.figure)
  drawSumsTable(sheet, corrosion.table)
  for (const spot of corrosion.spots) {
    const { picture } = spot
    part.add(spot.heading)
    drawSpot(sheet, spot, picture && (await album.openMade(picture.measurement.sha256, (preview) => marked(picture, preview))), corrosion.labels, labels.missingPicture)
  }
  drawMethod(sheet, corrosion)
}
