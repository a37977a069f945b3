import type { PixelPoint } from '../../shared-logic/measuring/measurement'

/** RGB, 8 bits each, row by row. */
export interface Canvas {
  readonly width: number
  readonly height: number
  readonly data: Buffer
}

type Colour = readonly [number, number, number]

const blend = ({ width, data }: Canvas, x: number, y: number, colour: Colour, cover: number): void => {
  const at = (y * width + x) * 3
  for (const [channel, value] of colour.entries()) data[at + channel] = Math.round((data[at + channel] ?? 0) * (1 - cover) + value * cover)
}

const distanceToLine = (x: number, y: number, [x1, y1]: PixelPoint, [x2, y2]: PixelPoint): number => {
  const [longX, longY] = [x2 - x1, y2 - y1]
  const along = Math.min(1, Math.max(0, ((x - x1) * longX + (y - y1) * longY) / (longX * longX + longY * longY || 1)))
  return Math.hypot(x - x1 - along * longX, y - y1 - along * longY)
}

/** A straight line with round ends, its border smoothed over one pixel. */
const drawLine = (canvas: Canvas, from: PixelPoint, to: PixelPoint, widthPx: number, colour: Colour): void => {
  const reach = widthPx / 2 + 1
  const firstX = Math.max(0, Math.floor(Math.min(from[0], to[0]) - reach))
  const lastX = Math.min(canvas.width - 1, Math.ceil(Math.max(from[0], to[0]) + reach))
  const firstY = Math.max(0, Math.floor(Math.min(from[1], to[1]) - reach))
  const lastY = Math.min(canvas.height - 1, Math.ceil(Math.max(from[1], to[1]) + reach))
  for (let y = firstY; y <= lastY; y += 1)
    for (let x = firstX; x <= lastX; x += 1) {
      const cover = Math.min(1, Math.max(0, widthPx / 2 + 0.5 - distanceToLine(x + 0.5, y + 0.5, from, to)))
      if (cover > 0) blend(canvas, x, y, colour, cover)
    }
}

export const white: Colour = [255, 255, 255]
export const black: Colour = [17, 20, 24]

/** A line of points, closed or open, black in a white casing: seen on rust, on zinc and in the dark alike. */
export const drawPath = (canvas: Canvas, points: readonly PixelPoint[], isClosed: boolean, weightPx: number): void => {
  const ends = isClosed ? [...points.slice(1), ...points.slice(0, 1)] : points.slice(1)
  for (const [casing, colour] of [[weightPx * 2.2, white], [weightPx, black]] as const)
    for (const [index, to] of ends.entries()) drawLine(canvas, points[index] ?? to, to, casing, colour)
}
