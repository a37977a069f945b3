import { hash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import type { PreviewHashes } from '../../shared-logic/photographs/preview-hashes'
import { writeDurably } from './durable-file'
import type { Folders } from './folders'
import type { Previews } from './previews'

/** The previews on the disk, each believed only while it is what was recorded when it was made. */
export interface KeptPreviews {
  /** Keeps both, safely on the disk. What lies there to the byte already is not written anew. */
  write(sha256: string, previews: Previews): Promise<PreviewHashes>
  /** A preview's bytes; undefined where it is missing, cannot be read, was changed, or was never recorded. */
  read(sha256: string, size: keyof PreviewHashes, recorded: PreviewHashes | undefined): Promise<Uint8Array | undefined>
  /** Hashes of those that were made in this run. */
  madeHere(sha256: string): PreviewHashes | undefined
  /** The same, where both are still on the disk as they were made. */
  whole(sha256: string): Promise<PreviewHashes | undefined>
}

/** Of the bytes as they stand in memory: a preview has at most a few hundred kilobytes. */
const sha256Of = (bytes: Uint8Array): string => hash('sha256', bytes)

/** The bytes of a file, where it holds what it should. */
const find = async (path: string, expected: string): Promise<Uint8Array | undefined> => {
  const bytes = await readFile(path).catch(() => undefined)
  return bytes !== undefined && sha256Of(bytes) === expected ? bytes : undefined
}

const keep = async (path: string, bytes: Uint8Array): Promise<string> => {
  const sha256 = sha256Of(bytes)
  if ((await find(path, sha256)) === undefined) await writeDurably(path, bytes)
  return sha256
}

export const openKeptPreviews = (folders: Folders): KeptPreviews => {
  const made = new Map<string, PreviewHashes>()
  return {
    async write(sha256, { large, small }) {
      const hashes = { large: await keep(folders.preview(sha256, 'large'), large), small: await keep(folders.preview(sha256, 'small'), small) }
      made.set(sha256, hashes)
      return hashes
    },
    async read(sha256, size, recorded) {
      // What this run made itself is known for sure; a row may not have it yet.
      const expected = (made.get(sha256) ?? recorded)?.[size]
      return expected === undefined ? undefined : find(folders.preview(sha256, size), expected)
    },
    madeHere: (sha256) => made.get(sha256),
    async whole(sha256) {
      const hashes = made.get(sha256)
      if (hashes === undefined) return undefined
      const found = [await find(folders.preview(sha256, 'large'), hashes.large), await find(folders.preview(sha256, 'small'), hashes.small)]
      return found.includes(undefined) ? undefined : hashes
    },
  }
}
