import sharp from 'sharp'
import { openLanes } from '../../main/photos/lanes'
import { chance } from './twelve-megapixels'

/** Two megapixels: small enough that a bench is short; the previews come out as large as those of any photograph. */
export const widthPx = 1632
export const heightPx = 1224

/** Soft light, hard edges and grain, larger than a picture: each picture is a piece of it. */
const ground = async (seed: number, width: number, height: number): Promise<Buffer> => {
  const next = chance(seed)
  const soft = Buffer.alloc(48 * 36 * 3)
  for (let i = 0; i < soft.length; i++) soft[i] = 40 + next() * 180
  const light = await sharp(soft, { raw: { width: 48, height: 36, channels: 3 } }).resize({ width, height, fit: 'fill', kernel: 'cubic' }).raw().toBuffer()
  for (let block = 0; block < 400; block++) {
    const [x, y, w, h] = [next() * width, next() * height, 20 + next() * 220, 8 + next() * 160].map(Math.floor) as [number, number, number, number]
    const shade = next() * 220
    for (let row = y; row < Math.min(height, y + h); row++) for (let column = x; column < Math.min(width, x + w); column++) light.fill(shade, (row * width + column) * 3, (row * width + column) * 3 + 2)
  }
  for (let i = 0; i < light.length; i++) light[i] = Math.max(0, Math.min(255, (light[i] ?? 0) + (next() - 0.5) * 24))
  return light
}

/** That many different photographs of two megapixels, about 500 kB each: pieces of one ground in a hue and a light of their own. */
export const manyPhotographs = async (count: number, seed = 1): Promise<Buffer[]> => {
  const [width, height] = [widthPx * 2, heightPx * 2]
  const all = await ground(seed, width, height)
  const next = chance(seed + 1)
  const lanes = openLanes(2)
  const pieces = Array.from({ length: count }, (_, index) => ({ left: Math.floor(next() * widthPx), top: Math.floor(next() * heightPx), hue: (index * 47) % 360, brightness: 0.75 + next() * 0.5 }))
  return Promise.all(pieces.map(({ left, top, hue, brightness }) => lanes.run(() =>
    sharp(all, { raw: { width, height, channels: 3 } }).extract({ left, top, width: widthPx, height: heightPx }).modulate({ hue, brightness }).jpeg({ quality: 80 }).toBuffer())))
}
