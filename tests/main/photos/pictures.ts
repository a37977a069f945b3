import sharp from 'sharp'

type Colour = readonly [number, number, number]
export const red: Colour = [220, 30, 30]
export const green: Colour = [30, 180, 40]
export const blue: Colour = [30, 50, 210]
export const grey: Colour = [128, 128, 128]

export const quarteredWidthPx = 480
export const quarteredHeightPx = 320

/** What stands at a place of the upright picture: red top left, green top right, blue bottom left, grey bottom right. */
export const quarterAt = (x: number, y: number): Colour => {
  const isLeft = x < quarteredWidthPx / 2
  if (y < quarteredHeightPx / 2) return isLeft ? red : green
  return isLeft ? blue : grey
}

/** Where the stored row and column are to be shown, by orientation. Source: EXIF 2.32, tag 274 (0x0112) Orientation. */
const shownAt = (orientation: number, row: number, column: number): readonly [x: number, y: number] => {
  const [right, bottom] = [quarteredWidthPx - 1, quarteredHeightPx - 1]
  switch (orientation) {
    case 2: return [right - column, row]
    case 3: return [right - column, bottom - row]
    case 4: return [column, bottom - row]
    case 5: return [row, column]
    case 6: return [right - row, column]
    case 7: return [right - row, bottom - column]
    case 8: return [row, bottom - column]
    default: return [column, row]
  }
}

/** A JPEG whose pixels are stored turned as `orientation` says, with the tag that turns them back. */
export const turnedJpeg = (orientation: number): Promise<Buffer> => {
  const isOnSide = orientation >= 5
  const [width, height] = isOnSide ? [quarteredHeightPx, quarteredWidthPx] : [quarteredWidthPx, quarteredHeightPx]
  const pixels = Buffer.alloc(width * height * 3)
  for (let row = 0; row < height; row++)
    for (let column = 0; column < width; column++) pixels.set(quarterAt(...shownAt(orientation, row, column)), (row * width + column) * 3)
  return sharp(pixels, { raw: { width, height, channels: 3 } }).withMetadata({ orientation }).jpeg({ quality: 95 }).toBuffer()
}

export const plain = (colour: Colour = red, width = 60, height = 40) => sharp({ create: { width, height, channels: 3, background: { r: colour[0], g: colour[1], b: colour[2] } } })

/** The colour of one pixel, by share of width and height. */
export const colourAt = async (picture: Uint8Array, acrossShare: number, downShare: number): Promise<Colour> => {
  const { data, info } = await sharp(picture).removeAlpha().raw().toBuffer({ resolveWithObject: true })
  const at = (Math.floor(info.height * downShare) * info.width + Math.floor(info.width * acrossShare)) * info.channels
  return [data[at] ?? -1, data[at + 1] ?? -1, data[at + 2] ?? -1]
}

/** The largest difference of a channel between two colours. */
export const differenceOf = (a: Colour, b: Colour): number => Math.max(...a.map((channel, index) => Math.abs(channel - (b[index] ?? 0))))
