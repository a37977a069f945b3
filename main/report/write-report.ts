import type { ReportDocument } from '../../shared-logic/report/document'

/** Fetches a photograph's preview (JPEG, long edge 1600 px) by the hash of its original. */
export type PictureOf = (sha256: string) => Promise<Uint8Array>

/** What was written. */
export interface WrittenReport {
  readonly sha256: string
  readonly byteCount: number
}

/**
 * Writes the report as a PDF: to a temporary name beside `filePath`, flushed to the disk, then renamed, so that a file
 * under that name is always whole. Same document and pictures, same bytes.
 * Rejects when the folder cannot be written; nothing stays behind then. A picture that cannot be fetched is said on its page.
 */
export const writeReport = async (document: ReportDocument, _pictureOf: PictureOf, filePath: string): Promise<WrittenReport> => {
  throw new Error(`${document.number} cannot be written to ${filePath} yet`)
}
