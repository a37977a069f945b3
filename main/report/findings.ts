import type { ReportDocument, ReportFinding } from '../../shared-logic/report/document'
import type { Bookmark } from './bookmarks'
import { beginPart } from './headings'
import type { Sheet } from './page'
import { drawPhotographs, photographRoom } from './photographs'
import type { Pictures } from './pictures'
import { numberedMark, wordedVerdict } from './shapes'
import { styles, type Style } from './styles'

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

interface Row {
  readonly label: string
  readonly text: string
  readonly style: Style
}

const rowsOf = (finding: ReportFinding, labels: ReportDocument['labels']): Row[] => {
  const { overruled } = finding
  const rows: [label: string, text: string | undefined, style?: Style][] = [
    [labels.found, finding.because],
    [labels.recorded, finding.readings.map(({ label, value }) => `${label}: ${value}`).join('\n') || undefined],
    [labels.instrument, finding.instrument, styles.small],
    [labels.judged, overruled === undefined ? undefined : (overruled.judged?.word ?? '–')],
    [labels.overruled, overruled === undefined ? undefined : `${finding.word}. ${overruled.reason}`],
    [labels.remedy, finding.remedy, styles.strong],
    [labels.consequence, finding.consequence],
    [labels.criterion, finding.criterion, styles.small],
    [finding.sources.length > 1 ? labels.sources : labels.source, finding.sources.join('; ') || undefined, styles.small],
    [labels.note, finding.note],
  ]
  return rows.flatMap(([label, text, style = styles.body]): Row[] => (text === undefined ? [] : [{ label, text, style }]))
}

/** Enough for the head and the first lines below it, so that no head stands alone at a page's foot. */
const headRoom = 112
const rowGap = 3

/**
 * The text of a finding stands on one page unless it is longer than half of one; its first photographs stand there too
 * unless that would leave much of the page before it white.
 */
const roomFor = (sheet: Sheet, finding: ReportFinding, labels: ReportDocument['labels']): number => {
  const text = rowsOf(finding, labels).reduce((sum, row) => sum + sheet.heightOf(row.text, row.style, sheet.text.width) + rowGap, 0)
  const head = 52
  const page = sheet.bottom - sheet.top
  if (text + head > page / 2) return headRoom
  const whole = text + head + (finding.photographs.length > 0 ? photographRoom : 0)
  return whole > sheet.room && sheet.room > page * 0.36 ? text + head : whole
}

export const drawFinding = (sheet: Sheet, finding: ReportFinding, document: ReportDocument, pictures: Pictures): void => {
  const { labels } = document
  drawHead(sheet, finding)
  for (const { label, text, style } of rowsOf(finding, labels)) {
    sheet.labelled(label, text, style)
    sheet.y += rowGap
  }
  const photographs = document.photographs.filter(({ number }) => finding.photographs.includes(number))
  drawPhotographs(sheet, photographs, pictures, labels, `${labels.finding} ${finding.number}, ${titleOf(finding)}, ${labels.continued}`)
}

/** Every finding, gravest first, with all it rests on. Pictures are fetched finding by finding. */
export const drawFindings = async (sheet: Sheet, document: ReportDocument, bookmarks: Bookmark, picturesOf: (numbers: readonly number[]) => Promise<Pictures>): Promise<void> => {
  const part = beginPart(sheet, bookmarks, document.labels.findings, headRoom)
  if (document.findings.length === 0) sheet.paragraph(document.verdict.verdict === 'not seen' ? document.labels.noneSeen : document.labels.noFindings, styles.body, sheet.whole)
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
