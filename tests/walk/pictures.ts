import sharp from 'sharp'

export interface PictureFile {
  readonly name: string
  readonly mimeType: string
  readonly buffer: Buffer
}

/** A small photograph as a camera hands it over; another seed, another picture. */
export const photographFile = async (name: string, seed: number): Promise<PictureFile> => ({
  name, mimeType: 'image/jpeg',
  buffer: await sharp({ create: { width: 640, height: 480, channels: 3, background: { r: (seed * 53) % 256, g: (seed * 97) % 256, b: (seed * 31) % 256 } } }).jpeg().toBuffer(),
})

/** Words that call themselves a photograph. */
export const textNamedJpeg: PictureFile = { name: 'notes.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('left front hub, oil low') }

/** A photograph cut off in the middle of its picture, as a card pulled too early leaves it. */
export const truncatedJpeg = async (): Promise<PictureFile> => {
  const noise = Buffer.from(Uint8Array.from({ length: 320 * 240 * 3 }, (_, index) => (index * 7919) % 251))
  const whole = await sharp(noise, { raw: { width: 320, height: 240, channels: 3 } }).jpeg().toBuffer()
  return { name: 'cut-off.jpg', mimeType: 'image/jpeg', buffer: whole.subarray(0, Math.floor(whole.length / 2)) }
}
