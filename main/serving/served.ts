/** A file on its way to the window. `fileName`: what it is called when it is saved. */
export interface Served {
  readonly bytes: Uint8Array
  readonly type: string
  readonly cache: 'for ever' | 'ask again' | 'never'
  readonly fileName?: string
}

const cacheHeaders: Readonly<Record<Served['cache'], string>> = {
  'for ever': 'private, max-age=31536000, immutable',
  'ask again': 'no-cache',
  never: 'no-store',
}

/** Only letters, digits and a few marks reach the header: a name can bring no second header with it. */
const plainName = (name: string): string => name.replaceAll(/[^A-Za-z0-9._ -]/g, '_')

/** The headers that describe the file; `safeHeaders` go beside them. */
export const fileHeaders = (served: Served): Record<string, string> => ({
  'Content-Type': served.type,
  'Content-Length': String(served.bytes.byteLength),
  'Cache-Control': cacheHeaders[served.cache],
  ...(served.fileName !== undefined && { 'Content-Disposition': `inline; filename="${plainName(served.fileName)}"` }),
})
