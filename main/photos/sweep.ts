import { readdir, rm } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { isLeftover, moveDurably } from './durable-file'
import { shaOfOriginal, shaOfPreview, type Folders } from './folders'

/** What a sweep did: files taken off the shelf, and the recorded photographs whose original is not there. */
export interface Swept {
  readonly removedFiles: number
  readonly missing: readonly string[]
}

const listFiles = async (folder: string): Promise<string[]> => {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch((error: unknown) => {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return []
    throw error
  })
  return entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name))
}

/** Only a file in its own place counts as ours; whatever else a person laid into the folder stays. */
const isInPlace = (path: string, sha256: string): boolean => basename(join(path, '..')) === sha256.slice(0, 2)

const originalsIn = async (folder: string): Promise<Map<string, string>> => {
  const found = new Map<string, string>()
  for (const path of await listFiles(folder)) {
    const sha256 = shaOfOriginal(basename(path))
    if (sha256 !== undefined && isInPlace(path, sha256)) found.set(sha256, path)
  }
  return found
}

/** An original that was set aside and is named by a row again (a newer backup came back) returns to its place. */
const bringBack = async (folders: Folders, originals: ReadonlyMap<string, string>, recorded: ReadonlySet<string>): Promise<void> => {
  for (const path of await listFiles(folders.unrecorded)) {
    const sha256 = shaOfOriginal(basename(path))
    if (sha256 === undefined || !recorded.has(sha256)) continue
    if (originals.has(sha256)) await rm(path)
    else await moveDurably(path, join(folders.originals, sha256.slice(0, 2), basename(path)))
  }
}

const removeLeftovers = async (folders: Folders, wanted: ReadonlySet<string>): Promise<number> => {
  let removed = 0
  for (const path of (await Promise.all(folders.previews.map(listFiles))).flat()) {
    const sha256 = shaOfPreview(basename(path))
    const isStray = sha256 !== undefined && isInPlace(path, sha256) && !wanted.has(sha256)
    if (!isStray && !isLeftover(basename(path))) continue
    await rm(path, { force: true })
    removed += 1
  }
  for (const path of await listFiles(folders.originals)) {
    if (!isLeftover(basename(path))) continue
    await rm(path, { force: true })
    removed += 1
  }
  return removed
}

/**
 * Leaves on the shelf exactly the photographs in `wanted`. Halves of files and stray previews are deleted; an original
 * that no row names is moved to `unrecorded`, not deleted: after an older database has come back it may be evidence.
 * `missing` are those of `recorded` without an original.
 */
export const sweepShelf = async (folders: Folders, wanted: ReadonlySet<string>, recorded: ReadonlySet<string>): Promise<Swept> => {
  await bringBack(folders, await originalsIn(folders.originals), recorded)
  let removedFiles = await removeLeftovers(folders, wanted)
  const originals = await originalsIn(folders.originals)
  for (const [sha256, path] of originals) {
    if (wanted.has(sha256)) continue
    await moveDurably(path, join(folders.unrecorded, basename(path)))
    removedFiles += 1
  }
  return { removedFiles, missing: [...recorded].filter((sha256) => !originals.has(sha256)) }
}
