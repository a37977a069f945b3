import { appendFileSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { files, pick, rowsOf, sha256, withOneByteChanged, type Attack } from './attack'

const copies = (folder: string): string => join(folder, 'photographs', 'previews')

/** On the copies made from the originals, which are what is shown and printed, and on what is known of them. */
export const onCopies: readonly Attack[] = [
  {
    name: 'a byte of a copy that is shown and printed',
    found: ['copy-changed'],
    alter: ({ folder, draw }) => {
      const file = pick(files(copies(folder)), draw)
      writeFileSync(file, withOneByteChanged(readFileSync(file), draw))
      return true
    },
  },
  {
    name: 'a copy cut short or lengthened',
    found: ['copy-changed'],
    alter: ({ folder, draw }) => {
      const file = pick(files(copies(folder)), draw)
      if (draw() < 0.5) truncateSync(file, Math.floor(draw() * readFileSync(file).length))
      else appendFileSync(file, Buffer.alloc(1 + Math.floor(draw() * 9), Math.floor(draw() * 256)))
      return true
    },
  },
  {
    name: 'a copy deleted',
    found: ['copy-missing'],
    alter: ({ folder, draw }) => {
      rmSync(pick(files(copies(folder)), draw))
      return true
    },
  },
  {
    name: 'two copies exchanged',
    found: ['copy-changed'],
    alter: ({ folder, draw }) => {
      const [one, two] = [pick(files(copies(folder)), draw), pick(files(copies(folder)), draw)]
      if (one === two) return false
      const [first, second] = [readFileSync(one), readFileSync(two)]
      writeFileSync(one, second)
      writeFileSync(two, first)
      return true
    },
  },
  {
    name: 'a copy forged, and the row of its original made to fit',
    found: ['photograph-changed'],
    alter: ({ folder, database, draw }) => {
      const row = pick(rowsOf(database, 'originals'), draw)
      const size = draw() < 0.5 ? 'large' : 'small'
      const hash = String(row['sha256'])
      const bytes = Buffer.from(String(draw()))
      writeFileSync(join(copies(folder), size, hash.slice(0, 2), `${hash}.jpg`), bytes)
      database.prepare(`UPDATE originals SET ${size}_preview_sha256 = ? WHERE sha256 = ?`).run(sha256(bytes), hash)
      return true
    },
  },
  {
    name: 'what is known of the copies of an original taken out',
    found: ['photograph-changed'],
    alter: ({ database, draw }) => {
      database.prepare('UPDATE originals SET large_preview_sha256 = NULL, small_preview_sha256 = NULL WHERE sha256 = ?').run(pick(rowsOf(database, 'originals'), draw)['sha256'])
      return true
    },
  },
]
