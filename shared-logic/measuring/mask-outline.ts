import { stepsOf } from './mask'
import type { PixelPoint } from './measurement'
import type { PictureSize } from './picture-size'
import type { Mask } from './pixels'

/** Sides of pixels are walked with the inside on the right: rightwards along a top, down along a right side, and so on round. */
const [right, down, left, up] = [0, 1, 2, 3] as const
const stepX = [1, 0, -1, 0] as const
const stepY = [0, 1, 0, -1] as const

/** For every corner of the pixel grid, the directions in which a side leaves it, one bit each. */
const sidesOf = ({ width, height, data }: Mask): Uint8Array => {
  const sides = new Uint8Array((width + 1) * (height + 1))
  const corner = (x: number, y: number): number => y * (width + 1) + x
  const add = (at: number, direction: number): void => { sides[at] = (sides[at] ?? 0) | (1 << direction) }
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const at = y * width + x
      if (data[at] !== 1) continue
      if (y === 0 || data[at - width] !== 1) add(corner(x, y), right)
      if (x === width - 1 || data[at + 1] !== 1) add(corner(x + 1, y), down)
      if (y === height - 1 || data[at + width] !== 1) add(corner(x + 1, y + 1), left)
      if (x === 0 || data[at - 1] !== 1) add(corner(x, y + 1), up)
    }
  }
  return sides
}

/** Walks one ring from its first corner in reading order, taking its sides away; where two rings meet at a corner it turns right, so that pixels touching by a corner stay apart. */
const walkRing = (sides: Uint8Array, across: number, start: number): PixelPoint[] => {
  const ring: PixelPoint[] = []
  let [at, came]: [number, number] = [start, -1]
  do {
    const open = sides[at] ?? 0
    const directions = came < 0 ? [right, down, left, up] : [(came + 1) % 4, came, (came + 3) % 4]
    const direction = directions.find((candidate) => (open & (1 << candidate)) !== 0)
    if (direction === undefined) break
    sides[at] = open & ~(1 << direction)
    if (direction !== came) ring.push([at % across, Math.floor(at / across)])
    at += (stepX[direction] ?? 0) + (stepY[direction] ?? 0) * across
    came = direction
  } while (at !== start)
  return ring
}

const distance = ([x, y]: PixelPoint, [x1, y1]: PixelPoint, [x2, y2]: PixelPoint): number => {
  const long = Math.hypot(x2 - x1, y2 - y1)
  return long === 0 ? Math.hypot(x - x1, y - y1) : Math.abs((x2 - x1) * (y1 - y) - (x1 - x) * (y2 - y1)) / long
}

/** Leaves out points that stand off the line between their neighbours by no more than `slackPx` (Douglas and Peucker 1973), without recursion. */
const simplified = (ring: readonly PixelPoint[], slackPx: number): PixelPoint[] => {
  const closed = [...ring, ...ring.slice(0, 1)]
  const kept = new Uint8Array(closed.length)
  kept[0] = 1
  const open: [number, number][] = [[0, closed.length - 1]]
  for (let span = open.pop(); span; span = open.pop()) {
    const [first, last] = span
    let [furthest, most] = [first, slackPx]
    for (let index = first + 1; index < last; index += 1) {
      const off = distance(closed[index] ?? [0, 0], closed[first] ?? [0, 0], closed[last] ?? [0, 0])
      if (off > most) [furthest, most] = [index, off]
    }
    if (furthest === first) continue
    kept[furthest] = 1
    open.push([first, furthest], [furthest, last])
  }
  return ring.filter((_, index) => kept[index] === 1)
}

/**
 * The mask's borders as closed rings in px of the original, for drawing over the photograph: fill them by the even-odd rule, holes are rings like the others.
 * `slackPx`, in px of the mask, lets the rings off the pixels' stairs; 0 follows every side.
 */
export const maskOutline = (mask: Mask, picture: PictureSize, slackPx = 0.8): PixelPoint[][] => {
  const sides = sidesOf(mask)
  const [acrossPx, downPx] = stepsOf(picture, mask)
  const rings: PixelPoint[][] = []
  for (let corner = 0; corner < sides.length; corner += 1) {
    while (sides[corner] !== 0) {
      const ring = simplified(walkRing(sides, mask.width + 1, corner), slackPx)
      if (ring.length > 2) rings.push(ring.map(([x, y]): PixelPoint => [x * acrossPx, y * downPx]))
    }
  }
  return rings
}
