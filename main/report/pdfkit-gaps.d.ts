import 'pdfkit'

// What pdfkit 0.20 has and its type package leaves out.
declare global {
  namespace PDFKit {
    interface PDFOutline {
      options: { expanded?: boolean }
      /** `left` is measured from the right edge. */
      addItem(title: string, options: { expanded?: boolean; top?: number; left?: number }): PDFOutline
    }
    interface PDFDocument {
      /** Reads a picture without placing it; throws a bare string when it cannot. */
      openImage(bytes: Buffer): Mixins.ImageSrc & { readonly width: number; readonly height: number }
      /** Builds the XMP description from `info`; overridden to escape what XML needs escaped. */
      _addInfo(): void
      /** The face chosen last. */
      readonly _font: { readonly font: { hasGlyphForCodePoint(codePoint: number): boolean } }
    }
    namespace Mixins {
      interface PDFAttachmentOptions {
        relationship?: 'Source' | 'Data' | 'Alternative' | 'Supplement' | 'Unspecified'
      }
    }
  }
}
