import { randomUUID } from 'node:crypto'
import { mkdir, open, rename, rm } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { refuse } from '../../shared-logic/contract/refusal'

/** Marks the temporary names of this run, so that a sweep does not take away what is just being written. */
const thisRun = randomUUID()

/** Whether a file is the half-written remainder of an earlier run. */
export const isLeftover = (name: string): boolean => /^\.[0-9a-f-]{73}\.part$/.test(name) && !name.startsWith(`.${thisRun}`)

const diskFull = new Set(['ENOSPC', 'EDQUOT', 'EFBIG'])
const readOnly = new Set(['EROFS', 'EACCES', 'EPERM'])

/** Turns a full or read-only disk into a refusal that names the photograph; anything else is thrown on. */
export const refuseUnwritable = (error: unknown, name: string): never => {
  const code = error instanceof Error && 'code' in error ? String(error.code) : ''
  if (diskFull.has(code)) return refuse('photograph.disk-full', { name })
  if (readOnly.has(code)) return refuse('photograph.read-only', { name })
  throw error
}

/** Makes a folder's entries survive a power cut. Windows keeps them itself and cannot open a folder. */
const syncFolder = async (folder: string): Promise<void> => {
  if (process.platform === 'win32') return
  const handle = await open(folder, 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}

const makeFolder = async (folder: string): Promise<void> => {
  const firstMade = await mkdir(folder, { recursive: true })
  if (firstMade === undefined) return
  for (let made = folder; made.length >= firstMade.length; made = dirname(made)) await syncFolder(dirname(made))
}

/**
 * Writes a file so that it is there whole or not at all, whatever happens meanwhile: temporary name, fsync, rename,
 * fsync of the folder. On any error the temporary file is removed and the error thrown.
 */
export const writeDurably = async (path: string, bytes: Uint8Array): Promise<void> => {
  const folder = dirname(path)
  await makeFolder(folder)
  const part = join(folder, `.${thisRun}-${randomUUID()}.part`)
  try {
    const handle = await open(part, 'wx')
    try {
      await handle.writeFile(bytes)
      await handle.sync()
    } finally {
      await handle.close()
    }
    await rename(part, path)
    await syncFolder(folder)
  } catch (error) {
    await rm(part, { force: true })
    throw error
  }
}

/** Moves a file to another folder of the same disk, durably. */
export const moveDurably = async (from: string, to: string): Promise<void> => {
  await makeFolder(dirname(to))
  await rename(from, to)
  await syncFolder(dirname(to))
  await syncFolder(dirname(from))
}
