import type { PhotographLine } from '../../shared-logic/report/document'

/** A photograph ready to be placed; the same picture is embedded once however often it is shown. */
export interface Picture {
  readonly image: PDFKit.Mixins.ImageSrc
  readonly widthPx: number
  readonly heightPx: number
}

/** Opened pictures by hash; absent where a picture could not be read. */
export type Pictures = ReadonlyMap<string, Picture>

/** Fetches pictures as they are needed, a few at a time, so that a hundred of them never stand in memory together. */
export class Album {
  readonly #opened = new Map<string, Picture | undefined>()

  constructor(readonly pdf: PDFKit.PDFDocument, readonly pictureOf: (sha256: string) => Promise<Uint8Array>) {}

  async open(photographs: readonly PhotographLine[]): Promise<Pictures> {
    const found = new Map<string, Picture>()
    for (const { sha256 } of photographs) {
      const known = this.#opened.has(sha256) ? this.#opened.get(sha256) : await this.#read(sha256)
      this.#opened.set(sha256, known)
      if (known !== undefined) found.set(sha256, known)
    }
    return found
  }

  /** Whether a picture was asked for and could not be read. */
  isMissing(sha256: string): boolean {
    return this.#opened.has(sha256) && this.#opened.get(sha256) === undefined
  }

  /** A picture made from a preview for one place alone; undefined where the preview cannot be read or nothing can be made of it. */
  async openMade(sha256: string, make: (preview: Uint8Array) => Promise<Uint8Array>): Promise<Picture | undefined> {
    return this.#place(async () => make(await this.pictureOf(sha256)))
  }

  #read(sha256: string): Promise<Picture | undefined> {
    return this.#place(() => this.pictureOf(sha256))
  }

  async #place(bytes: () => Promise<Uint8Array>): Promise<Picture | undefined> {
    try {
      const image = this.pdf.openImage(Buffer.from(await bytes()))
      return { image, widthPx: image.width, heightPx: image.height }
    } catch {
      // pdfkit throws a bare string for a picture it cannot read; the page says that it is missing.
      return undefined
    }
  }
}
