import { workingEdgePx } from './pixels'

/** Size of the oriented original, px. */
export interface PictureSize {
  readonly widthPx: number
  readonly heightPx: number
}

/** How many px of the original lie along one px of the working picture; 1 where the original is no larger than that. */
export const originalPxPerWorkingPx = ({ widthPx, heightPx }: PictureSize): number => Math.max(1, Math.max(widthPx, heightPx) / workingEdgePx)

/** Size of the working picture: long edge 1600 px, never enlarged. */
export const workingSize = (picture: PictureSize): { readonly width: number; readonly height: number } => {
  const step = originalPxPerWorkingPx(picture)
  return { width: Math.max(1, Math.round(picture.widthPx / step)), height: Math.max(1, Math.round(picture.heightPx / step)) }
}
