/** Decoded pixels in one piece with room around them, so that a TIFF grows round them without copying. */
export interface RoomyPixels {
  readonly width: number
  readonly height: number
  /** 3, or 4 with a see-through ground. */
  readonly channels: number
  /** Over 8: two bytes a sample, little-endian, over the whole range. */
  readonly depthBits: number
  /** `tiffHeadBytes` free, the pixels, and `tiffTailBytes` or more free. */
  readonly data: Uint8Array
}

export const tiffHeadBytes = 8
const rowsPerStrip = 64
const mostRows = 65_535
const entryBytes = 12
/** Directory, lists of strips, bits a sample; the profile comes on top. */
export const tiffTailBytes = (profileBytes: number): number => 256 + 8 * Math.ceil(mostRows / rowsPerStrip) + profileBytes

/** Field types: 3 of two bytes, 4 of four, 7 of any bytes. Source: TIFF 6.0, section 2. */
type Entry = readonly [tag: number, type: 3 | 4, values: readonly number[]] | readonly [tag: number, type: 7, bytes: Uint8Array]

const widthOf = { 3: 2, 4: 4, 7: 1 } as const

/**
 * Wraps pixels into an uncompressed TIFF with a colour profile, in place, so that the imaging library turns their
 * colours as it does for any file. Source: TIFF 6.0; profile: ICC.1:2010, annex B.4, tag 34675.
 */
export const wrapInTiff = ({ width, height, channels, depthBits, data }: RoomyPixels, profile: Uint8Array | undefined): Buffer => {
  const file = Buffer.from(data.buffer, data.byteOffset, data.byteLength)
  const bits = depthBits > 8 ? 16 : 8
  const rowBytes = (width * channels * bits) / 8
  const strips = Array.from({ length: Math.ceil(height / rowsPerStrip) }, (_, index) => index)
  const entries: Entry[] = [
    [256, 4, [width]], [257, 4, [height]],
    [258, 3, Array.from({ length: channels }, () => bits)],
    [259, 3, [1]], [262, 3, [2]],
    [273, 4, strips.map((strip) => tiffHeadBytes + strip * rowsPerStrip * rowBytes)],
    [277, 3, [channels]], [278, 4, [rowsPerStrip]],
    [279, 4, strips.map((strip) => Math.min(rowsPerStrip, height - strip * rowsPerStrip) * rowBytes)],
    [284, 3, [1]],
    ...(channels === 4 ? [[338, 3, [2]] as const] : []),
    ...(profile === undefined ? [] : [[34_675, 7, profile] as const]),
  ]
  const directory = tiffHeadBytes + rowBytes * height
  file.write('II*\0', 0, 'latin1')
  file.writeUInt32LE(directory, 4)
  file.writeUInt16LE(entries.length, directory)
  let behind = directory + 2 + entries.length * entryBytes + 4
  file.writeUInt32LE(0, behind - 4)
  for (const [index, [tag, type, values]] of entries.entries()) {
    const at = directory + 2 + index * entryBytes
    const byteCount = values.length * widthOf[type]
    file.writeUInt16LE(tag, at)
    file.writeUInt16LE(type, at + 2)
    file.writeUInt32LE(values.length, at + 4)
    file.writeUInt32LE(0, at + 8)
    const valuesAt = byteCount <= 4 ? at + 8 : behind
    if (byteCount > 4) {
      file.writeUInt32LE(behind, at + 8)
      behind += byteCount
    }
    if (type === 7) file.set(values, valuesAt)
    else for (const [place, value] of values.entries()) file.writeUIntLE(value, valuesAt + place * widthOf[type], widthOf[type])
  }
  return file.subarray(0, behind)
}
