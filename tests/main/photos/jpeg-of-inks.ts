type Inks = readonly [cyan: number, magenta: number, yellow: number, black: number]

const segment = (marker: number, ...body: readonly number[]): Buffer => Buffer.from([0xff, marker, (body.length + 2) >> 8, (body.length + 2) & 0xff, ...body])

/** One bit string of the samples: a jump from nought in the first block, none in the second; each block ends there. */
const scanOf = (samples: readonly number[], blocks: number): Buffer => {
  let bits = ''
  for (let block = 0; block < blocks; block++)
    for (const sample of samples) {
      const jump = block === 0 ? 8 * (sample - 128) : 0
      const length = Math.abs(jump).toString(2).length * (jump === 0 ? 0 : 1)
      const written = jump < 0 ? jump + 2 ** length - 1 : jump
      bits += length.toString(2).padStart(4, '0') + (length === 0 ? '' : written.toString(2).padStart(length, '0')) + '0'
    }
  const bytes = bits.padEnd(Math.ceil(bits.length / 8) * 8, '1').match(/.{8}/g) ?? []
  return Buffer.from(bytes.map((byte) => Number.parseInt(byte, 2)).flatMap((byte) => (byte === 0xff ? [0xff, 0] : [byte])))
}

/**
 * How the samples stand in the file. Every program writes the paper left bare, 255 for none of an ink: with or without
 * the marker that says who wrote it, or turned into lightness and colour besides.
 */
export type InkLayout = 'bare' | 'marked' | 'marked, lightness and colour'

/** Source: ITU-T T.872, 6.5.3 and T.871, 7: CMY as 255 less red, green and blue, these as Y, Cb and Cr; black as it is. */
const asLightness = ([c, m, y, k]: Inks): readonly number[] => {
  const [r, g, b] = [255 - c, 255 - m, 255 - y]
  const light = 0.299 * r + 0.587 * g + 0.114 * b
  return [light, (b - light) / 1.772 + 128, (r - light) / 1.402 + 128, k].map((sample) => Math.min(255, Math.max(0, Math.round(sample))))
}

/** A JPEG of 16 x 16 px in four inks, 0 to 255 each, all of one colour, without a profile. Source: ITU-T T.81, annexes B and F; the marker, APP14: T.872, 6.5.3. */
export const jpegOfInks = ([c, m, y, k]: Inks, layout: InkLayout): Buffer => {
  const components = [1, 2, 3, 4]
  const paper: Inks = [255 - c, 255 - m, 255 - y, 255 - k]
  const isLightness = layout === 'marked, lightness and colour'
  return Buffer.concat([
    Buffer.from([0xff, 0xd8]),
    ...(layout === 'bare' ? [] : [segment(0xee, ...Buffer.from('Adobe'), 0, 100, 0, 0, 0, 0, isLightness ? 2 : 0)]),
    segment(0xdb, 0, ...Array.from({ length: 64 }, () => 1)),
    segment(0xc0, 8, 0, 16, 0, 16, 4, ...components.flatMap((id) => [id, 0x11, 0])),
    segment(0xc4, 0x00, 0, 0, 0, 12, ...Array.from({ length: 12 }, () => 0), ...Array.from({ length: 12 }, (_, index) => index)),
    segment(0xc4, 0x10, 1, ...Array.from({ length: 15 }, () => 0), 0),
    segment(0xda, 4, ...components.flatMap((id) => [id, 0]), 0, 63, 0),
    scanOf(isLightness ? asLightness(paper) : paper, 4),
    Buffer.from([0xff, 0xd9]),
  ])
}
