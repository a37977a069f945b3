import { createHash, randomUUID } from 'node:crypto'
import { mkdir, open, rename, rm, type FileHandle } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import type { ReportDocument } from '../../shared-logic/report/document'
import { openPdf } from './accessible-pdf'
import { drawReport } from './draw-report'

/** Fetches a photograph's preview (JPEG, long edge 1600 px) by the hash of its original. */
export type PictureOf = (sha256: string) => Promise<Uint8Array>

/** What was written. */
export interface WrittenReport {
  readonly sha256: string
  readonly byteCount: number
}

/** Writes what comes out of the PDF as it comes, and counts and hashes it on the way. */
const drain = async (pdf: PDFKit.PDFDocument, file: FileHandle): Promise<WrittenReport> => {
  const hash = createHash('sha256')
  let byteCount = 0
  for await (const chunk of pdf as AsyncIterable<Buffer>) {
    hash.update(chunk)
    byteCount += chunk.length
    await file.writeFile(chunk)
  }
  await file.sync()
  return { sha256: hash.digest('hex'), byteCount }
}

const draw = async (pdf: PDFKit.PDFDocument, document: ReportDocument, pictureOf: PictureOf): Promise<void> => {
  try {
    await drawReport(pdf, document, pictureOf)
  } catch (error) {
    pdf.destroy(error instanceof Error ? error : new Error(String(error)))
  }
}

/** A rename outlives a power cut only when its folder is flushed too. Windows does that itself and cannot open a folder. */
const syncFolder = async (folder: string): Promise<void> => {
  if (process.platform === 'win32') return
  const handle = await open(folder, 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}

/**
 * Writes the report as a PDF: to a temporary name beside `filePath`, flushed to the disk, then renamed, so that a file
 * under that name is always whole. Same document and pictures, same bytes.
 * Rejects when the folder cannot be written; nothing stays behind then. A picture that cannot be fetched is said on its page.
 */
export const writeReport = async (document: ReportDocument, pictureOf: PictureOf, filePath: string): Promise<WrittenReport> => {
  const folder = dirname(filePath)
  await mkdir(folder, { recursive: true })
  const part = join(folder, `.${basename(filePath)}-${randomUUID()}.part`)
  try {
    const file = await open(part, 'wx')
    let written: WrittenReport
    try {
      const pdf = openPdf(document)
      const drawn = draw(pdf, document, pictureOf)
      written = await drain(pdf, file)
      await drawn
    } finally {
      await file.close()
    }
    await rename(part, filePath)
    await syncFolder(folder)
    return written
  } catch (error) {
    await rm(part, { force: true })
    throw error
  }
}
