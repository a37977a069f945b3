import type { Picture } from './picture'

/** Where pictures wait on the phone. Anything may reject: storage of a browser can be full, shut or lost. */
export interface Shelf {
  /** Whether it outlives the page. */
  readonly isLasting: boolean
  readonly pictures: () => Promise<readonly Picture[]>
  /** A new picture with its file, both or neither. */
  readonly add: (picture: Picture, file: Blob) => Promise<void>
  readonly update: (picture: Picture) => Promise<void>
  readonly file: (id: string) => Promise<Blob | undefined>
  /** It has arrived: its file is wanted no more, the picture is still shown. */
  readonly dropFile: (id: string) => Promise<void>
  readonly remove: (id: string) => Promise<void>
  /** Which connection this phone last made, from whichever tab, and in which tab it is now. */
  readonly pairing: () => Promise<string | undefined>
  readonly setPairing: (pairing: string) => Promise<void>
  readonly tab: () => Promise<string | undefined>
  readonly setTab: (tab: string) => Promise<void>
}

/** In the page alone: where the browser keeps nothing, as some do in a private window, and for what a full phone will not take. */
export const memoryShelf = (): Shelf => {
  const pictures = new Map<string, Picture>()
  const files = new Map<string, Blob>()
  let pairing: string | undefined
  let tab: string | undefined
  return {
    isLasting: false,
    pictures: async () => [...pictures.values()],
    add: async (picture, file) => {
      files.set(picture.id, file)
      pictures.set(picture.id, picture)
    },
    update: async (picture) => {
      pictures.set(picture.id, picture)
    },
    file: async (id) => files.get(id),
    dropFile: async (id) => {
      files.delete(id)
    },
    remove: async (id) => {
      files.delete(id)
      pictures.delete(id)
    },
    pairing: async () => pairing,
    setPairing: async (next) => {
      pairing = next
    },
    tab: async () => tab,
    setTab: async (next) => {
      tab = next
    },
  }
}
