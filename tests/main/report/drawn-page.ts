import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'

type Colour = readonly [red: number, green: number, blue: number]

/** A page as it is seen, px. */
export interface Drawn {
  readonly width: number
  readonly height: number
  readonly at: (x: number, y: number) => Colour
}

/** Px to a point. */
const scale = 3

interface Painted {
  readonly canvas: { readonly width: number; readonly height: number }
  readonly context: CanvasRenderingContext2D
}

/** Paints one page with a PDF reader that is not the writer. */
export const drawnPage = async (pdf: PDFDocumentProxy, number: number): Promise<Drawn> => {
  const page = await pdf.getPage(number)
  const viewport = page.getViewport({ scale })
  const factory = pdf.canvasFactory as { create: (width: number, height: number) => Painted }
  const { canvas, context } = factory.create(Math.round(viewport.width), Math.round(viewport.height))
  await page.render({ canvas: null, canvasContext: context, viewport }).promise
  const { width, height } = canvas
  const { data } = context.getImageData(0, 0, width, height)
  return { width, height, at: (x, y) => [data[(y * width + x) * 4] ?? 0, data[(y * width + x) * 4 + 1] ?? 0, data[(y * width + x) * 4 + 2] ?? 0] }
}

/** Whether two colours differ by no more than this in any part, of 255. */
export const near = (a: Colour, b: Colour, most: number): boolean => a.every((part, index) => Math.abs(part - (b[index] ?? 0)) <= most)
