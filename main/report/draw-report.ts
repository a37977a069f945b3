import type { ReportDocument } from '../../shared-logic/report/document'
import { attachData } from './accessible-pdf'
import { drawCautions, drawMethod, drawRules, drawSignature } from './back-matter'
import { bookmarksOf } from './bookmarks'
import { drawCorrosion } from './corrosion'
import { drawFindings } from './findings'
import { drawFirstPage } from './first-page'
import { drawFooters } from './footers'
import { beginPart } from './headings'
import { Sheet } from './page'
import { drawPhotographs, drawRegister } from './photographs'
import { Album } from './pictures'
import { drawRig } from './rig-facts'
import { drawNotSeen, drawStations } from './stations'
import { styles } from './styles'
import { drawSums } from './sums/draw-sums'

/** Which originals were not found as they came in: before the register, which gives the hashes they came in with. */
const drawHarmed = (sheet: Sheet, { originalsHarmed }: ReportDocument): void => {
  if (originalsHarmed === undefined) return
  sheet.paragraph(originalsHarmed, styles.strong, sheet.whole)
  sheet.y += 6
}

/** Names the photographs that could not be printed, for whoever looks for them in the register. */
const drawMissing = (sheet: Sheet, { photographs, labels }: ReportDocument, album: Album): void => {
  const missing = photographs.filter(({ sha256 }) => album.isMissing(sha256)).map(({ number }) => number)
  if (missing.length === 0) return
  sheet.paragraph(`${labels.missingPictures} ${missing.join(', ')}.`, styles.strong, sheet.whole)
  sheet.y += 6
}

const drawBelow = (sheet: Sheet, sentence: string | undefined): void => {
  if (sentence === undefined) return
  sheet.y += 6
  sheet.paragraph(sentence, styles.small, sheet.whole)
}

/** Photographs that stand with no finding, and the register of all. A few are fetched at a time. */
const drawPhotographPart = async (sheet: Sheet, document: ReportDocument, album: Album, bookmarks: ReturnType<typeof bookmarksOf>): Promise<void> => {
  const { labels, photographs, photographsKept, photographRecord, findings } = document
  const shown = new Set(findings.flatMap((finding) => finding.photographs))
  const others = photographs.filter(({ number }) => !shown.has(number))
  if (others.length > 0) {
    beginPart(sheet, bookmarks, labels.otherPhotographs, 240)
    for (let from = 0; from < others.length; from += 2) {
      const row = others.slice(from, from + 2)
      drawPhotographs(sheet, row, await album.open(row), labels)
    }
  }
  beginPart(sheet, bookmarks, labels.register)
  drawHarmed(sheet, document)
  if (photographs.length === 0) sheet.paragraph(photographsKept ?? labels.noPhotographs, styles.body, sheet.whole)
  else {
    drawMissing(sheet, document, album)
    drawRegister(sheet, document)
    drawBelow(sheet, photographsKept)
  }
  drawBelow(sheet, photographRecord?.sentence)
}

/** Draws the whole report into an open PDF and ends it. */
export const drawReport = async (pdf: PDFKit.PDFDocument, document: ReportDocument, pictureOf: (sha256: string) => Promise<Uint8Array>): Promise<void> => {
  const sheet = new Sheet(pdf, document.paper)
  const album = new Album(pdf, pictureOf)
  const bookmarks = bookmarksOf(pdf, () => sheet.y)
  bookmarks.add(document.reference)
  drawFirstPage(sheet, document)
  await drawFindings(sheet, document, bookmarks, (numbers) => album.open(document.photographs.filter(({ number }) => numbers.includes(number))))
  drawRig(sheet, document, bookmarks)
  drawStations(sheet, document, bookmarks)
  drawNotSeen(sheet, document, bookmarks)
  await drawCorrosion(sheet, document, bookmarks, album)
  drawSums(sheet, document, bookmarks)
  await drawPhotographPart(sheet, document, album, bookmarks)
  drawCautions(sheet, document, bookmarks)
  drawMethod(sheet, document, bookmarks)
  drawSignature(sheet, document, bookmarks)
  drawRules(sheet, document, bookmarks)
  drawFooters(sheet, document)
  sheet.tags.end()
  attachData(pdf, document)
  pdf.end()
}
