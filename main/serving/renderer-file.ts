import { readFile, realpath } from 'node:fs/promises'
import { extname, join, sep } from 'node:path'
import type { Served } from './served'

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.ttf': 'font/ttf',
  '.json': 'application/json; charset=utf-8',
  '.wasm': 'application/wasm',
}

const plainSegment = /^[A-Za-z0-9_-][A-Za-z0-9._-]*$/

/** The builder puts a content hash into the names under `assets/`: such a file never changes. */
const neverChanges = /^assets\/.+-[A-Za-z0-9_-]{8,}\.\w+$/

/**
 * One file of the built window, or undefined when `path` (relative, as asked) names none.
 *
 * Confined: plain names only, a known type only, and the file's real place must lie in the folder, so that neither
 * '..', an encoded slash nor a link leads out.
 */
export const rendererFile = async (folder: string, path: string): Promise<Served | undefined> => {
  const wanted = path === '' ? 'index.html' : path
  if (!wanted.split('/').every((segment) => plainSegment.test(segment))) return undefined
  const type = types[extname(wanted).toLowerCase()]
  if (type === undefined) return undefined
  try {
    const home = await realpath(folder)
    const place = await realpath(join(home, ...wanted.split('/')))
    if (!place.startsWith(home + sep)) return undefined
    return { bytes: await readFile(place), type, cache: neverChanges.test(wanted) ? 'for ever' : 'ask again' }
  } catch {
    return undefined
  }
}
