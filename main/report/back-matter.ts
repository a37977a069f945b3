import type { ReportDocument } from '../../shared-logic/report/document'
import type { Bookmark } from './bookmarks'
import { ink } from './colours'
import { beginPart } from './headings'
import type { Sheet } from './page'
import { styles } from './styles'

/** A list with its numbers in the label column. */
const drawList = (sheet: Sheet, items: readonly { readonly text: string; readonly strong?: boolean }[]): void => {
  sheet.tags.within('L', {}, () =>
    items.forEach(({ text, strong }, index) => {
      const style = strong === true ? styles.strong : styles.body
      sheet.need(Math.min(sheet.heightOf(text, style, sheet.text.width), style.leading * 2))
      sheet.tags.within('LI', {}, () => {
        sheet.place(String(index + 1), { ...styles.figures, size: 10, leading: 14 }, sheet.labels, sheet.y, { tag: 'Lbl', align: 'right' })
        sheet.tags.within('LBody', {}, () => sheet.paragraph(text, style))
      })
      sheet.y += 4
    }),
  )
}

export const drawCautions = (sheet: Sheet, { labels, cautions }: ReportDocument, bookmarks: Bookmark): void => {
  beginPart(sheet, bookmarks, labels.cautions)
  drawList(sheet, cautions)
}

const gutter = 16

/** Two in a row, small: a list to look things up in. */
const drawSources = (sheet: Sheet, sources: readonly string[]): void => {
  const width = (sheet.whole.width - gutter) / 2
  sheet.tags.within('L', {}, () => {
    for (let from = 0; from < sources.length; from += 2) {
      const row = sources.slice(from, from + 2)
      const height = Math.max(...row.map((text) => sheet.heightOf(text, styles.small, width)))
      sheet.need(height + 4)
      row.forEach((text, index) =>
        sheet.tags.within('LI', {}, () => sheet.place(text, styles.small, { x: sheet.whole.x + index * (width + gutter), width }, sheet.y, { tag: 'LBody' })),
      )
      sheet.y += height + 4
    }
  })
}

export const drawMethod = (sheet: Sheet, { labels, method }: ReportDocument, bookmarks: Bookmark): void => {
  beginPart(sheet, bookmarks, labels.method)
  for (const paragraph of method) {
    sheet.paragraph(paragraph)
    sheet.y += 6
  }
}

/** Last of all, behind the signature, so that this never stands alone on a page: a list to look things up in. */
export const drawRules = (sheet: Sheet, { labels, ruleBookMeaning, sources }: ReportDocument, bookmarks: Bookmark): void => {
  beginPart(sheet, bookmarks, labels.rulesUsed)
  sheet.paragraph(ruleBookMeaning)
  sheet.y += 8
  drawSources(sheet, sources)
}

const signatureLine = (sheet: Sheet, label: string, text: string): void => {
  const lines = Math.max(sheet.heightOf(text, styles.body, sheet.text.width), 28)
  sheet.place(label, styles.label, sheet.labels, sheet.y + lines - 12)
  if (text !== '') sheet.place(text, styles.body, sheet.text, sheet.y + lines - sheet.heightOf(text, styles.body, sheet.text.width))
  sheet.y += lines + 2
  sheet.tags.decoration(() => {
    sheet.pdf.lineWidth(0.75).strokeColor(ink).moveTo(sheet.text.x, sheet.y).lineTo(sheet.text.x + sheet.text.width, sheet.y).stroke()
  })
  sheet.y += 10
}

/** The place to sign, never torn over two pages. */
export const drawSignature = (sheet: Sheet, { labels, declaration, surveyor }: ReportDocument, bookmarks: Bookmark): void => {
  const who = [surveyor.name, surveyor.address, surveyor.contact].filter((part) => part.trim() !== '').join('\n')
  const height = sheet.heightOf(who, styles.body, sheet.text.width)
  beginPart(sheet, bookmarks, labels.signature, sheet.heightOf(declaration, styles.body, sheet.text.width) + height + 140)
  sheet.paragraph(declaration)
  sheet.y += 12
  signatureLine(sheet, labels.nameAndAddress, who)
  signatureLine(sheet, labels.signedOn, '')
  sheet.y += 12
  signatureLine(sheet, labels.signed, '')
}
