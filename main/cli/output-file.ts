import { existsSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import { refuse } from '../../shared-logic/contract/refusal'
import { asDiskRefusal } from '../store/disk-refusals'
import type { Given } from './command'

/** What is written never takes the place of another file. */
export const outputFor = (given: Given, fallback: string): string => {
  const file = resolve(given.workingFolder, given.output ?? fallback)
  if (existsSync(file)) refuse('cli.file-exists', { file })
  if (!existsSync(dirname(file))) refuse('cli.file-not-writable', { file })
  return file
}

/** Writes, and tells in a sentence what the disk would not do. */
export const writing = async <Result>(file: string, write: () => Promise<Result>): Promise<Result> => {
  try {
    return await write()
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined
    if (code === 'ENOENT' || code === 'EACCES' || code === 'EROFS' || code === 'EPERM' || code === 'ENOTDIR' || code === 'EISDIR') return refuse('cli.file-not-writable', { file })
    throw asDiskRefusal(error, file)
  }
}
