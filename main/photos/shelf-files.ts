import { readdir, stat } from 'node:fs/promises'
import { join, relative, sep } from 'node:path'
import { lookAtFile, type FileFound, type LookOptions } from './file-hash'
import { foldersOf, isSha256, type Folders } from './folders'
import { photographFormats } from './formats'

const isFile = (path: string): Promise<boolean> => stat(path).then((entry) => entry.isFile(), () => false)

/** Whether an original lies among those the sweep took off the shelf because no row named them. */
const isSetAside = async (folders: Folders, sha256: string): Promise<boolean> => {
  for (const format of photographFormats) if (await isFile(join(folders.unrecorded, folders.original(sha256, format).split(sep).at(-1) ?? ''))) return true
  return false
}

export type OriginalFound = FileFound | { readonly is: 'set aside' }

/** Holds one original on the shelf to what is recorded of it. */
export const lookAtOriginal = async (shelfFolder: string, recorded: { readonly sha256: string; readonly byteCount: number; readonly format: string }, options: LookOptions = {}): Promise<OriginalFound> => {
  const format = photographFormats.find((each) => each === recorded.format)
  if (!isSha256(recorded.sha256) || format === undefined) return { is: 'missing' }
  const folders = foldersOf(shelfFolder)
  const found = await lookAtFile(folders.original(recorded.sha256, format), recorded, options)
  return found.is === 'missing' && (await isSetAside(folders, recorded.sha256)) ? { is: 'set aside' } : found
}

/** Holds a copy made from an original to what is recorded of it. */
export const lookAtPreview = async (shelfFolder: string, sha256: string, size: 'large' | 'small', recorded: string, options: LookOptions = {}): Promise<FileFound> =>
  isSha256(sha256) ? lookAtFile(foldersOf(shelfFolder).preview(sha256, size), { sha256: recorded }, options) : { is: 'missing' }

/** A file being written, by us or by a copy of us at work beside. */
const isUnderWay = (name: string): boolean => /^\.[0-9a-f-]{73}\.part$/.test(name)
/** What systems leave in folders by themselves. Common practice, no source. */
const isOfTheSystem = (name: string): boolean => ['.ds_store', 'thumbs.db', 'desktop.ini'].includes(name.toLowerCase())

/** Every file among the originals whose place is none of these originals', relative to their folder. */
export const strangersAmongOriginals = async (shelfFolder: string, known: ReadonlyMap<string, string>): Promise<string[]> => {
  const folders = foldersOf(shelfFolder)
  const places = new Set<string>()
  for (const [sha256, written] of known) {
    const format = photographFormats.find((each) => each === written)
    if (format !== undefined) places.add(folders.original(sha256, format))
  }
  const entries = await readdir(folders.originals, { recursive: true, withFileTypes: true }).catch((error: unknown) => {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return []
    throw error
  })
  return entries
    .filter((entry) => !entry.isDirectory() && !isUnderWay(entry.name) && !isOfTheSystem(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((path) => !places.has(path))
    .map((path) => relative(folders.originals, path).split(sep).join('/'))
    .toSorted()
}
