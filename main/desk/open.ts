import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { v7 } from 'uuid'
import type { Desk } from '../../shared-logic/contract/contract'
import { refuse } from '../../shared-logic/contract/refusal'
import { fillExample } from '../example/fill-example'
import { programVersion } from '../program-version'
import { openShelfWhenAsked } from '../photos/shelf-when-asked'
import type { PictureSize, Shelf } from '../photos/shelf'
import type { writeReport } from '../report/write-report'
import { recordedOriginals } from '../store/photographs'
import { findReport, recordedPdfs } from '../store/reports'
import { asDiskRefusal } from '../store/disk-refusals'
import { openYard, type Yard } from '../store/yard'
import { makeDesk } from './make-desk'
import type { Parts } from './parts'
import type { PhoneDoor } from './phone'
import { readPicture, type PictureParts } from './read-picture'
import { reportFile, sweepReports } from './report-files'

export interface RecordedFile {
  readonly bytes: Uint8Array
  readonly type: string
  /** What it is called when it is saved. */
  readonly fileName: string
}

/** The desk with the yard open behind it, for a door. */
export interface OpenedDesk {
  readonly desk: Desk
  /** A recorded photograph; undefined for a hash no row names. */
  readonly photograph: (sha256: string, size: PictureSize) => Promise<RecordedFile | undefined>
  /** An issued report's PDF, checked against its hash; undefined for an id that is none. */
  readonly reportPdf: (reportId: string) => Promise<RecordedFile | undefined>
  /** Recorded photographs whose file is gone, found when the yard was opened. */
  readonly missingPhotographs: () => Promise<readonly string[]>
  readonly close: () => Promise<void>
}

export type OpenOptions = Partial<Pick<Parts, 'clock' | 'newId' | 'zone' | 'version' | 'fillExample' | 'writeReport'>> & {
  /** Told what went wrong beside the work: the day's backup, the sweep. */
  readonly onFault?: (fault: unknown) => void
  /** Makes the door for a phone, where this program can open one; it is given the desk it leads to. */
  readonly phoneDoor?: (desk: () => Desk) => PhoneDoor
}

const sha256Of = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

const photographIn = (parts: PictureParts): OpenedDesk['photograph'] => async (sha256, size) => {
  const found = await readPicture(parts, sha256, size)
  return found && { bytes: found.bytes, type: found.mimeType, fileName: size === 'original' ? found.fileName : `${found.fileName.replace(/\.\w+$/, '')}.jpg` }
}

/** Reads an issued report's PDF from a yard, opened for work or to read. */
export const reportPdfIn = (yard: Pick<Yard, 'read' | 'folder'>): OpenedDesk['reportPdf'] => async (reportId) => {
  const report = await yard.read((db) => findReport(db, reportId))
  if (report === undefined) return undefined
  const bytes = await readFile(reportFile(yard.folder, report.pdfSha256)).catch(() => undefined)
  if (bytes === undefined || sha256Of(bytes) !== report.pdfSha256) return refuse('report.file-damaged', { number: report.number })
  return { bytes, type: 'application/pdf', fileName: `${report.number}${report.revision > 1 ? ` revision ${report.revision}` : ''}.pdf` }
}

/** The PDF library takes a fifth of a second to load: not before a report is wanted. */
const writeWhenAsked: typeof writeReport = async (...given) => (await import('../report/write-report')).writeReport(...given)

/** Clears away what a crash left behind, off the path of the first answer. */
const sweep = async (yard: Yard, shelf: Shelf): Promise<readonly string[]> => {
  const { originals, pdfs } = await yard.read(async (db) => ({ originals: await recordedOriginals(db), pdfs: await recordedPdfs(db) }))
  sweepReports(yard.folder, pdfs)
  return (await shelf.sweep(originals)).missing
}

/** Long enough for the window to have its first answers. */
const housekeepingAfterMs = 1_000

interface Housekeeping {
  /** The sweep, begun now if it has not been; new files wait for it, so that it never meets one whose row is still to come. */
  readonly swept: () => Promise<readonly string[]>
  readonly end: () => Promise<void>
}

/** After an unclean end the file is looked through before the day's backup: a damaged one is not to push out a good one. */
const afterwards = async (yard: Yard): Promise<void> => {
  if (yard.wasUnclean) await yard.lookThrough()
  await yard.backUp()
}

/** The sweep and after it the day's backup, begun when the first answers are given or when something waits for them. */
const keepHouse = (yard: Yard, shelf: Shelf, onFault: (fault: unknown) => void): Housekeeping => {
  let sweeping: Promise<readonly string[]> | undefined
  let backingUp: Promise<unknown> = Promise.resolve()
  const begin = (): Promise<readonly string[]> => {
    clearTimeout(timer)
    sweeping ??= sweep(yard, shelf)
    return sweeping
  }
  const timer = setTimeout(() => {
    backingUp = begin().catch(onFault).then(() => afterwards(yard)).catch((fault: unknown) => onFault(asDiskRefusal(fault, yard.folder)))
  }, housekeepingAfterMs)
  return {
    swept: begin,
    end: async () => {
      clearTimeout(timer)
      await backingUp
      await sweeping?.catch(() => undefined)
    },
  }
}

/** Opens the yard in `folder` and the desk before it. Throws `Refusal` where the yard cannot be opened. */
export const openDesk = async (folder: string, options: OpenOptions = {}): Promise<OpenedDesk> => {
  const { clock = () => new Date(), newId = v7, zone = Intl.DateTimeFormat().resolvedOptions().timeZone, version = programVersion, onFault = console.error } = options
  const yard = openYard(folder, { programVersion: version, clock })
  const shelf = openShelfWhenAsked(join(folder, 'photographs'), clock)
  const house = keepHouse(yard, shelf, onFault)
  const swept = (): Promise<unknown> => house.swept().catch(onFault)
  const writer = options.writeReport ?? writeWhenAsked
  const phoneDoor = options.phoneDoor?.(() => desk)
  const desk: Desk = makeDesk({
    ...(phoneDoor && { phoneDoor }),
    yard, clock, newId, zone, version, fillExample: options.fillExample ?? fillExample,
    shelf: { ...shelf, take: (bytes, fileName) => swept().then(() => shelf.take(bytes, fileName)) },
    missingPhotographs: house.swept,
    writeReport: (...given) => swept().then(() => writer(...given)),
  })
  return {
    desk,
    photograph: photographIn({ yard, shelf, clock }),
    reportPdf: reportPdfIn(yard),
    missingPhotographs: house.swept,
    close: async () => {
      await phoneDoor?.closeAll()
      await house.end()
      await yard.close()
    },
  }
}
