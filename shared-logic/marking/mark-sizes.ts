import type { PictureSize } from '../measuring/picture-size'

/** The largest a photograph stands in the report, points: sizes of marks are chosen for that, and shrink and grow with the picture. */
const printed = { width: 240, height: 180 }

/** A picture that is looked at so many times closer than the whole of it: its marks stay as large as they were on the screen, and hide less. */
export interface SeenCloser extends PictureSize {
  readonly closer?: number
}

/** Px of the picture to one point on the page. `size` is that of the picture as it is turned. */
export const pxPerPoint = ({ widthPx, heightPx, closer = 1 }: SeenCloser): number => Math.max(widthPx / printed.width, heightPx / printed.height) / closer

/** Points on the page. The casing goes round the core, so that one of the two shows on any ground. */
export const markSizes = {
  core: 0.9,
  casing: 2.5,
  headLong: 8,
  headWide: 6,
  /** Half the bar at either end of a measured length. */
  endBar: 3,
  text: 8,
  leading: 10,
  /** Round what is written. */
  padding: 2,
  /** Between a measured length and its figure. */
  gap: 2,
} as const
