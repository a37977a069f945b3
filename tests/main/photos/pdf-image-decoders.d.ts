/** The package types its reader of documents, not this one of pictures. */
declare module 'pdfjs-dist/image_decoders/pdf.image_decoders.mjs' {
  export class JpegImage {
    readonly width: number
    readonly height: number
    parse(bytes: Uint8Array): void
    getData(wanted: { readonly width: number; readonly height: number; readonly forceRGB: boolean; readonly isSourcePDF: boolean }): Uint8Array
  }
}
