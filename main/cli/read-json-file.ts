import { readFile, stat } from 'node:fs/promises'
import { resolve } from 'node:path'
import { refuse } from '../../shared-logic/contract/refusal'
import type { Given } from './command'

const limitBytes = 8_000_000

const textOf = async (path: string, named: string): Promise<string> => {
  const found = await stat(path).catch(() => undefined)
  if (found?.isFile() !== true) return refuse('cli.file-not-readable', { file: named })
  if (found.size > limitBytes) return refuse('cli.file-too-large', { file: named, limit: limitBytes / 1_000_000 })
  return readFile(path, 'utf8').catch(() => refuse('cli.file-not-readable', { file: named }))
}

const parsed = (text: string, named: string): unknown => {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    return refuse('cli.file-not-json', { file: named, problem: error instanceof Error ? error.message : '' })
  }
}

/** The JSON value of a file named on the command line; refuses what cannot be read, is too large, or is no JSON. */
export const readJsonFile = async (named: string, { workingFolder }: Given): Promise<unknown> => parsed(await textOf(resolve(workingFolder, named), named), named)
