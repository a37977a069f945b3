import { join } from 'node:path'
import { formats, photographFormats, type PhotographFormat } from './formats'

/** Where a photograph's files lie under the shelf's folder. A name that is no SHA-256 has no place. */
const sha256Form = /^[0-9a-f]{64}$/
export const isSha256 = (text: string): boolean => sha256Form.test(text)

const endings = photographFormats.map((format) => formats[format].extension)
const originalName = new RegExp(`^([0-9a-f]{64})\\.(?:${endings.join('|')})$`)
const previewName = /^([0-9a-f]{64})\.jpg$/

/** The SHA-256 an original or preview is of by its file name; undefined for a file that is not ours. */
export const shaOfOriginal = (name: string): string | undefined => originalName.exec(name)?.[1]
export const shaOfPreview = (name: string): string | undefined => previewName.exec(name)?.[1]

export interface Folders {
  readonly originals: string
  readonly previews: readonly string[]
  /** Originals no row names, moved here by the sweep and never deleted by it. */
  readonly unrecorded: string
  original(sha256: string, format: PhotographFormat): string
  preview(sha256: string, size: 'small' | 'large'): string
}

export const foldersOf = (root: string): Folders => {
  const originals = join(root, 'originals')
  const previewFolder = (size: 'small' | 'large'): string => join(root, 'previews', size)
  return {
    originals,
    previews: [previewFolder('small'), previewFolder('large')],
    unrecorded: join(root, 'unrecorded'),
    original: (sha256, format) => join(originals, sha256.slice(0, 2), `${sha256}.${formats[format].extension}`),
    preview: (sha256, size) => join(previewFolder(size), sha256.slice(0, 2), `${sha256}.jpg`),
  }
}
