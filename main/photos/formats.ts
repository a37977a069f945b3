import type { Photograph } from '../../shared-logic/survey/records'

export type PhotographFormat = Photograph['format']

interface FormatRow {
  readonly extension: string
  readonly mimeType: string
}

/** The formats taken, with the ending an original is kept under and the type it is served as. */
export const formats: Readonly<Record<PhotographFormat, FormatRow>> = {
  jpeg: { extension: 'jpg', mimeType: 'image/jpeg' },
  png: { extension: 'png', mimeType: 'image/png' },
  webp: { extension: 'webp', mimeType: 'image/webp' },
  tiff: { extension: 'tif', mimeType: 'image/tiff' },
  avif: { extension: 'avif', mimeType: 'image/avif' },
  heic: { extension: 'heic', mimeType: 'image/heic' },
}

export const photographFormats: readonly PhotographFormat[] = ['jpeg', 'png', 'webp', 'tiff', 'avif', 'heic']
