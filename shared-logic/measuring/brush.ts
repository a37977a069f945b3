import type { PixelPoint, Stroke } from './measurement'
import { stepsOf } from './mask'
import type { PictureSize } from './picture-size'
import type { Mask } from './pixels'

/** One straight pull of a round brush, px of the mask. */
interface Pull {
  readonly from: PixelPoint
  readonly to: PixelPoint
  readonly radius: number
}

/** Columns that the pull covers on the line y, as [first, last] real numbers; a round brush pulled straight covers one stretch of every line. */
const stretchAt = ({ from, to, radius }: Pull, y: number): PixelPoint | undefined => {
  const [alongX, alongY] = [to[0] - from[0], to[1] - from[1]]
  const long = Math.hypot(alongX, alongY)
  const xs = [from, to].flatMap(([x, centreY]) => {
    const half = Math.sqrt(radius ** 2 - (y - centreY) ** 2)
    return Number.isNaN(half) ? [] : [x - half, x + half]
  })
  if (long > 0 && alongY !== 0) {
    for (const side of [-1, 1]) {
      const [offX, offY] = [(-alongY / long) * radius * side, (alongX / long) * radius * side]
      const share = (y - from[1] - offY) / alongY
      if (share >= 0 && share <= 1) xs.push(from[0] + offX + share * alongX)
    }
  }
  return xs.length === 0 ? undefined : [Math.min(...xs), Math.max(...xs)]
}

const paintPull = (data: Uint8Array, { width, height }: Mask, pull: Pull, value: 0 | 1): void => {
  const firstRow = Math.max(0, Math.ceil(Math.min(pull.from[1], pull.to[1]) - pull.radius - 0.5))
  const lastRow = Math.min(height - 1, Math.floor(Math.max(pull.from[1], pull.to[1]) + pull.radius - 0.5))
  for (let row = firstRow; row <= lastRow; row += 1) {
    const stretch = stretchAt(pull, row + 0.5)
    if (!stretch) continue
    const from = Math.min(width, Math.max(0, Math.ceil(stretch[0] - 0.5)))
    const after = Math.min(width, Math.max(from, Math.floor(stretch[1] - 0.5) + 1))
    data.fill(value, row * width + from, row * width + after)
  }
}

/** The mask with the strokes added and erased in their order; a pixel is touched when the brush covers its centre. The mask given is left as it was. */
export const paintStrokes = (mask: Mask, strokes: readonly Stroke[], picture: PictureSize): Mask => {
  const data = mask.data.slice()
  const [stepX, stepY] = stepsOf(picture, mask)
  for (const { does, radiusPx, points } of strokes) {
    const centres = points.map(([x, y]): PixelPoint => [x / stepX, y / stepY])
    const radius = radiusPx / ((stepX + stepY) / 2)
    centres.forEach((to, index) => paintPull(data, mask, { from: centres[index - 1] ?? to, to, radius }, does === 'adds' ? 1 : 0))
  }
  return { ...mask, data }
}
