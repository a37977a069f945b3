import { mkdtemp, readdir, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, relative, sep } from 'node:path'
import { onTestFinished } from 'vitest'

/** An empty folder for one test, removed after it. */
export const emptyFolder = async (): Promise<string> => {
  const folder = await mkdtemp(join(tmpdir(), 'bunkwright-photos-'))
  onTestFinished(() => rm(folder, { recursive: true, force: true }))
  return folder
}

/** Every file below a folder, by its path from there, with forward slashes. */
export const filesIn = async (folder: string): Promise<string[]> => {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true })
  return entries.filter((entry) => entry.isFile()).map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/')).toSorted()
}
