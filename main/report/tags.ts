/** A tag that stays open while its content crosses pages. */
export type Tag = PDFKit.PDFStructureElement

/** What is drawn belongs to the tag tree (`leaf`) or is said to be decoration (`decoration`): nothing stands outside both. */
export class Tags {
  readonly #open: Tag[]

  constructor(readonly pdf: PDFKit.PDFDocument) {
    const root = pdf.struct('Document')
    pdf.addStructure(root)
    this.#open = [root]
  }

  get #here(): Tag {
    const here = this.#open.at(-1)
    if (here === undefined) throw new Error('every tag is closed')
    return here
  }

  /** Opens a tag below the present one without going into it. */
  add(type: string, options: TagOptions = {}): Tag {
    const tag = this.pdf.struct(type, options)
    this.#here.add(tag)
    return tag
  }

  /** Does `draw` inside an open tag. */
  inside(tag: Tag, draw: () => void): void {
    this.#open.push(tag)
    draw()
    this.#open.pop()
  }

  /** A tag around all that `draw` draws. */
  within(type: string, options: TagOptions, draw: () => void): void {
    const tag = this.add(type, options)
    this.inside(tag, draw)
    tag.end()
  }

  /** Content of the present tag, on one page. */
  leaf(draw: () => void): void {
    this.#here.add(draw)
  }

  /** Lines, shapes and running feet: seen, not read aloud. */
  decoration(draw: () => void, type: 'Layout' | 'Pagination' = 'Layout'): void {
    this.pdf.markContent('Artifact', { type })
    draw()
    this.pdf.endMarkedContent()
  }

  end(): void {
    this.#open[0]?.end()
  }
}

export interface TagOptions {
  readonly alt?: string
  readonly scope?: 'Row' | 'Column' | 'Both'
  readonly bbox?: [number, number, number, number]
}
