import { appendFileSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { files, pick, sha256, withOneByteChanged, type Attack } from './attack'

const originals = (folder: string): string => join(folder, 'photographs', 'originals')

/** On the originals’ files. */
export const onOriginals: readonly Attack[] = [
  {
    name: 'a byte of an original',
    found: ['file-changed'],
    alter: ({ folder, draw }) => {
      const file = pick(files(originals(folder)), draw)
      writeFileSync(file, withOneByteChanged(readFileSync(file), draw))
      return true
    },
  },
  {
    name: 'an original cut short',
    found: ['file-resized'],
    alter: ({ folder, draw }) => {
      const file = pick(files(originals(folder)), draw)
      truncateSync(file, Math.floor(draw() * readFileSync(file).length))
      return true
    },
  },
  {
    name: 'an original lengthened',
    found: ['file-resized'],
    alter: ({ folder, draw }) => {
      appendFileSync(pick(files(originals(folder)), draw), Buffer.alloc(1 + Math.floor(draw() * 9), Math.floor(draw() * 256)))
      return true
    },
  },
  {
    name: 'an original deleted',
    found: ['file-missing'],
    alter: ({ folder, draw }) => {
      rmSync(pick(files(originals(folder)), draw))
      return true
    },
  },
  {
    name: 'two originals exchanged',
    found: ['file-changed', 'file-resized'],
    alter: ({ folder, draw }) => {
      const [one, two] = [pick(files(originals(folder)), draw), pick(files(originals(folder)), draw)]
      if (one === two) return false
      renameSync(one, `${one}.between`)
      renameSync(two, one)
      renameSync(`${one}.between`, two)
      return true
    },
  },
  {
    name: 'an original set aside',
    found: ['file-set-aside'],
    alter: ({ folder, draw }) => {
      const file = pick(files(originals(folder)), draw)
      const aside = join(folder, 'photographs', 'unrecorded')
      if (!existsSync(aside)) mkdirSync(aside)
      renameSync(file, join(aside, file.split('/').at(-1) ?? ''))
      return true
    },
  },
  {
    name: 'a file added among the originals',
    found: ['file-added'],
    alter: ({ folder, draw }) => {
      const bytes = Buffer.from(String(draw()))
      const name = draw() < 0.5 ? `${sha256(bytes)}.jpg` : 'holiday.jpg'
      mkdirSync(join(originals(folder), name.slice(0, 2)), { recursive: true })
      writeFileSync(join(originals(folder), name.slice(0, 2), name), bytes)
      return true
    },
  },
]
