import { stat, readFile } from 'node:fs/promises'
import { refuse } from '../../shared-logic/contract/refusal'
import { measurePicture, type Measured } from '../../shared-logic/photographs/measure-picture'
import type { PreviewHashes } from '../../shared-logic/photographs/preview-hashes'
import { readCamera, type CameraFacts } from './camera'
import { decode, readHeader, type Header } from './decoder'
import { refuseUnwritable, writeDurably } from './durable-file'
import { plainFileName } from './file-name'
import { foldersOf, isSha256 } from './folders'
import { formats, photographFormats, type PhotographFormat } from './formats'
import { openKeptPreviews } from './kept-previews'
import { openLanes } from './lanes'
import { makePreviews } from './previews'
import { sweepShelf, type Swept } from './sweep'

/** An original as it stands on the shelf. Time and place are from the camera and not trusted. */
export interface Original extends Header, CameraFacts, Measured {
  readonly sha256: string
  readonly byteCount: number
  readonly previews: PreviewHashes
}

export interface Picture {
  readonly bytes: Uint8Array
  readonly mimeType: string
  /** Where the previews were made in this run: their hashes, which a row may not have yet. */
  readonly previews?: PreviewHashes
}

export type PictureSize = 'small' | 'large' | 'original'

/** Keeps photographs as files named by their SHA-256: originals to the byte, and two previews that can be made again at any time. */
export interface Shelf {
  /**
   * Takes one photograph. When it resolves, original and previews are safely on the disk.
   * Throws `Refusal` (`photograph.*`, with the file's name) for what cannot be taken; nothing is kept then.
   * The same bytes again give the same answer and are not worked on a second time.
   */
  take(bytes: Uint8Array, fileName: string): Promise<Original>
  /**
   * A picture's bytes; undefined when there is no such original. A preview is answered only while it has the hash that was
   * recorded of it, else it is made again from the original; one of which nothing is recorded is made again as well.
   * Throws `Refusal` where an original that is needed is not what it was.
   */
  read(sha256: string, size: PictureSize, recorded?: PreviewHashes): Promise<Picture | undefined>
  /** To be called at the start, with every SHA-256 a row names: clears away what a crash left, and says what is missing. */
  sweep(recorded: ReadonlySet<string>): Promise<Swept>
}

/** libvips takes one thread a picture here; two lanes keep two cores busy and leave memory alone. */
const laneCount = 2

const exists = (path: string): Promise<boolean> => stat(path).then((entry) => entry.isFile(), () => false)

const readIfThere = (path: string): Promise<Uint8Array<ArrayBuffer> | undefined> =>
  readFile(path).catch((error: unknown) => {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined
    throw error
  })

/** Whether a file holds exactly these bytes; one that was changed on the disk is put right by the photograph coming in again. */
const holds = async (path: string, bytes: Uint8Array): Promise<boolean> => {
  const size = await stat(path).then((entry) => entry.size, () => undefined)
  if (size !== bytes.byteLength) return false
  const there = await readFile(path).catch(() => undefined)
  return there !== undefined && Buffer.compare(there, bytes) === 0
}

/** Off the interactive thread, whatever the file's size. A copy is made, so that the caller's bytes may change meanwhile. */
const sha256Of = async (bytes: Uint8Array<ArrayBuffer>): Promise<string> => Buffer.from(await crypto.subtle.digest('SHA-256', bytes)).toString('hex')

export const openShelf = (folder: string, now: () => Date = () => new Date()): Shelf => {
  const folders = foldersOf(folder)
  const lanes = openLanes(laneCount)
  /** Work under way by SHA-256, so that the same photograph twice at once is written once. */
  const underWay = new Map<string, Promise<unknown>>()
  const kept = openKeptPreviews(folders)
  /** What was taken in this run, and what was measured of it. */
  const takenHere = new Map<string, Measured>()

  const oneAtATime = async <Result>(sha256: string, job: () => Promise<Result>): Promise<Result> => {
    const before = underWay.get(sha256)
    const mine = (before ?? Promise.resolve()).then(job, job)
    underWay.set(sha256, mine)
    try {
      return await mine
    } finally {
      if (underWay.get(sha256) === mine) underWay.delete(sha256)
    }
  }

  /** Measures the picture and keeps it, unless this run did so and all of it is there. */
  const keep = async (bytes: Uint8Array, sha256: string, header: Header, name: string): Promise<Measured & Pick<Original, 'previews'>> => {
    const path = folders.original(sha256, header.format)
    const before = takenHere.get(sha256)
    const made = await kept.whole(sha256)
    const isThere = await holds(path, bytes)
    if (isThere && before && made) return { ...before, previews: made }
    const pixels = await decode(bytes, name)
    // It is measured on this thread while the library encodes on others.
    const [previews, measured] = await Promise.all([makePreviews(pixels), Promise.resolve().then(() => measurePicture({ ...pixels.raw, data: pixels.data }))])
    takenHere.set(sha256, measured)
    try {
      if (!isThere) await writeDurably(path, bytes)
      return { ...measured, previews: await kept.write(sha256, previews) }
    } catch (error) {
      return refuseUnwritable(error, name)
    }
  }

  const findOriginal = async (sha256: string): Promise<{ readonly path: string; readonly format: PhotographFormat } | undefined> => {
    for (const format of photographFormats) {
      const path = folders.original(sha256, format)
      if (await exists(path)) return { path, format }
    }
    return undefined
  }

  const readOriginal = async (sha256: string): Promise<Picture | undefined> => {
    const original = await findOriginal(sha256)
    const bytes = original && (await readIfThere(original.path))
    if (original === undefined || bytes === undefined) return undefined
    if ((await sha256Of(bytes)) !== sha256) return refuse('photograph.original-changed', { sha256: sha256.slice(0, 12) })
    return { bytes, mimeType: formats[original.format].mimeType }
  }

  const remake = async (sha256: string, size: 'small' | 'large'): Promise<Uint8Array | undefined> => {
    const original = await readOriginal(sha256)
    if (original === undefined) return undefined
    const previews = await makePreviews(await decode(original.bytes, sha256))
    /** A disk that cannot be written is no reason to show nothing. */
    await kept.write(sha256, previews).catch(() => undefined)
    return previews[size]
  }

  const readPreview = async (sha256: string, size: 'small' | 'large', recorded: PreviewHashes | undefined): Promise<Picture | undefined> => {
    const asRecorded = (): Promise<Uint8Array | undefined> => kept.read(sha256, size, recorded)
    const bytes = (await asRecorded()) ?? (await oneAtATime(sha256, () => lanes.run(async () => (await asRecorded()) ?? (await remake(sha256, size)))))
    const previews = kept.madeHere(sha256)
    return bytes && { bytes, mimeType: formats.jpeg.mimeType, ...(previews && { previews }) }
  }

  return {
    async take(given, fileName) {
      const name = plainFileName(fileName)
      const header = await readHeader(given, name)
      const bytes = new Uint8Array(given)
      const sha256 = await sha256Of(bytes)
      const measured = await oneAtATime(sha256, () => lanes.run(() => keep(bytes, sha256, header, name)))
      return { sha256, byteCount: bytes.byteLength, ...header, ...readCamera(bytes, now()), ...measured }
    },
    async read(sha256, size, recorded) {
      if (!isSha256(sha256)) return undefined
      return size === 'original' ? readOriginal(sha256) : readPreview(sha256, size, recorded)
    },
    sweep: (recorded) => sweepShelf(folders, new Set([...recorded, ...takenHere.keys()]), recorded),
  }
}
