import sharp from 'sharp'
import type { Pixels } from '../../shared-logic/measuring/pixels'

/** RGBA of a picture as the window's canvas has it: the large preview, decoded. */
export const workingPixels = async (preview: Uint8Array): Promise<Pixels> => {
  const { data, info } = await sharp(preview).ensureAlpha().raw({ depth: 'uchar' }).toBuffer({ resolveWithObject: true })
  return { width: info.width, height: info.height, data: new Uint8Array(data.buffer, data.byteOffset, data.byteLength) }
}
