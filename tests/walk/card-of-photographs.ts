import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import sharp from 'sharp'
import { chance } from '../bench/twelve-megapixels'

/** A photograph on a camera's card: its path, its name, and the minute of the hour its camera says it was taken at. */
export interface OnCard {
  readonly path: string
  readonly name: string
  readonly minute: number
}

/** A sharp picture of boards and grain in a colour of its own, with the time the camera wrote. */
const picture = (index: number, minute: number): Promise<Buffer> => {
  const next = chance(index + 1)
  const [width, height] = [800, 600]
  const pixels = Buffer.alloc(width * height * 3)
  const boards = Array.from({ length: 12 }, () => [next() * 200 + 30, next() * 200 + 30, next() * 200 + 30] as const)
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) {
    const board = boards[Math.floor((x / width) * 12)] ?? [0, 0, 0]
    const grain = (next() - 0.5) * 40 - (y < 40 ? 60 : 0)
    for (let channel = 0; channel < 3; channel++) pixels[(y * width + x) * 3 + channel] = Math.max(0, Math.min(255, (board[channel] ?? 0) + grain))
  }
  const written = `2026:11:20 10:${String(minute).padStart(2, '0')}:00`
  return sharp(pixels, { raw: { width, height, channels: 3 } }).withExif({ IFD2: { DateTimeOriginal: written } }).jpeg({ quality: 85 }).toBuffer()
}

/** That many photographs, no two alike, named in order; their camera's clock runs the other way. */
export const fillCard = async (folder: string, count: number): Promise<OnCard[]> => {
  await mkdir(folder, { recursive: true })
  return Promise.all(Array.from({ length: count }, async (_, index): Promise<OnCard> => {
    const minute = (count - 1 - index) % 60
    const name = `DSC_${1000 + index}.jpg`
    const path = join(folder, name)
    await writeFile(path, await picture(index, minute))
    return { path, name, minute }
  }))
}
