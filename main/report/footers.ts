import type { ReportDocument } from '../../shared-logic/report/document'
import type { Sheet } from './page'
import { styles } from './styles'

/** Number, revision and rig at the left, page x of y at the right, on every page; drawn last, when y is known. */
export const drawFooters = (sheet: Sheet, { reference, rigName, labels }: ReportDocument): void => {
  const { pdf, whole } = sheet
  const { start, count } = pdf.bufferedPageRange()
  const top = sheet.bottom + 20
  const [name] = sheet.setter.lines(`${reference}. ${rigName}`, styles.label, whole.width - 100)
  for (let index = 0; index < count; index += 1) {
    pdf.switchToPage(start + index)
    sheet.rule(whole, sheet.bottom + 14)
    const page = sheet.setter.lines(`${labels.page} ${index + 1} ${labels.of} ${count}`, { ...styles.figures, colour: styles.label.colour }, 100)
    sheet.tags.decoration(() => {
      if (name !== undefined) sheet.setLines([name], styles.label, { x: whole.x, width: whole.width - 100 }, top)
      sheet.setLines(page, { ...styles.figures, colour: styles.label.colour }, { x: whole.x + whole.width - 100, width: 100 }, top, 'right')
    }, 'Pagination')
  }
}
