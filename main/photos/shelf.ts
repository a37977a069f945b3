import { stat, readFile } from 'node:fs/promises'
import { measurePicture, type Measured } from '../../shared-logic/photographs/measure-picture'
import { readCamera, type CameraFacts } from './camera'
import { decode, readHeader, type Header } from './decoder'
import { refuseUnwritable, writeDurably } from './durable-file'
import { plainFileName } from './file-name'
import { foldersOf, isSha256 } from './folders'
import { formats, photographFormats, type PhotographFormat } from './formats'
import { openLanes } from './lanes'
import { makePreviews, type Previews } from './previews'
import { sweepShelf, type Swept } from './sweep'

/** An original as it stands on the shelf. Time and place are from the camera and not trusted. */
export interface Original extends Header, CameraFacts, Measured {
  readonly sha256: string
  readonly byteCount: number
}

export interface Picture {
  readonly bytes: Uint8Array
  readonly mimeType: string
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
  /** A picture's bytes; undefined when there is no such original. A missing preview is made again. */
  read(sha256: string, size: PictureSize): Promise<Picture | undefined>
  /** To be called at the start, with every SHA-256 a row names: clears away what a crash left, and says what is missing. */
  sweep(recorded: ReadonlySet<string>): Promise<Swept>
}

/** libvips takes one thread a picture here; two lanes keep two cores busy and leave memory alone. */
const laneCount = 2

const exists = (path: string): Promise<boolean> => stat(path).then((entry) => entry.isFile(), () => false)

const readIfThere = (path: string): Promise<Uint8Array | undefined> =>
  readFile(path).catch((error: unknown) => {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined
    throw error
  })

/** Off the interactive thread, whatever the file's size. A copy is made, so that the caller's bytes may change meanwhile. */
const sha256Of = async (bytes: Uint8Array<ArrayBuffer>): Promise<string> => Buffer.from(await crypto.subtle.digest('SHA-256', bytes)).toString('hex')

export const openShelf = (folder: string, now: () => Date = () => new Date()): Shelf => {
  const folders = foldersOf(folder)
  const lanes = openLanes(laneCount)
  /** Work under way by SHA-256, so that the same photograph twice at once is written once. */
  const underWay = new Map<string, Promise<unknown>>()
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

  const writePreviews = async (sha256: string, previews: Previews): Promise<void> => {
    await writeDurably(folders.preview(sha256, 'large'), previews.large)
    await writeDurably(folders.preview(sha256, 'small'), previews.small)
  }

  /** Measures the picture, and keeps it unless it is there whole. */
  const keep = async (bytes: Uint8Array, sha256: string, header: Header, name: string): Promise<Measured> => {
    const path = folders.original(sha256, header.format)
    const isKept = (await exists(path)) && (await exists(folders.preview(sha256, 'large'))) && (await exists(folders.preview(sha256, 'small')))
    const before = takenHere.get(sha256)
    if (isKept && before) return before
    const pixels = await decode(bytes, name)
    const measured = measurePicture({ ...pixels.raw, data: pixels.data })
    if (isKept) return measured
    const previews = await makePreviews(pixels)
    takenHere.set(sha256, measured)
    try {
      await writeDurably(path, bytes)
      await writePreviews(sha256, previews)
    } catch (error) {
      refuseUnwritable(error, name)
    }
    return measured
  }

  const findOriginal = async (sha256: string): Promise<{ readonly path: string; readonly format: PhotographFormat } | undefined> => {
    for (const format of photographFormats) {
      const path = folders.original(sha256, format)
      if (await exists(path)) return { path, format }
    }
    return undefined
  }

  const remake = async (sha256: string, size: 'small' | 'large'): Promise<Uint8Array | undefined> => {
    const original = await findOriginal(sha256)
    if (original === undefined) return undefined
    const previews = await makePreviews(await decode(await readFile(original.path), sha256))
    /** A disk that cannot be written is no reason to show nothing. */
    await writePreviews(sha256, previews).catch(() => undefined)
    return previews[size]
  }

  const readPreview = async (sha256: string, size: 'small' | 'large'): Promise<Picture | undefined> => {
    const path = folders.preview(sha256, size)
    const bytes =
      (await readIfThere(path)) ??
      (await oneAtATime(sha256, () => lanes.run(async () => (await readIfThere(path)) ?? (await remake(sha256, size)))))
    return bytes && { bytes, mimeType: formats.jpeg.mimeType }
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
    async read(sha256, size) {
      if (!isSha256(sha256)) return undefined
      if (size !== 'original') return readPreview(sha256, size)
      const original = await findOriginal(sha256)
      const bytes = original && (await readIfThere(original.path))
      return original && bytes && { bytes, mimeType: formats[original.format].mimeType }
    },
    sweep: (recorded) => sweepShelf(folders, new Set([...recorded, ...takenHere.keys()]), recorded),
  }
}
