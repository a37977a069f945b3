import { readFile } from 'node:fs/promises'
import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** Opens a written report with a PDF reader that is not the writer. */
export const readPdf = async (path: string): Promise<PDFDocumentProxy> => getDocument({ data: new Uint8Array(await readFile(path)), useSystemFonts: false, verbosity: 0 }).promise

/** The words of each page, in the order of the content. */
export const pageTexts = async (pdf: PDFDocumentProxy): Promise<string[]> => {
  const texts: string[] = []
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const { items } = await (await pdf.getPage(number)).getTextContent()
    texts.push(items.map((item) => ('str' in item ? item.str : '')).join(' ').replaceAll(/\s+/g, ' '))
  }
  return texts
}
