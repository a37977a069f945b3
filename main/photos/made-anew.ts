import { hash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import type { PreviewHashes } from '../../shared-logic/photographs/preview-hashes'
import { foldersOf, isSha256 } from './folders'
import { photographFormats } from './formats'

/** What the copies of an original are when they are made today, by hashes; in memory alone. undefined where it cannot be read. The imaging library is loaded when it is first wanted. */
export const copiesMadeAnew = async (shelfFolder: string, { sha256, format: written }: { readonly sha256: string; readonly format: string }): Promise<PreviewHashes | undefined> => {
  const format = photographFormats.find((each) => each === written)
  if (!isSha256(sha256) || format === undefined) return undefined
  const [{ decode }, { makePreviews }] = [await import('./decoder'), await import('./previews')]
  try {
    const { large, small } = await makePreviews(await decode(await readFile(foldersOf(shelfFolder).original(sha256, format)), sha256))
    return { large: hash('sha256', large), small: hash('sha256', small) }
  } catch {
    return undefined
  }
}
