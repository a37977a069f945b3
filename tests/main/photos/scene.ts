import sharp, { type Sharp } from 'sharp'
import { quarterAt, quarteredHeightPx, quarteredWidthPx } from './pictures'

/**
 * A scene of our own: four coloured quarters, lighter from left to right, with a light ball in the upper left. Turned
 * or mirrored it is another picture. The files in fixtures/ show it.
 */
export const sceneAt = (x: number, y: number): readonly [number, number, number] => {
  const isBall = Math.hypot(x - 150, y - 120) < 50
  const light = 0.75 + (0.25 * x) / quarteredWidthPx
  const [r, g, b] = isBall ? [236, 214, 120] : quarterAt(x, y)
  return [Math.round(r * light), Math.round(g * light), Math.round(b * light)]
}

export const scenePixels = (left = 0, top = 0, width = quarteredWidthPx, height = quarteredHeightPx): Buffer => {
  const pixels = Buffer.alloc(width * height * 3)
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) pixels.set(sceneAt(left + x, top + y), (y * width + x) * 3)
  return pixels
}

export const scene = (): Sharp => sharp(scenePixels(), { raw: { width: quarteredWidthPx, height: quarteredHeightPx, channels: 3 } })

/** How like the scene a picture of its size is, in decibel of noise: over 30 the eye finds little. */
export const likenessToScene = async (picture: Uint8Array, wanted: Sharp = scene()): Promise<number> => {
  const shown = await sharp(picture).removeAlpha().raw().toBuffer({ resolveWithObject: true })
  const { data, info } = await wanted.raw().toBuffer({ resolveWithObject: true })
  if (shown.info.width !== info.width || shown.info.height !== info.height) throw new Error(`${shown.info.width} x ${shown.info.height} px`)
  let squares = 0
  for (const [index, value] of data.entries()) squares += (value - (shown.data[index] ?? 0)) ** 2
  return 10 * Math.log10(255 ** 2 / (squares / data.byteLength))
}
