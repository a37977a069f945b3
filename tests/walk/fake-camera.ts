import { open } from 'node:fs/promises'

export interface Rgb {
  readonly r: number
  readonly g: number
  readonly b: number
}

/** What stands before the camera: a colour for each quarter, left to right and top to bottom. */
export const quarters: readonly [Rgb, Rgb, Rgb, Rgb] = [{ r: 176, g: 60, b: 48 }, { r: 52, g: 128, b: 84 }, { r: 44, g: 84, b: 168 }, { r: 206, g: 176, b: 92 }]

/** Y'CbCr in the narrow range: ITU-R BT.601-7, 2.5.1 to 2.5.3. */
const toYcc = ({ r, g, b }: Rgb): readonly [y: number, cb: number, cr: number] => {
  const luma = 0.299 * r + 0.587 * g + 0.114 * b
  return [Math.round(16 + (luma * 219) / 255), Math.round(128 + ((b - luma) * 224) / (1.772 * 255)), Math.round(128 + ((r - luma) * 224) / (1.402 * 255))]
}

interface Film {
  readonly widthPx: number
  readonly heightPx: number
  readonly frames: number
  readonly framesPerSecond: number
}

/** Where the pattern of a quarter lies, as shares of its sides: the rest is its plain colour. */
const patternShare = 0.25
const markPx = 8

/**
 * A film for Chromium's fake camera: four coloured quarters, each with a striped corner, and along the middle line a
 * mark that wanders, so that no two frames are alike. YUV4MPEG2 with 4:2:0, as Chromium reads it.
 */
export const writeFilm = async (path: string, { widthPx, heightPx, frames, framesPerSecond }: Film): Promise<void> => {
  const [halfWidth, halfHeight] = [widthPx / 2, heightPx / 2]
  const y = Buffer.alloc(widthPx * heightPx)
  const cb = Buffer.alloc(halfWidth * halfHeight)
  const cr = Buffer.alloc(halfWidth * halfHeight)
  for (const [index, colour] of quarters.entries()) {
    const [luma, blue, red] = toYcc(colour)
    const [left, top] = [(index % 2) * halfWidth, Math.floor(index / 2) * halfHeight]
    for (let row = top; row < top + halfHeight; row += 1) {
      y.fill(luma, row * widthPx + left, row * widthPx + left + halfWidth)
      if (row - top < halfHeight * patternShare && row % 16 < 8) y.fill(235, row * widthPx + left, row * widthPx + left + halfWidth * patternShare)
    }
    for (let row = top / 2; row < (top + halfHeight) / 2; row += 1) {
      cb.fill(blue, row * halfWidth + left / 2, row * halfWidth + (left + halfWidth) / 2)
      cr.fill(red, row * halfWidth + left / 2, row * halfWidth + (left + halfWidth) / 2)
    }
  }
  const file = await open(path, 'w')
  try {
    await file.write(`YUV4MPEG2 W${widthPx} H${heightPx} F${framesPerSecond}:1 Ip A1:1 C420jpeg\n`)
    for (let frame = 0; frame < frames; frame += 1) {
      const marked = Buffer.from(y)
      const at = (frame * markPx) % (widthPx - markPx)
      for (let row = halfHeight - markPx / 2; row < halfHeight + markPx / 2; row += 1) marked.fill(frame % 2 === 0 ? 235 : 16, row * widthPx + at, row * widthPx + at + markPx)
      await file.write('FRAME\n')
      for (const plane of [marked, cb, cr]) await file.write(plane)
    }
  } finally {
    await file.close()
  }
}

/** The film as a camera plugged into the machine; permission is a matter of the context. */
export const cameraFlags = (film: string): readonly string[] => ['--use-fake-device-for-media-stream', `--use-file-for-fake-video-capture=${film}`]
/** A machine without any camera, also where it has one. */
export const noCameraFlags: readonly string[] = ['--use-fake-device-for-media-stream=device-count=0']
