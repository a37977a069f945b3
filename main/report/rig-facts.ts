import type { Fact, ReportDocument } from '../../shared-logic/report/document'
import type { Bookmark } from './bookmarks'
import { beginPart, beginSection } from './headings'
import type { Sheet } from './page'
import { styles } from './styles'

const gutter = 16
const labelShare = 0.46

/** A fact in half the page's width; answers its height. */
const drawFact = (sheet: Sheet, fact: Fact, x: number, width: number): number => {
  const label = { x, width: width * labelShare - 8 }
  const value = { x: x + width * labelShare, width: width * (1 - labelShare) }
  const style = fact.known ? styles.small : styles.label
  const height = sheet.place(fact.label, styles.label, label, sheet.y)
  return Math.max(height, sheet.place(fact.value, style, value, sheet.y))
}

const factHeight = (sheet: Sheet, { label, value }: Fact, width: number): number =>
  Math.max(sheet.heightOf(label, styles.label, width * labelShare - 8), sheet.heightOf(value, styles.label, width * (1 - labelShare)))

const drawFacts = (sheet: Sheet, facts: readonly Fact[]): void => {
  const width = (sheet.whole.width - gutter) / 2
  for (let from = 0; from < facts.length; from += 2) {
    const row = facts.slice(from, from + 2)
    sheet.need(Math.max(...row.map((fact) => factHeight(sheet, fact, width))) + 6)
    sheet.rule()
    sheet.y += 3
    sheet.y += Math.max(...row.map((fact, index) => drawFact(sheet, fact, sheet.whole.x + index * (width + gutter), width))) + 3
  }
  sheet.rule()
}

/** What the rig is: papers, plate and eye; what nobody knows says so. */
export const drawRig = (sheet: Sheet, { labels, rig, remarks }: ReportDocument, bookmarks: Bookmark): void => {
  beginPart(sheet, bookmarks, labels.rig)
  for (const { heading, facts } of rig) {
    beginSection(sheet, heading)
    drawFacts(sheet, facts)
  }
  if (remarks === undefined) return
  beginSection(sheet, labels.remarks)
  sheet.paragraph(remarks, styles.body, sheet.whole)
}
