import { Refusal, type RefusalData } from '../../shared-logic/contract/refusal'
import { boundsOf, distanceToMark, middleOf } from '../../shared-logic/marking/mark-geometry'
import type { Mark, MarkLayer } from '../../shared-logic/marking/marks'
import type { Plate } from '../../shared-logic/marking/plates'
import { turnedLayer, withPointsOf } from '../../shared-logic/marking/turned'
import { knownLengthSchema, type PixelPoint } from '../../shared-logic/measuring/measurement'
import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import { checkScale } from '../../shared-logic/measuring/scale'
import type { LengthSymbol } from '../../shared-logic/units/unit-table'
import { onPicture } from '../picture-board/on-picture'

/** A line over something of known length; its length once that was typed. */
export interface KnownLine {
  readonly from: PixelPoint
  readonly to: PixelPoint
  readonly lengthM: number | undefined
  /** The unit it was typed in. */
  readonly writtenIn?: LengthSymbol | undefined
}

/** What lies on the board; points in px of the picture as it is turned. */
export interface Sketch {
  readonly marks: readonly Mark[]
  readonly known: KnownLine | undefined
}

/** One of it: a mark by its place in the row, or the known length. */
export type Chosen = number | 'known'

export const mostMarks = 200
export const mostPoints = 2000
export const mostLetters = 120

export const sketchOf = (layer: MarkLayer | undefined, quarterTurns: number): Sketch => {
  if (layer === undefined) return { marks: [], known: undefined }
  const { marks, scale } = turnedLayer(layer, quarterTurns)
  return { marks, known: scale && { from: scale.from, to: scale.to, lengthM: scale.lengthM, ...(scale.writtenIn && { writtenIn: scale.writtenIn }) } }
}

/** What keeps the known length from giving a scale: that it was not typed, or a refusal. */
export const knownProblem = ({ known }: Sketch, size: PictureSize): 'length' | RefusalData | undefined => {
  if (known === undefined) return undefined
  const scale = knownLengthSchema.safeParse({ kind: 'length', ...known })
  if (!scale.success) return 'length'
  try {
    checkScale(scale.data, size)
    return undefined
  } catch (problem) {
    if (problem instanceof Refusal) return problem.data
    throw problem
  }
}

/** The sketch as a layer of a picture so turned; no scale while the known length gives none. */
export const layerOf = (sketch: Sketch, size: PictureSize): MarkLayer => {
  const { marks, known } = sketch
  const scale = known?.lengthM === undefined || knownProblem(sketch, size) !== undefined ? undefined : { kind: 'length' as const, ...known, lengthM: known.lengthM }
  return { widthPx: size.widthPx, heightPx: size.heightPx, ...(scale && { scale }), marks: [...marks] }
}

/** As it is kept: in px of the upright original, to a tenth. */
export const uprightLayerOf = (sketch: Sketch, size: PictureSize, quarterTurns: number): MarkLayer => {
  const layer = turnedLayer(layerOf(sketch, size), (4 - quarterTurns) % 4)
  const put = (point: PixelPoint): PixelPoint => onPicture(point, layer)
  return { ...layer, ...(layer.scale && { scale: { ...layer.scale, from: put(layer.scale.from), to: put(layer.scale.to) } }), marks: layer.marks.map((mark) => withPointsOf(mark, put)) }
}

/** The chosen one as a mark; the known length is a line like any other. */
export const chosenMark = ({ marks, known }: Sketch, chosen: Chosen | undefined): Mark | undefined => {
  if (chosen === undefined) return undefined
  return chosen === 'known' ? known && { kind: 'length', from: known.from, to: known.to } : marks[chosen]
}

export const withMark = (sketch: Sketch, chosen: Chosen, mark: Mark): Sketch => {
  if (chosen !== 'known') return { ...sketch, marks: sketch.marks.with(chosen, mark) }
  return mark.kind === 'length' && sketch.known ? { ...sketch, known: { ...sketch.known, from: mark.from, to: mark.to } } : sketch
}

export const withoutMark = (sketch: Sketch, chosen: Chosen): Sketch =>
  chosen === 'known' ? { ...sketch, known: undefined } : { ...sketch, marks: sketch.marks.toSpliced(chosen, 1) }

/** Everything on the board in the order it is walked through: the known length first. */
export const everyChoice = ({ marks, known }: Sketch): Chosen[] => [...(known ? ['known' as const] : []), ...marks.keys()]

const isOn = ({ x, y, width, height }: Plate, [pointX, pointY]: PixelPoint): boolean => pointX >= x && pointX <= x + width && pointY >= y && pointY <= y + height

/** What lies under a finger: words by their plate, else the nearest line within reach; of two the one on top. */
export const choiceAt = (sketch: Sketch, point: PixelPoint, reachPx: number, plates: ReadonlyMap<Chosen, Plate>): Chosen | undefined => {
  const from = (chosen: Chosen): number => {
    const plate = plates.get(chosen)
    if (plate !== undefined && isOn(plate, point)) return 0
    const mark = chosenMark(sketch, chosen)
    return mark === undefined ? Infinity : distanceToMark(mark, point)
  }
  const nearest = everyChoice(sketch).map((chosen) => ({ chosen, distance: from(chosen) })).toReversed().toSorted((a, b) => a.distance - b.distance)[0]
  return nearest !== undefined && nearest.distance <= reachPx ? nearest.chosen : undefined
}

/** Where the grip of a mark stands: the middle of its words, else of its points. */
export const gripOf = (sketch: Sketch, chosen: Chosen): PixelPoint => {
  const mark = chosenMark(sketch, chosen)
  return mark === undefined ? [0, 0] : middleOf(boundsOf(mark))
}
