import type { PreviewHashes } from '../../shared-logic/photographs/preview-hashes'
import type { Picture, PictureSize } from '../photos/shelf'
import { enterCopies } from '../store/photograph-log'
import { findOriginal } from '../store/photographs'
import type { Parts } from './parts'

/** Hashes of copies by that of their original. */
export type RecordedCopies = ReadonlyMap<string, PreviewHashes>

export type PictureParts = Pick<Parts, 'yard' | 'shelf' | 'clock'>

/**
 * A recorded photograph as it is shown and printed, with the name it arrived under; undefined for a hash no row names.
 * Copies are believed by the original's row, or by `told` where that is given. Those that had to be made anew, by a newer
 * imaging library or because none were recorded, are entered in the record.
 */
export const readPicture = async ({ yard, shelf, clock }: PictureParts, sha256: string, size: PictureSize, told?: RecordedCopies): Promise<(Picture & { readonly fileName: string }) | undefined> => {
  const original = await yard.read((db) => findOriginal(db, sha256))
  const picture = original && (await shelf.read(sha256, size, told === undefined ? original.previews : told.get(sha256)))
  if (original === undefined || picture === undefined) return undefined
  const { previews } = picture
  const { large, small } = original.previews ?? {}
  // Where that cannot be kept the picture is right all the same, and it is tried again the next time.
  if (previews !== undefined && (previews.large !== large || previews.small !== small)) await yard.write((db) => enterCopies(db, sha256, previews, clock().toISOString())).catch(() => undefined)
  return { ...picture, fileName: original.fileName }
}
