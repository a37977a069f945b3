import { foldersOf } from './folders'
import type { Shelf } from './shelf'
import { sweepShelf } from './sweep'

/**
 * A shelf whose imaging library is loaded with the first photograph that is taken or shown, not with the program: that
 * takes a tenth of a second. The sweep at the start needs none of it, and meets nothing taken since.
 */
export const openShelfWhenAsked = (folder: string, now: () => Date): Shelf => {
  let opening: Promise<Shelf> | undefined
  const opened = (): Promise<Shelf> => (opening ??= import('./shelf').then(({ openShelf }) => openShelf(folder, now)))
  return {
    take: async (bytes, fileName) => (await opened()).take(bytes, fileName),
    read: async (...given) => (await opened()).read(...given),
    sweep: async (recorded) => (opening === undefined ? sweepShelf(foldersOf(folder), recorded, recorded) : (await opened()).sweep(recorded)),
  }
}
