import sharp from 'sharp'

export const photographWidthPx = 4000
export const photographHeightPx = 3000

/** A repeatable source of chance, 0 to 1 (mulberry32). */
export const chance = (seed: number): (() => number) => {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

const noiseLayer = async (cellPx: number, next: () => number): Promise<Buffer> => {
  const width = Math.ceil(photographWidthPx / cellPx)
  const height = Math.ceil(photographHeightPx / cellPx)
  const grains = Buffer.alloc(width * height)
  for (let i = 0; i < grains.length; i++) grains[i] = next() * 256
  return sharp(grains, { raw: { width, height, channels: 1 } })
    .resize({ width: photographWidthPx, height: photographHeightPx, fit: 'fill', kernel: 'cubic' })
    .extractChannel(0)
    .raw()
    .toBuffer()
}

/** Cell size of each layer of detail and how strong it is: coarse light and shade down to the grain of a sensor. */
const layers = [[400, 0.42], [120, 0.3], [40, 0.2], [12, 0.14], [4, 0.08], [1, 0.07]] as const

interface Thing { readonly x: number; readonly y: number; readonly rx: number; readonly ry: number; readonly square: boolean; readonly colour: readonly [number, number, number] }

const things = (next: () => number): Thing[] =>
  Array.from({ length: 70 }, () => {
    const size = 30 + 500 * next() ** 3
    return { x: next() * photographWidthPx, y: next() * photographHeightPx, rx: size, ry: size * (0.2 + next()), square: next() < 0.5, colour: [next() * 200, next() * 200, next() * 200] }
  })

const paint = (pixels: Buffer, thing: Thing): void => {
  const [top, bottom] = [Math.max(0, Math.floor(thing.y - thing.ry)), Math.min(photographHeightPx, Math.ceil(thing.y + thing.ry))]
  for (let y = top; y < bottom; y++) {
    const across = thing.square ? thing.rx : thing.rx * Math.sqrt(Math.max(0, 1 - ((y - thing.y) / thing.ry) ** 2))
    const [left, right] = [Math.max(0, Math.floor(thing.x - across)), Math.min(photographWidthPx, Math.ceil(thing.x + across))]
    for (let x = left; x < right; x++) for (let channel = 0; channel < 3; channel++) pixels[(y * photographWidthPx + x) * 3 + channel] = thing.colour[channel] ?? 0
  }
}

/**
 * A JPEG of 4000 x 3000 px, 3 to 4 MB, with the detail of a real photograph: soft light, hard edges, rough surfaces and
 * the grain of a sensor. The same seed gives the same picture.
 */
export const twelveMegapixels = async (seed: number): Promise<Buffer> => {
  const next = chance(seed)
  const pixels = Buffer.alloc(photographWidthPx * photographHeightPx * 3, 110)
  for (const thing of things(next)) paint(pixels, thing)
  for (const [cellPx, strength] of layers) {
    const noise = await noiseLayer(cellPx, next)
    for (let i = 0; i < pixels.length; i++) {
      const shifted = (pixels[i] ?? 0) + ((noise[(i / 3) | 0] ?? 0) - 128) * strength
      pixels[i] = shifted < 0 ? 0 : shifted > 255 ? 255 : shifted
    }
  }
  return sharp(pixels, { raw: { width: photographWidthPx, height: photographHeightPx, channels: 3 } }).jpeg({ quality: 90, chromaSubsampling: '4:2:0' }).toBuffer()
}

/** The same picture as another file: a comment with this number is put in behind the JPEG's first marker. */
export const withComment = (jpeg: Buffer, number: number): Buffer => {
  const text = Buffer.from(`photograph ${String(number).padStart(4, '0')}`)
  const head = Buffer.from([0xff, 0xfe, 0, text.length + 2])
  return Buffer.concat([jpeg.subarray(0, 2), head, text, jpeg.subarray(2)])
}
