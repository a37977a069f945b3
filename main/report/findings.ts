import type { ReportDocument, ReportFinding } from '../../shared-logic/report/document'
import type { Bookmark } from './bookmarks'
import { beginPart } from './headings'
import type { Sheet } from './page'
import { drawPhotographs } from './photographs'
import type { Pictures } from './pictures'
import { numberedMark, wordedVerdict } from './shapes'
import { styles } from './styles'

const titleOf = ({ title, place }: ReportFinding): string => (place === '' ? title : `${title}, ${place}`)

/** Number and title, with verdict and by-when in the column before them. */
const drawHead = (sheet: Sheet, finding: ReportFinding): void => {
  const { labels, text } = sheet
  const top = sheet.y
  const left = { x: text.x + 28, width: text.width - 28 }
  sheet.tags.within('H3', {}, () =>
    sheet.tags.leaf(() => {
      numberedMark(sheet, finding.number, finding.verdict, text.x + 9.5, top + 9)
      sheet.setLines(sheet.setter.lines(titleOf(finding), styles.heading, left.width), styles.heading, left, top)
    }),
  )
  wordedVerdict(sheet, finding.verdict, finding.word, labels.x, top + 2, labels.width)
  const by = sheet.place(`${finding.byWords}.`, styles.label, labels, top + 18)
  const titleHeight = sheet.heightOf(titleOf(finding), styles.heading, left.width)
  const station = sheet.place(finding.stationName, styles.label, left, top + titleHeight)
  sheet.y = top + Math.max(titleHeight + station, 18 + by) + 6
}

const rowsOf = (finding: ReportFinding, labels: ReportDocument['labels']): [label: string, text: string, strong?: true][] => {
  const { overruled } = finding
  const rows: [string, string | undefined, true?][] = [
    [labels.found, finding.because],
    [labels.recorded, finding.readings.map(({ label, value }) => `${label}: ${value}`).join('\n') || undefined],
    [labels.instrument, finding.instrument],
    [labels.judged, overruled === undefined ? undefined : (overruled.judged?.word ?? '–')],
    [labels.overruled, overruled === undefined ? undefined : `${finding.word}. ${overruled.reason}`],
    [labels.remedy, finding.remedy, true],
    [labels.consequence, finding.consequence],
    [labels.criterion, finding.criterion],
    [finding.sources.length > 1 ? labels.sources : labels.source, finding.sources.join('\n') || undefined],
    [labels.note, finding.note],
  ]
  return rows.flatMap(([label, text, strong]): [string, string, true?][] => (text === undefined ? [] : [strong === undefined ? [label, text] : [label, text, strong]]))
}

/** Enough for the head and the first lines below it, so that no head stands alone at a page's foot. */
const headRoom = 112
const rowGap = 3

/** The text of a finding stands on one page unless it is longer than half of one. */
const roomFor = (sheet: Sheet, finding: ReportFinding, labels: ReportDocument['labels']): number => {
  const text = rowsOf(finding, labels).reduce((sum, [, row]) => sum + sheet.heightOf(row, styles.body, sheet.text.width) + rowGap, 0)
  return text + 56 > (sheet.bottom - sheet.top) / 2 ? headRoom : text + 56
}

export const drawFinding = (sheet: Sheet, finding: ReportFinding, document: ReportDocument, pictures: Pictures): void => {
  const { labels } = document
  const soft = new Set([labels.criterion, labels.source, labels.sources, labels.instrument])
  drawHead(sheet, finding)
  for (const [label, text, strong] of rowsOf(finding, labels)) {
    sheet.labelled(label, text, strong === true ? styles.strong : soft.has(label) ? styles.small : styles.body)
    sheet.y += rowGap
  }
  const photographs = document.photographs.filter(({ number }) => finding.photographs.includes(number))
  drawPhotographs(sheet, photographs, pictures, labels)
}

/** Every finding, gravest first, with all it rests on. Pictures are fetched finding by finding. */
export const drawFindings = async (sheet: Sheet, document: ReportDocument, bookmarks: Bookmark, picturesOf: (numbers: readonly number[]) => Promise<Pictures>): Promise<void> => {
  const part = beginPart(sheet, bookmarks, document.labels.findings, headRoom)
  if (document.findings.length === 0) sheet.paragraph(document.labels.noFindings, styles.body, sheet.whole)
  for (const finding of document.findings) {
    const pictures = await picturesOf(finding.photographs)
    if (finding.number > 1) sheet.skip(14)
    sheet.need(roomFor(sheet, finding, document.labels))
    sheet.rule()
    sheet.y += 10
    part.add(`${finding.number} ${titleOf(finding)}`)
    drawFinding(sheet, finding, document, pictures)
  }
}
