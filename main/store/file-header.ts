import { closeSync, existsSync, openSync, readSync, statSync } from 'node:fs'

/** What the first hundred bytes of a database file say, read without opening it as a database. */
export type FileHeader =
  | { readonly kind: 'missing' }
  | { readonly kind: 'empty' }
  | { readonly kind: 'not a database' }
  | { readonly kind: 'database'; readonly applicationId: number; readonly userVersion: number }

const magic = 'SQLite format 3\u0000'

/** Source: SQLite's file format, 'The Database Header': user version at byte 60, application id at byte 68. */
export const readFileHeader = (file: string): FileHeader => {
  if (!existsSync(file)) return { kind: 'missing' }
  if (statSync(file).size === 0) return { kind: 'empty' }
  const header = Buffer.alloc(100)
  const descriptor = openSync(file, 'r')
  try {
    const count = readSync(descriptor, header, 0, 100, 0)
    if (count < 100 || header.toString('latin1', 0, 16) !== magic) return { kind: 'not a database' }
    return { kind: 'database', userVersion: header.readUInt32BE(60), applicationId: header.readUInt32BE(68) }
  } finally {
    closeSync(descriptor)
  }
}
