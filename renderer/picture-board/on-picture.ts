import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import { originalPxPerWorkingPx, type PictureSize } from '../../shared-logic/measuring/picture-size'

const clamp = (value: number, most: number): number => Math.min(most, Math.max(0, value))

/** To a tenth of a px and onto the picture. */
export const onPicture = ([x, y]: PixelPoint, { widthPx, heightPx }: PictureSize): PixelPoint => [Math.round(clamp(x, widthPx) * 10) / 10, Math.round(clamp(y, heightPx) * 10) / 10]

/** Steps of the arrow keys: one px of the picture as it is worked on, ten with Shift; px of the original. */
export const keyStep = (size: PictureSize, isLarge: boolean): number => originalPxPerWorkingPx(size) * (isLarge ? 10 : 1)

/** Where a point stands, as it is said: whole px of the original. */
export const wherePx = ([x, y]: PixelPoint): { x: number; y: number } => ({ x: Math.round(x), y: Math.round(y) })
