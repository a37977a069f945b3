import type { PhotographLine, ReportDocument, ReportFinding } from '../../shared-logic/report/document'
import type { Bookmark } from './bookmarks'
import { beginPart } from './headings'
import type { Sheet } from './page'
import { drawBeside, drawPhotographs, photographRoom, setBeside, type Beside } from './photographs'
import type { Pictures } from './pictures'
import { numberedMark, wordedVerdict } from './shapes'
import { styles, type Style } from './styles'

/** Number and title, with verdict and by-when in the column before them. */
const drawHead = (sheet: Sheet, finding: ReportFinding): void => {
  const { labels, text } = sheet
  const top = sheet.y
  const left = { x: text.x + 28, width: text.width - 28 }
  sheet.tags.within('H3', {}, () =>
    sheet.tags.leaf(() => {
      numberedMark(sheet, finding.number, finding.verdict, text.x + 9.5, top + 9)
      sheet.setLines(sheet.setter.lines(finding.name, styles.heading, left.width), styles.heading, left, top)
    }),
  )
  wordedVerdict(sheet, finding.verdict, finding.word, labels.x, top + 2, labels.width)
  const by = sheet.place(`${finding.byWords}.`, styles.label, labels, top + 18)
  const titleHeight = sheet.heightOf(finding.name, styles.heading, left.width)
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
    [labels.photograph, finding.withoutPhotograph ?? finding.photographsKept, styles.small],
  ]
  return rows.flatMap(([label, text, style = styles.body]): Row[] => (text === undefined ? [] : [{ label, text, style }]))
}

/** Enough for the head and the first lines below it, so that no head stands alone at a page's foot. */
const headRoom = 112
/** What number, title and station take. */
const head = 52
const rowGap = 3

/** So much of a page, as a share, may stay white at its foot before a finding's text is broken or its photographs go over the page. */
const whiteAllowed = 0.14

const rowHeight = (sheet: Sheet, { label, text, style }: Row, width: number): number =>
  Math.max(sheet.heightOf(text, style, width), sheet.heightOf(label, styles.label, sheet.labels.width)) + rowGap

/** Rows that begin beside the photograph are narrow, those below it as wide as the column. */
const textHeight = (sheet: Sheet, rows: readonly Row[], beside: Beside | undefined): number => {
  let y = 0
  for (const row of rows) y += rowHeight(sheet, row, beside !== undefined && y < beside.height ? beside.text.width : sheet.text.width)
  return Math.max(y, beside?.height ?? 0)
}

/** Turns the page where the finding is to begin on a new one; answers whether its one photograph stands beside the text. */
const place = (sheet: Sheet, rows: readonly Row[], beside: Beside | undefined, photographCount: number): boolean => {
  const page = sheet.bottom - sheet.top
  const own = head + textHeight(sheet, rows, undefined)
  const whole = beside === undefined ? own + (photographCount > 0 ? photographRoom : 0) : head + textHeight(sheet, rows, beside)
  const least = Math.min(own, headRoom)
  if (whole > sheet.room && (sheet.room <= page * whiteAllowed || sheet.room < least)) sheet.need(page)
  return beside !== undefined && whole <= sheet.room
}

const drawRows = (sheet: Sheet, rows: readonly Row[], beside: Beside | undefined): void => {
  const top = sheet.y
  rows.forEach((row, index) => {
    const column = beside !== undefined && sheet.y - top < beside.height ? beside.text : sheet.text
    const last = rows[index + 1]
    // The last row does not go over the page alone.
    if (last !== undefined && index === rows.length - 2) sheet.need(Math.min(rowHeight(sheet, row, column.width) + rowHeight(sheet, last, column.width), headRoom))
    sheet.labelled(row.label, row.text, row.style, column)
    sheet.y += rowGap
  })
}

const drawFinding = (sheet: Sheet, finding: ReportFinding, { labels }: ReportDocument, photographs: readonly PhotographLine[], pictures: Pictures, bookmark: () => void): void => {
  const rows = rowsOf(finding, labels)
  const [only] = photographs
  const set = only !== undefined && photographs.length === 1 ? setBeside(sheet, only, pictures, labels) : undefined
  const beside = place(sheet, rows, set, photographs.length) ? set : undefined
  sheet.rule()
  sheet.y += 10
  bookmark()
  drawHead(sheet, finding)
  const top = sheet.y
  drawRows(sheet, rows, beside)
  if (beside === undefined) return drawPhotographs(sheet, photographs, pictures, labels, `${labels.finding} ${finding.number}, ${finding.name}, ${labels.continued}`)
  drawBeside(sheet, beside, labels, top)
  sheet.y = Math.max(sheet.y, top + beside.height)
}

/** What 'before the next trip' and the others mean, before the findings that use them. */
const drawByWhenKey = (sheet: Sheet, { byWhenKey, labels, photographsWanted }: ReportDocument): void => {
  if (byWhenKey.length > 0) {
    sheet.y += sheet.place(labels.byWhenKey, styles.strong, sheet.whole, sheet.y, { tag: 'H3' }) + 4
    for (const { word, meaning } of byWhenKey) {
      sheet.labelled(word, meaning, styles.small)
      sheet.y += rowGap
    }
    sheet.y += 4
  }
  if (photographsWanted === undefined) return
  sheet.paragraph(photographsWanted, styles.small, sheet.whole)
  sheet.y += 8
}

/** Every finding, gravest first, with all it rests on. Pictures are fetched finding by finding. */
export const drawFindings = async (sheet: Sheet, document: ReportDocument, bookmarks: Bookmark, picturesOf: (numbers: readonly number[]) => Promise<Pictures>): Promise<void> => {
  const part = beginPart(sheet, bookmarks, document.labels.findings, headRoom)
  if (document.findings.length === 0) sheet.paragraph(document.verdict.verdict === 'not seen' ? document.labels.noneSeen : document.labels.noFindings, styles.body, sheet.whole)
  drawByWhenKey(sheet, document)
  for (const finding of document.findings) {
    const pictures = await picturesOf(finding.photographs)
    if (finding.number > 1) sheet.skip(14)
    drawFinding(sheet, finding, document, document.photographs.filter(({ number }) => finding.photographs.includes(number)), pictures, () => part.add(`${finding.number} ${finding.name}`))
  }
}
