import type { CheckLine, ReportDocument, StationPart } from '../../shared-logic/report/document'
import { verdicts } from '../../shared-logic/survey/verdict'
import type { Bookmark } from './bookmarks'
import { beginPart, beginSection } from './headings'
import type { Sheet } from './page'
import { styles } from './styles'
import { Table, type TableRow } from './tables'

const numbers = (style: (typeof styles)['figures' | 'figuresStrong'], part: Pick<StationPart, 'tallies'>): TableRow['cells'] =>
  verdicts.map((verdict) => ({ text: String(part.tallies[verdict]), style }))

/** Counts by verdict for every station, and their sums. */
export const drawTallyTable = (sheet: Sheet, document: ReportDocument): void => {
  const { labels, verdictWords, stations, tallies } = document
  new Table(sheet, [
    { heading: labels.station, share: 0.27 },
    { heading: labels.verdict, share: 0.19 },
    ...verdicts.map((verdict) => ({ heading: verdictWords[verdict], share: 0.108, align: 'right' as const })),
  ]).draw([
    ...stations.map((part) => ({ cells: [{ text: part.name }, { text: part.word, verdict: part.verdict }, ...numbers(styles.figures, part)] })),
    { cells: [{ text: labels.whole, style: styles.smallStrong }, { text: document.verdict.word, verdict: document.verdict.verdict, style: styles.smallStrong }, ...numbers(styles.figuresStrong, { tallies })] },
  ])
}

const remark = (line: CheckLine, { labels }: ReportDocument): string => {
  const finding = line.finding === undefined ? '' : `${labels.finding} ${line.finding}.`
  const photographs = line.photographs.length === 0 ? '' : `${line.photographs.length === 1 ? labels.photograph : labels.photographs} ${line.photographs.join(', ')}.`
  const note = line.note === undefined ? '' : `${labels.note}: ${line.note}`
  return [[line.remark, finding, photographs].filter((part) => part !== '').join(' '), note].filter((part) => part !== '').join('\n')
}

/** The same check with the same outcome at several places is one line of the table that names them all. */
const together = (lines: readonly CheckLine[], document: ReportDocument): { line: CheckLine; places: string[]; text: string }[] => {
  const rows: { line: CheckLine; places: string[]; text: string }[] = []
  for (const line of lines) {
    const text = remark(line, document)
    const same = rows.find((row) => row.line.checkId === line.checkId && row.line.verdict === line.verdict && row.text === text)
    if (same === undefined) rows.push({ line, places: [line.place], text })
    else same.places.push(line.place)
  }
  return rows
}

/** Every check of every station with its verdict. */
export const drawStations = (sheet: Sheet, document: ReportDocument, bookmarks: Bookmark): void => {
  const { labels } = document
  const part = beginPart(sheet, bookmarks, labels.stations, 120)
  drawTallyTable(sheet, document)
  for (const station of document.stations) {
    const table = new Table(sheet, [
      { heading: labels.check, share: 0.23 },
      { heading: labels.place, share: 0.2 },
      { heading: labels.verdict, share: 0.16 },
      { heading: labels.recorded, share: 0.41 },
    ])
    const rows = together(station.checks, document).map(({ line, places, text }) => ({
      cells: [{ text: line.title }, { text: places.join(', ') }, { text: line.word, verdict: line.verdict }, { text }],
    }))
    beginSection(sheet, station.name, table.beginning(rows))
    part.add(station.name)
    table.draw(rows)
  }
}

/** What was asked and not seen, with the reason. */
export const drawNotSeen = (sheet: Sheet, { labels, notSeen }: ReportDocument, bookmarks: Bookmark): void => {
  beginPart(sheet, bookmarks, labels.notSeen)
  if (notSeen.length === 0) return sheet.paragraph(labels.nothingUnseen, styles.body, sheet.whole)
  new Table(sheet, [
    { heading: labels.station, share: 0.2 },
    { heading: labels.check, share: 0.24 },
    { heading: labels.place, share: 0.17 },
    { heading: labels.reason, share: 0.39 },
  ]).draw(notSeen.map(({ stationName, title, place, reason }) => ({ cells: [{ text: stationName }, { text: title }, { text: place }, { text: reason }] })))
}
