import { refuse } from '../contract/refusal'
import type { PixelPoint } from './measurement'
import { originalPxPerWorkingPx, type PictureSize } from './picture-size'
import { contains, crossesItself, distanceToBorder, edgesOf, polygonArea } from './polygon'
import { faceSlackPx } from './reading-errors'
import { isOnPicture } from './scale'

type Part = 'outline' | 'face'

/** Refuses (`measure.outline-…` or `measure.face-…`) a polygon that leaves the picture, crosses itself or encloses nothing. */
export const checkPolygon = (part: Part, points: readonly PixelPoint[], picture: PictureSize): void => {
  if (!points.every((point) => isOnPicture(picture, point))) refuse(`measure.${part}-outside-picture`, {}, part)
  if (crossesItself(points)) refuse(`measure.${part}-crossed`, {}, part)
  if (polygonArea(points) === 0) refuse(`measure.${part}-empty`, {}, part)
}

/** Points along the outline, none further from the next than `gapPx`. */
const alongOutline = (points: readonly PixelPoint[], gapPx: number): PixelPoint[] =>
  edgesOf(points).flatMap(([[x1, y1], [x2, y2]]) => {
    const parts = Math.max(1, Math.ceil(Math.hypot(x2 - x1, y2 - y1) / gapPx))
    return Array.from({ length: parts }, (_, part): PixelPoint => [x1 + ((x2 - x1) * part) / parts, y1 + ((y2 - y1) * part) / parts])
  })

/** Refuses an outline that leaves its face by more than the hand's own error. */
export const checkWithinFace = (outline: readonly PixelPoint[], face: readonly PixelPoint[], picture: PictureSize): void => {
  const slackPx = faceSlackPx * originalPxPerWorkingPx(picture)
  const leaves = alongOutline(outline, 2 * slackPx).some((point) => !contains(face, point) && distanceToBorder(face, point) > slackPx)
  if (leaves) refuse('measure.outline-outside-face', {}, 'outline')
}
