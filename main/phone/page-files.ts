import { rendererFile } from '../serving/renderer-file'
import type { Served } from '../serving/served'

const page = 'phone.html'
const otherFile = /(?:assets\/|\.\/)([A-Za-z0-9_-][A-Za-z0-9._-]*\.(?:js|css|woff2?|svg|png))/g

const namesIn = (text: string, from: string): string[] =>
  Array.from(text.matchAll(otherFile), ([whole, name = '']) => (whole.startsWith('assets/') || from !== page ? `assets/${name}` : name))

/** The files of the phone's page in the built window: the page, and whatever it and its files name. Nothing else of the window goes through this door. */
const findFiles = async (rendererFolder: string): Promise<ReadonlySet<string>> => {
  const found = new Set<string>()
  const waiting = [page]
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (found.has(path)) continue
    const file = await rendererFile(rendererFolder, path)
    if (file === undefined) continue
    found.add(path)
    if (/\.(html|js|css)$/.test(path)) waiting.push(...namesIn(Buffer.from(file.bytes).toString('utf8'), path))
  }
  return found
}

export type PageFiles = (path: string) => Promise<Served | undefined>

/** Serves the phone's page at '' and its files; undefined for every other path. */
export const openPageFiles = (rendererFolder: string): PageFiles => {
  let finding: Promise<ReadonlySet<string>> | undefined
  return async (path) => {
    finding ??= findFiles(rendererFolder)
    const wanted = path === '' ? page : path
    return (await finding).has(wanted) ? rendererFile(rendererFolder, wanted) : undefined
  }
}
