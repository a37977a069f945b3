/** A bookmark with those below it. */
export interface Bookmark {
  add(title: string): Bookmark
}

/** Bookmarks of a document, each leading to where the pen stands when it is added. */
export const bookmarksOf = (pdf: PDFKit.PDFDocument, here: () => number): Bookmark => {
  const below = (item: PDFKit.PDFOutline): Bookmark => ({
    add: (title) => below(item.addItem(title, { expanded: true, top: Math.max(here() - 8, 0), left: pdf.page.width })),
  })
  // Without `expanded` the root has no Count and readers do not open the tree.
  pdf.outline.options.expanded = true
  return below(pdf.outline)
}
