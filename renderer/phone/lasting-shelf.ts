import { openDB, type DBSchema, type IDBPDatabase } from 'idb'
import type { Picture } from './picture'
import { memoryShelf, type Shelf } from './shelf'

interface Stores extends DBSchema {
  pictures: { key: string; value: Picture }
  /** Apart from the pictures, so that a change of state does not write the file again. */
  files: { key: string; value: Blob }
  meta: { key: string; value: string }
}
type Database = IDBPDatabase<Stores>

const openStores = (): Promise<Database> =>
  openDB<Stores>('bunkwright-phone', 1, {
    upgrade: (database) => {
      database.createObjectStore('pictures', { keyPath: 'id' })
      database.createObjectStore('files')
      database.createObjectStore('meta')
    },
  })

const isFull = (error: unknown): boolean => error instanceof Error && error.name === 'QuotaExceededError'

/** Some browsers open a database in a private window and then refuse files in it: tried before it is relied on. A full one still holds what it has. */
const tryFiles = async (database: Database): Promise<void> => {
  try {
    await database.put('files', new Blob(['x']), 'trial')
    await database.delete('files', 'trial')
  } catch (error) {
    if (!isFull(error)) throw error
  }
}

/** In the browser's own database: outlives reload, a discarded tab and a flat battery. */
const shelfIn = (first: Database): Shelf => {
  let database = first
  /** A browser may drop the connection of a page that stood in the background: opened anew, once. */
  const within = async <Result>(work: (database: Database) => Promise<Result>): Promise<Result> => {
    try {
      return await work(database)
    } catch (error) {
      if (isFull(error)) throw error
      database = await openStores()
      return work(database)
    }
  }
  return {
    isLasting: true,
    pictures: () => within((open) => open.getAll('pictures')),
    add: (picture, file) => within(async (open) => {
      const change = open.transaction(['pictures', 'files'], 'readwrite')
      await Promise.all([change.objectStore('files').put(file, picture.id), change.objectStore('pictures').put(picture), change.done])
    }),
    update: (picture) => within(async (open) => { await open.put('pictures', picture) }),
    file: (id) => within((open) => open.get('files', id)),
    dropFile: (id) => within((open) => open.delete('files', id)),
    remove: (id) => within(async (open) => {
      const change = open.transaction(['pictures', 'files'], 'readwrite')
      await Promise.all([change.objectStore('files').delete(id), change.objectStore('pictures').delete(id), change.done])
    }),
    pairing: () => within((open) => open.get('meta', 'pairing')),
    setPairing: (pairing) => within(async (open) => { await open.put('meta', pairing, 'pairing') }),
    tab: () => within((open) => open.get('meta', 'tab')),
    setTab: (tab) => within(async (open) => { await open.put('meta', tab, 'tab') }),
  }
}

/** The phone's shelf: lasting where the browser allows it, else in the page alone. */
export const openShelf = async (): Promise<Shelf> => {
  try {
    const database = await openStores()
    await tryFiles(database)
    return shelfIn(database)
  } catch {
    return memoryShelf()
  }
}
