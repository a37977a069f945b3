import type { Drawing, Shape } from '../drawings/drawing'
import type { PixelPoint } from '../measuring/measurement'
import { knownLines, markLines, waysOf } from './mark-lines'
import { markSizes, pxPerPoint, type SeenCloser } from './mark-sizes'
import type { MarkLayer } from './marks'
import { plateAt, plateShapes, plateSize, type Plate } from './plates'
import { sayKnown, sayLength, type Reader } from './say-marks'
import { turnedLayer } from './turned'

/** Beside the middle of a line, clear of its bars: above it, or to its right where it runs upright; or on the other side. */
const besideLine = (text: string, { from, to }: { readonly from: PixelPoint; readonly to: PixelPoint }, picture: SeenCloser, side: 'above' | 'below'): Plate => {
  const { across } = waysOf(from, to)
  const isBelow = across.y > 0.01 || (Math.abs(across.y) <= 0.01 && across.x < 0)
  const away = isBelow === (side === 'below') ? across : { x: -across.x, y: -across.y }
  const { width, height } = plateSize(text, picture)
  const off = (width * Math.abs(away.x) + height * Math.abs(away.y)) / 2 + (markSizes.endBar + markSizes.gap) * pxPerPoint(picture)
  return plateAt(text, { x: (from[0] + to[0]) / 2 + away.x * off, y: (from[1] + to[1]) / 2 + away.y * off }, picture)
}

/** Where the words of a layer stand, those of its marks by their number, those of the known length under 'known'. */
export const platesOf = (layer: MarkLayer & SeenCloser, reader: Reader): ReadonlyMap<number | 'known', Plate> => {
  const plates = new Map<number | 'known', Plate>()
  const { scale } = layer
  if (scale) plates.set('known', besideLine(sayKnown(scale, reader), scale, layer, 'below'))
  for (const [index, mark] of layer.marks.entries()) {
    if (mark.kind === 'text') plates.set(index, plateAt(mark.text, { x: mark.at[0], y: mark.at[1] }, layer))
    if (mark.kind === 'length') plates.set(index, besideLine(sayLength(layer, mark, reader), mark, layer, 'above'))
  }
  return plates
}

/**
 * The layer as one drawing to lie over the picture, in px of the upright original turned clockwise so many quarters; words stay upright.
 * The lines first, what is written upon them. `closer`: how many times larger than the whole it is looked at.
 */
export const marksDrawing = (upright: MarkLayer, quarterTurns: number, reader: Reader, closer = 1): Drawing => {
  const layer = { ...turnedLayer(upright, quarterTurns), closer }
  const unit = pxPerPoint(layer)
  const shapes: Shape[] = [
    ...(layer.scale ? knownLines(layer.scale, unit) : []),
    ...layer.marks.flatMap((mark) => markLines(mark, unit)),
    ...[...platesOf(layer, reader).values()].flatMap((plate) => plateShapes(plate, layer)),
  ]
  return { viewBox: [0, 0, layer.widthPx, layer.heightPx], shapes, places: [], toScale: true }
}
