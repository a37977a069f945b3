import type { Bookmark } from './bookmarks'
import type { Sheet } from './page'
import { styles } from './styles'

/** Begins a part: a rule, its heading, a bookmark. Turns the page unless `follow` points of the part fit below. */
export const beginPart = (sheet: Sheet, bookmarks: Bookmark, title: string, follow = 72): Bookmark => {
  sheet.skip(28)
  sheet.need(styles.heading.leading + 12 + follow)
  const bookmark = bookmarks.add(title)
  sheet.y += sheet.place(title, styles.heading, sheet.whole, sheet.y, { tag: 'H2' })
  sheet.y += 6
  return bookmark
}

/** A heading within a part, kept with `follow` points of what comes below it. */
export const beginSection = (sheet: Sheet, title: string, follow = 48): void => {
  sheet.skip(16)
  sheet.need(styles.strong.leading + 4 + follow)
  sheet.y += sheet.place(title, styles.strong, sheet.whole, sheet.y, { tag: 'H3' })
  sheet.y += 4
}
