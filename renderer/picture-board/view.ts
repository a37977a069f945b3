import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import { originalPxPerWorkingPx } from '../../shared-logic/measuring/picture-size'
import { onPicture } from './on-picture'

/** How the picture lies in its frame: px of the frame to one px of the original, and where its top left corner stands. */
export interface View {
  readonly scale: number
  readonly left: number
  readonly top: number
}

export interface FrameSize {
  readonly width: number
  readonly height: number
}

/** Px of the frame to one px of the preview, at the closest. */
const closest = 8

/** Left free round the picture, px of the frame: points on its border can be taken hold of. */
export const framePx = 22

const fitScale = ({ width, height }: FrameSize, { widthPx, heightPx }: PictureSize): number => Math.max(Math.min((width - 2 * framePx) / widthPx, (height - 2 * framePx) / heightPx), 1e-6)

/** The whole picture, in the middle. */
export const fitted = (frame: FrameSize, size: PictureSize): View => {
  const scale = fitScale(frame, size)
  return { scale, left: (frame.width - size.widthPx * scale) / 2, top: (frame.height - size.heightPx * scale) / 2 }
}

const held = (at: number, long: number, frame: number): number => (long <= frame - 2 * framePx ? (frame - long) / 2 : Math.min(framePx, Math.max(frame - long - framePx, at)))

/** Keeps the picture in its frame: no more than its margin beside it while it is larger, in the middle while it is smaller. */
const settled = ({ scale, left, top }: View, frame: FrameSize, size: PictureSize): View => ({ scale, left: held(left, size.widthPx * scale, frame.width), top: held(top, size.heightPx * scale, frame.height) })

/** Closer or further by a factor, what lies under `at` (px of the frame) staying there. */
export const zoomed = (view: View, by: number, at: PixelPoint, frame: FrameSize, size: PictureSize): View => {
  const scale = Math.min(Math.max(view.scale * by, fitScale(frame, size)), Math.max(closest / originalPxPerWorkingPx(size), fitScale(frame, size)))
  const factor = scale / view.scale
  return settled({ scale, left: at[0] - (at[0] - view.left) * factor, top: at[1] - (at[1] - view.top) * factor }, frame, size)
}

export const panned = (view: View, byX: number, byY: number, frame: FrameSize, size: PictureSize): View => settled({ ...view, left: view.left + byX, top: view.top + byY }, frame, size)

export const toFrame = ({ scale, left, top }: View, [x, y]: PixelPoint): PixelPoint => [x * scale + left, y * scale + top]
export const toPicture = ({ scale, left, top }: View, [x, y]: PixelPoint): PixelPoint => [(x - left) / scale, (y - top) / scale]

/** A tap this near beside the picture means its border; px of the frame. */
const borderPx = 12

/** Whether a place of the frame lies on the picture, or so near that its border is meant. */
export const isNearPicture = (view: View, place: PixelPoint, size: PictureSize): boolean => {
  const [x, y] = toFrame(view, onPicture(toPicture(view, place), size))
  return Math.hypot(place[0] - x, place[1] - y) <= borderPx
}

/** How far a place has to move to stand at least `room` from either end. */
const over = (at: number, room: number, long: number): number => (at < room ? room - at : at > long - room ? long - room - at : 0)

/** Moves the picture so that a point of it is well inside the frame. */
export const brought = (view: View, point: PixelPoint, frame: FrameSize, size: PictureSize): View => {
  const [x, y] = toFrame(view, point)
  const [roomX, roomY] = [Math.min(48, frame.width / 4), Math.min(48, frame.height / 4)]
  return panned(view, over(x, roomX, frame.width), over(y, roomY, frame.height), frame, size)
}
