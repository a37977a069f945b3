import sharp from 'sharp'
import type { Pixels } from './decoder'

const smallEdgePx = 320
const smallQuality = 72

/** A report of 100 photographs has to stay under 15 MB: at most 140 kB each, the rest for its pages; 5 kB for a poor forecast. */
const largeByteTarget = 135_000

/** The forecast is made from every fourth band of 16 rows, the height of a JPEG block. */
const bandRows = 16
const bandStep = 4
const forecastQuality = 56

/**
 * Qualities, best first, and what the picture will weigh at each against the plain forecast encoding of the same pixels.
 * Measured on generated 12 MP photographs at 1600 px; `tests/main/photos/previews.test.ts` holds them to it.
 */
const qualities = [
  { quality: 84, share: 1.78 },
  { quality: 78, share: 1.42 },
  { quality: 72, share: 1.2 },
  { quality: 66, share: 1.02 },
  { quality: 60, share: 0.905 },
  { quality: 54, share: 0.81 },
  { quality: 48, share: 0.72 },
] as const

/** Taken for what is too restless for any of them: then the weight gives way, not the evidence. */
const leastQuality = 42

export interface Previews {
  readonly large: Buffer
  readonly small: Buffer
}

/** Every fourth band of rows below one another: a quarter of the pixels, with the whole picture's mixture of detail. */
const sampleOf = ({ data, raw }: Pixels): Pixels => {
  const rowBytes = raw.width * raw.channels
  const bands: Buffer[] = []
  for (let row = 0; row < raw.height; row += bandRows * bandStep) bands.push(data.subarray(row * rowBytes, Math.min(row + bandRows, raw.height) * rowBytes))
  const sampled = Buffer.concat(bands)
  return { data: sampled, raw: { ...raw, height: sampled.byteLength / rowBytes } }
}

/** About how many bytes the whole picture takes in the plain forecast encoding. */
const forecastBytes = async (pixels: Pixels): Promise<number> => {
  const sample = sampleOf(pixels)
  const encoded = await sharp(sample.data, { raw: sample.raw }).jpeg({ quality: forecastQuality, quantisationTable: 3 }).toBuffer()
  return (encoded.byteLength * pixels.raw.height) / sample.raw.height
}

/** One encoding only, because it is the dearest step: the quality is chosen by forecast, not by trying. */
const encodeLarge = async (pixels: Pixels): Promise<Buffer> => {
  const plain = await forecastBytes(pixels)
  const chosen = qualities.find(({ share }) => plain * share <= largeByteTarget) 
  return sharp(pixels.data, { raw: pixels.raw }).jpeg({ quality: chosen?.quality ?? leastQuality, mozjpeg: true }).toBuffer()
}

const encodeSmall = (pixels: Pixels): Promise<Buffer> =>
  sharp(pixels.data, { raw: pixels.raw })
    .resize({ width: smallEdgePx, height: smallEdgePx, fit: 'inside', withoutEnlargement: true })
    .jpeg({ quality: smallQuality })
    .toBuffer()

/** Both previews as JPEG in sRGB without any metadata: long edge 1600 px, sharp enough to judge by, and 320 px for lists. */
export const makePreviews = async (pixels: Pixels): Promise<Previews> => ({ large: await encodeLarge(pixels), small: await encodeSmall(pixels) })
