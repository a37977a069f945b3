import type { UnitSystem } from '../units/quantity'
import { inchM } from '../units/unit-table'
import type { PixelPoint, Scale } from './measurement'
import type { PictureSize } from './picture-size'
import { adjugateOf, nearnessAt, surfaceMapOf, toSurface, type SurfaceMap } from './surface-map'

/** A bar of a round length lying in the surface, for drawing over the photograph; px of the original. */
export interface ScaleBar {
  readonly from: PixelPoint
  readonly to: PixelPoint
  readonly lengthM: number
  /** '50 mm', '2 in'. */
  readonly label: string
}

const rounds: Readonly<Record<UnitSystem, { readonly unitM: number; readonly symbol: string; readonly lengths: readonly number[] }>> = {
  metric: { unitM: 0.001, symbol: 'mm', lengths: [1000, 500, 200, 100, 50, 20, 10, 5, 2, 1] },
  us: { unitM: inchM, symbol: 'in', lengths: [40, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1] },
}

/** The longest round length of the reader's unit that is no longer than this; the shortest where none is. */
export const roundLengthWithin = (mostM: number, system: UnitSystem): Pick<ScaleBar, 'lengthM' | 'label'> => {
  const { unitM, symbol, lengths } = rounds[system]
  const length = lengths.find((each) => each * unitM <= mostM) ?? lengths.at(-1) ?? 1
  return { lengthM: length * unitM, label: `${length} ${symbol}` }
}

/** The most of the picture's width a bar takes, and where its left end stands: below the spot, clear of the border. */
const mostOfWidth = 0.3
const clearOfBorder = 0.06

const toPicture = (map: SurfaceMap, [u, v]: PixelPoint): PixelPoint => {
  const back = adjugateOf(map)
  const nearness = nearnessAt(back, u, v)
  return [(back[0] * u + back[1] * v + back[2]) / nearness, (back[3] * u + back[4] * v + back[5]) / nearness]
}

const within = (value: number, size: number): number => Math.min(size * (1 - clearOfBorder), Math.max(size * clearOfBorder, value))

/** Where the bar begins: under the lowest point of the spot, at its left. */
const startBelow = (around: readonly PixelPoint[], { widthPx, heightPx }: PictureSize): PixelPoint => {
  const left = Math.min(...around.map(([x]) => x))
  const foot = Math.max(...around.map(([, y]) => y))
  return [Math.min(within(left, widthPx), widthPx * (1 - mostOfWidth - clearOfBorder)), within(foot + heightPx * clearOfBorder, heightPx)]
}

/**
 * The longest bar of a round length that takes no more than three tenths of the picture, just below the spot and following the perspective;
 * undefined where none fits. `around`: points of the spot. Source: plane geometry.
 */
export const scaleBarOf = (scale: Scale, around: readonly PixelPoint[], picture: PictureSize, system: UnitSystem): ScaleBar | undefined => {
  const map = surfaceMapOf(scale)
  const from = startBelow(around, picture)
  const [u, v] = toSurface(map, from)
  const [aheadU, aheadV] = toSurface(map, [from[0] + 1, from[1]])
  const step = Math.hypot(aheadU - u, aheadV - v)
  const { unitM, symbol, lengths } = rounds[system]
  for (const length of lengths) {
    const reach = (length * unitM) / step
    const to = toPicture(map, [u + (aheadU - u) * reach, v + (aheadV - v) * reach])
    if (to[0] > from[0] && to[0] - from[0] <= picture.widthPx * mostOfWidth) return { from, to, lengthM: length * unitM, label: `${length} ${symbol}` }
  }
  return undefined
}
