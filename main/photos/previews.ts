import sharp from 'sharp'
import type { Pixels } from './decoder'

const smallEdgePx = 320

/** A report of 100 photographs has to stay under 15 MB: 140 kB each, the rest for its pages. */
const largeByteLimit = 140_000
/** Tried from the best on until the picture is light enough; the last is kept whatever it weighs. */
const largeQualities = [80, 68, 56, 44] as const
const smallQuality = 72

export interface Previews {
  readonly large: Buffer
  readonly small: Buffer
}

const encode = (pixels: Pixels, quality: number): Promise<Buffer> =>
  sharp(pixels.data, { raw: pixels.raw }).jpeg({ quality, progressive: true }).toBuffer()

const encodeLarge = async (pixels: Pixels): Promise<Buffer> => {
  let large: Buffer = Buffer.alloc(0)
  for (const quality of largeQualities) {
    large = await encode(pixels, quality)
    if (large.byteLength <= largeByteLimit) break
  }
  return large
}

const encodeSmall = (pixels: Pixels): Promise<Buffer> =>
  sharp(pixels.data, { raw: pixels.raw })
    .resize({ width: smallEdgePx, height: smallEdgePx, fit: 'inside', withoutEnlargement: true })
    .jpeg({ quality: smallQuality })
    .toBuffer()

/** Both previews as JPEG in sRGB without any metadata: long edge 1600 px, sharp enough to judge by, and 320 px for lists. */
export const makePreviews = async (pixels: Pixels): Promise<Previews> => ({ large: await encodeLarge(pixels), small: await encodeSmall(pixels) })

