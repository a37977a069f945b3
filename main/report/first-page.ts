import type { Fact, ReportDocument } from '../../shared-logic/report/document'
import { verdicts } from '../../shared-logic/survey/verdict'
import { hairline } from './colours'
import type { Column, Sheet } from './page'
import { drawPlan } from './plan'
import { markRadius, numberedMark, verdictShape } from './shapes'
import { styles } from './styles'

const drawHead = (sheet: Sheet, { labels, reference, rigName, rigLines, issuedWords }: ReportDocument): void => {
  const { whole } = sheet
  sheet.place(labels.report, styles.label, { x: whole.x, width: 120 }, sheet.y)
  sheet.place(`${reference}; ${issuedWords}`, styles.label, { x: whole.x + 120, width: whole.width - 120 }, sheet.y, { align: 'right' })
  sheet.y += 20
  sheet.y += sheet.place(rigName, styles.title, whole, sheet.y, { tag: 'H1' })
  for (const line of rigLines) sheet.y += sheet.place(line, styles.body, whole, sheet.y)
  sheet.y += 10
}

const factHeight = (sheet: Sheet, { label, value }: Fact, width: number): number =>
  sheet.heightOf(label, styles.label, width) + sheet.heightOf(value, styles.body, width)

/** When, where, what for; by whom, for whom, by which rules: three in a row. */
const drawFacts = (sheet: Sheet, facts: readonly Fact[]): void => {
  const perRow = 3
  const gutter = 16
  const width = (sheet.whole.width - gutter * (perRow - 1)) / perRow
  for (let from = 0; from < facts.length; from += perRow) {
    const row = facts.slice(from, from + perRow)
    row.forEach((fact, index) => {
      const column = { x: sheet.whole.x + index * (width + gutter), width }
      const label = sheet.place(fact.label, styles.label, column, sheet.y)
      sheet.place(fact.value, fact.known ? styles.body : { ...styles.body, colour: styles.label.colour }, column, sheet.y + label)
    })
    sheet.y += Math.max(...row.map((fact) => factHeight(sheet, fact, width))) + 8
  }
}

/** With it, where originals were not as they came in, that they were not. */
const drawVerdict = (sheet: Sheet, { verdict, harmInShort }: ReportDocument): void => {
  const { whole, pdf } = sheet
  const text = { x: whole.x + 32, width: whole.width - 32 }
  sheet.rule()
  sheet.y += 12
  sheet.tags.decoration(() => verdictShape(pdf, verdict.verdict, whole.x + 11, sheet.y + styles.title.leading / 2, 9.5))
  sheet.y += sheet.place(verdict.sentence, styles.title, text, sheet.y, { tag: 'H2' })
  sheet.y += sheet.place(verdict.detail, styles.label, text, sheet.y)
  if (harmInShort !== undefined) sheet.y += sheet.place(harmInShort, styles.strong, text, sheet.y + 2) + 2
  sheet.y += 8
}

/** The five counts side by side; what was seen first, then what was not. */
const drawTallies = (sheet: Sheet, { tallies, verdictWords }: ReportDocument): void => {
  const { whole, pdf } = sheet
  const width = whole.width / verdicts.length
  verdicts.forEach((verdict, index) => {
    const x = whole.x + index * width
    const left = index === 0 ? x : x + 12
    if (index > 0)
      sheet.tags.decoration(() => pdf.lineWidth(0.5).strokeColor(hairline).moveTo(x, sheet.y + 2).lineTo(x, sheet.y + 42).stroke())
    sheet.tags.within('P', {}, () =>
      sheet.tags.leaf(() => {
        sheet.setLines(sheet.setter.lines(String(tallies[verdict]), styles.count, width), styles.count, { x: left, width }, sheet.y)
        sheet.setLines(sheet.setter.lines(verdictWords[verdict], styles.small, width), styles.small, { x: left + 14, width }, sheet.y + 30)
      }),
    )
    sheet.tags.decoration(() => verdictShape(pdf, verdict, left + 4.5, sheet.y + 36, 4))
  })
  sheet.y += 52
}

const drawThing = (sheet: Sheet, thing: ReportDocument['threeThings'][number], column: Column): void => {
  const perRow = 4
  const text = { x: column.x + 28, width: column.width - 28 }
  const [first, ...more] = thing.findings
  if (first !== undefined) sheet.tags.within('Lbl', {}, () => sheet.tags.leaf(() => numberedMark(sheet, first, thing.verdict, column.x + markRadius + 1, sheet.y + 7)))
  sheet.tags.within('LBody', {}, () => {
    sheet.y += sheet.place(thing.where, styles.strong, text, sheet.y)
    sheet.y += sheet.place(thing.what, styles.body, text, sheet.y)
    sheet.y += sheet.place(`${thing.byWords}.`, styles.label, text, sheet.y)
    more.slice(0, perRow * 2).forEach((number, index) => {
      const x = text.x + markRadius + 1 + (index % perRow) * (markRadius * 2 + 4)
      sheet.tags.leaf(() => numberedMark(sheet, number, thing.verdict, x, sheet.y + 10 + Math.floor(index / perRow) * 21))
    })
    sheet.y += Math.ceil(Math.min(more.length, perRow * 2) / perRow) * 21 + 10
  })
}

const furtherGap = 5

/** A fail in short: its number, where, by when. */
const drawFurther = (sheet: Sheet, { findings, verdict, where, byWords }: ReportDocument['furtherFails'][number], column: Column): void => {
  const [first, ...more] = findings
  const text = furtherColumn(column)
  if (first !== undefined) sheet.tags.within('Lbl', {}, () => sheet.tags.leaf(() => numberedMark(sheet, first, verdict, column.x + markRadius + 1, sheet.y + 7)))
  sheet.tags.within('LBody', {}, () => {
    const top = sheet.y
    sheet.y += sheet.place(more.length > 0 ? `${where} (${findings.join(', ')})` : where, styles.small, text, sheet.y)
    sheet.y += sheet.place(`${byWords}.`, styles.label, text, sheet.y)
    sheet.y = Math.max(sheet.y, top + markRadius * 2) + furtherGap
  })
}

const furtherColumn = ({ x, width }: Column): Column => ({ x: x + 28, width: width - 28 })

const furtherHeight = (sheet: Sheet, { findings, where, byWords }: ReportDocument['furtherFails'][number], column: Column): number =>
  sheet.heightOf(findings.length > 1 ? `${where} (${findings.join(', ')})` : where, styles.small, furtherColumn(column).width) + sheet.heightOf(`${byWords}.`, styles.label, furtherColumn(column).width) + furtherGap

const sayMore = ({ labels }: ReportDocument, left: ReportDocument['furtherFails']): string =>
  left.length === 0 ? '' : `${labels.furtherFailsMore} ${left.flatMap(({ findings }) => findings).join(', ')}.`

/** How many of the further fails find room, with the line that numbers the others. */
const countThatFit = (sheet: Sheet, document: ReportDocument, column: Column): number => {
  const { furtherFails } = document
  const needed = (count: number): number => {
    const more = sayMore(document, furtherFails.slice(count))
    return furtherFails.slice(0, count).reduce((sum, each) => sum + furtherHeight(sheet, each, column), more === '' ? 0 : sheet.heightOf(more, styles.label, column.width))
  }
  let count = furtherFails.length
  while (count > 0 && needed(count) > sheet.room) count -= 1
  return count
}

/** The fails beyond the three things: as many as find room, the others by their numbers. */
const drawFurtherFails = (sheet: Sheet, document: ReportDocument, column: Column): void => {
  const { furtherFails, labels } = document
  if (furtherFails.length === 0) return
  sheet.y += 4
  sheet.y += sheet.place(labels.furtherFails, styles.strong, column, sheet.y, { tag: 'H3' }) + 4
  const count = countThatFit(sheet, document, column)
  if (count > 0) sheet.tags.within('L', {}, () => furtherFails.slice(0, count).forEach((further) => sheet.tags.within('LI', {}, () => drawFurther(sheet, further, column))))
  if (count < furtherFails.length) sheet.place(sayMore(document, furtherFails.slice(count)), styles.label, column, sheet.y)
}

/** Page one: what was surveyed, when, by whom, the verdict, the tallies, the three things to do first, every other fail in short, and where they are. */
export const drawFirstPage = (sheet: Sheet, document: ReportDocument): void => {
  const { labels, threeThings } = document
  drawHead(sheet, document)
  drawFacts(sheet, document.survey)
  drawVerdict(sheet, document)
  drawTallies(sheet, document)
  sheet.rule()
  sheet.y += 12
  const top = sheet.y
  const { x, width } = sheet.whole
  const left = { x, width: width * 0.5 - 16 }
  const right = { x: x + width * 0.5, width: width * 0.5 }
  sheet.y += sheet.place(labels.threeThings, styles.heading, left, sheet.y, { tag: 'H2' }) + 4
  if (threeThings.length === 0) sheet.place(document.verdict.verdict === 'not seen' ? labels.noneSeen : labels.noThings, styles.body, left, sheet.y)
  else sheet.tags.within('L', {}, () => threeThings.forEach((thing) => sheet.tags.within('LI', {}, () => drawThing(sheet, thing, left))))
  drawFurtherFails(sheet, document, left)
  drawPlanColumn(sheet, document, right, top)
  sheet.y = sheet.bottom
}

const drawPlanColumn = (sheet: Sheet, document: ReportDocument, column: Column, top: number): void => {
  const { plan, labels } = document
  const heading = sheet.place(labels.plan, styles.heading, column, top, { tag: 'H2' }) + 4
  const captionHeight = sheet.heightOf(plan.caption, styles.label, column.width)
  drawPlan(sheet, document, { x: column.x, y: top + heading, width: column.width, height: sheet.bottom - top - heading - captionHeight - 6 })
  sheet.place(plan.caption, styles.label, column, sheet.bottom - captionHeight)
}
