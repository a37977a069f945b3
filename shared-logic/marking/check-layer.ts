import { refuse } from '../contract/refusal'
import type { PixelPoint } from '../measuring/measurement'
import type { PictureSize } from '../measuring/picture-size'
import { checkScale, isOnPicture } from '../measuring/scale'
import type { Mark, MarkLayer } from './marks'

/** The points a mark is made of. */
export const pointsOf = (mark: Mark): readonly PixelPoint[] => {
  if (mark.kind === 'freehand') return mark.points
  return mark.kind === 'text' ? [mark.at] : [mark.from, mark.to]
}

/** All points in one place: nothing would be seen of it. */
const isOneSpot = (mark: Mark): boolean => {
  const [[x, y] = [0, 0], ...others] = pointsOf(mark)
  return mark.kind !== 'text' && others.every(([otherX, otherY]) => otherX === x && otherY === y)
}

/**
 * Refuses (field 'layer') a layer that does not lie on its picture: drawn on one of another size, a mark outside it or without size,
 * a known length that gives no scale (`measure.scale-…`).
 */
export const checkLayer = (layer: MarkLayer, { widthPx, heightPx }: PictureSize): void => {
  if (layer.widthPx !== widthPx || layer.heightPx !== heightPx) refuse('photograph.marks-of-another', { width: widthPx, height: heightPx }, 'layer')
  for (const [index, mark] of layer.marks.entries()) {
    if (!pointsOf(mark).every((point) => isOnPicture(layer, point))) refuse('photograph.mark-outside', { number: index + 1 }, 'layer')
    if (isOneSpot(mark)) refuse('photograph.mark-without-size', { number: index + 1 }, 'layer')
  }
  if (layer.scale !== undefined) checkScale(layer.scale, layer)
}
