import sharp, { type Metadata } from 'sharp'
import { refuse } from '../../shared-logic/contract/refusal'
import { largestPhotographBytes } from '../../shared-logic/photographs/limits'
import type { PhotographFormat } from './formats'
import { HeicFailure, heicAsTiff } from './heic'

/** Only these readers of the imaging library may run; vector pictures, documents and rarities are refused unread. */
const allowedLoaders = ['VipsForeignLoadJpeg', 'VipsForeignLoadPng', 'VipsForeignLoadWebp', 'VipsForeignLoadTiff', 'VipsForeignLoadHeif']
sharp.block({ operation: ['VipsForeignLoad'] })
sharp.unblock({ operation: allowedLoaders })

const megabyte = 1_000_000
export const byteLimit = largestPhotographBytes
const pixelLimit = 200_000_000
/** An interlaced PNG cannot be read row by row: all of it is held at once, and a file of a few kilobytes may ask for gigabytes. */
const heldWholeLimitBytes = 800 * megabyte

/** What a file's header says, once it is known to be a photograph that can be taken. */
export interface Header {
  readonly format: PhotographFormat
  /** After orientation. */
  readonly widthPx: number
  readonly heightPx: number
}

/** Pixels as the previews are made from: sRGB, 8 bits, upright, no alpha. */
export interface Pixels {
  readonly data: Buffer
  readonly raw: { readonly width: number; readonly height: number; readonly channels: 1 | 2 | 3 | 4 }
}

export const largeEdgePx = 1600

const openImage = (bytes: Uint8Array) => sharp(bytes, { limitInputPixels: pixelLimit, sequentialRead: true })

const refuseTooManyPixels = (name: string): never => refuse('photograph.too-many-pixels', { name, megapixels: pixelLimit / 1_000_000 })

const refuseUnread = (error: unknown, name: string, otherwise: string): never => {
  const message = error instanceof Error ? error.message : ''
  if (/pixel limit/i.test(message)) return refuseTooManyPixels(name)
  if (error instanceof HeicFailure && error.why === 'takes too much') return refuse('photograph.takes-too-much', { name })
  return refuse(otherwise, { name })
}

const heldWholeBytes = ({ format, isProgressive, width, height, channels, depth }: Metadata): number =>
  format === 'png' && isProgressive === true ? width * height * channels * (depth === 'ushort' ? 2 : 1) : 0

const formatOf = (format: string | undefined, compression: string | undefined, name: string): PhotographFormat => {
  if (format === 'jpeg' || format === 'png' || format === 'webp' || format === 'tiff' || format === 'avif') return format
  if (format === 'heif' && compression === 'hevc') return 'heic'
  return format === 'heif' && compression === 'av1' ? 'avif' : refuse('photograph.not-a-photograph', { name })
}

/** Brands of still pictures that can be taken, in a file's first box. Source: ISO/IEC 23008-12, annex B. */
const heifBrands = new Set(['heic', 'heix', 'heim', 'heis', 'mif1', 'avif'])

/** Whether the file begins as a HEIF, which is a family of formats: HEIC and AVIF among them. */
const beginsAsHeif = (bytes: Uint8Array): boolean => {
  const front = Buffer.from(bytes.subarray(4, 12)).toString('latin1')
  return front.startsWith('ftyp') && heifBrands.has(front.slice(4))
}

/** Reads the header alone, without decoding. Refuses what is empty, too large, no photograph, or of a format not taken. */
export const readHeader = async (bytes: Uint8Array, name: string): Promise<Header> => {
  if (bytes.byteLength === 0) return refuse('photograph.empty', { name })
  if (bytes.byteLength > byteLimit) return refuse('photograph.too-large', { name, megabytes: byteLimit / megabyte })
  const unread = beginsAsHeif(bytes) ? 'photograph.damaged' : 'photograph.not-a-photograph'
  const metadata = await openImage(bytes).metadata().catch((error: unknown) => refuseUnread(error, name, unread))
  const format = formatOf(metadata.format, metadata.compression, name)
  if (metadata.width * metadata.height > pixelLimit) return refuseTooManyPixels(name)
  if (heldWholeBytes(metadata) > heldWholeLimitBytes) return refuse('photograph.takes-too-much', { name })
  return { format, widthPx: metadata.autoOrient.width, heightPx: metadata.autoOrient.height }
}

/** What the imaging library can decode itself: the file as it is, but for a HEIC, of which it reads the header alone. */
const decodable = async (bytes: Uint8Array): Promise<Uint8Array> => {
  if (!beginsAsHeif(bytes)) return bytes
  const { compression, icc } = await openImage(bytes).metadata()
  return compression === 'hevc' ? heicAsTiff(bytes, icc) : bytes
}

/** Decodes the whole picture, upright and in sRGB, at most 1600 px on its long edge. Refuses what breaks off or is damaged. */
export const decode = async (bytes: Uint8Array, name: string): Promise<Pixels> => {
  const source = await decodable(bytes).catch((error: unknown) => refuseUnread(error, name, 'photograph.damaged'))
  const { data, info } = await openImage(source)
    .autoOrient()
    .resize({ width: largeEdgePx, height: largeEdgePx, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb')
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true })
    .catch((error: unknown) => refuseUnread(error, name, 'photograph.damaged'))
  return { data, raw: { width: info.width, height: info.height, channels: info.channels } }
}
