import { workingEdgePx } from '../../shared-logic/measuring/pixels'
import { distanceToEdge } from '../../shared-logic/measuring/polygon'
import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import type { MeasurementGiven } from '../../shared-logic/measuring/area'
import type { Measurement, Outline, PixelPoint, Scale, Stroke } from '../../shared-logic/measuring/measurement'
import { assertNever } from '../../shared-logic/assert-never'

export const scaleKinds = ['length', 'rectangle'] as const
export const outlineWays = ['polygon', 'brush', 'finder'] as const

/** What can be made of points on the board. */
export type PointList = 'length' | 'corners' | 'polygon' | 'face'

/** All that was put on one photograph so far; points in px of the oriented original. What is not chosen now is kept for when it is chosen again. */
export interface Board {
  readonly scaleBy: (typeof scaleKinds)[number]
  readonly outlineBy: (typeof outlineWays)[number]
  readonly points: Readonly<Record<PointList, readonly PixelPoint[]>>
  readonly lengthM: number | undefined
  readonly widthM: number | undefined
  readonly heightM: number | undefined
  readonly strokes: Readonly<Record<'brush' | 'finder', readonly Stroke[]>>
  readonly sensitivity: number
}

/** The finder's middle setting, as on the command line. */
const usualSensitivity = 0.5

export const emptyBoard: Board = {
  scaleBy: 'length', outlineBy: 'polygon', points: { length: [], corners: [], polygon: [], face: [] },
  lengthM: undefined, widthM: undefined, heightM: undefined, strokes: { brush: [], finder: [] }, sensitivity: usualSensitivity,
}

/** How many points a list takes; the bounds of the measurement's own schema. */
export const mostPoints: Readonly<Record<PointList, number>> = { length: 2, corners: 4, polygon: 600, face: 600 }
export const mostStrokes = 200
export const mostStrokePoints = 600

const withScale = (board: Board, scale: Scale): Board =>
  scale.kind === 'length'
    ? { ...board, scaleBy: 'length', lengthM: scale.lengthM, points: { ...board.points, length: [scale.from, scale.to] } }
    : { ...board, scaleBy: 'rectangle', widthM: scale.widthM, heightM: scale.heightM, points: { ...board.points, corners: scale.corners } }

const withOutline = (board: Board, outline: Outline): Board => {
  switch (outline.by) {
    case 'polygon': return { ...board, outlineBy: 'polygon', points: { ...board.points, polygon: outline.points } }
    case 'brush': return { ...board, outlineBy: 'brush', strokes: { ...board.strokes, brush: outline.strokes } }
    case 'finder': return { ...board, outlineBy: 'finder', sensitivity: outline.sensitivity, strokes: { ...board.strokes, finder: outline.strokes } }
    default: return assertNever(outline)
  }
}

/** A measurement kept before, laid out again to be changed. */
export const boardOf = ({ scale, outline, face }: Measurement): Board => {
  const board = withOutline(withScale(emptyBoard, scale), outline)
  return face ? { ...board, points: { ...board.points, face } } : board
}

/** What the measurement waits for, the first thing first. */
export type Waiting = 'two points' | 'length' | 'four corners' | 'sides' | 'outline' | 'strokes' | 'face'

const scaleOf = ({ scaleBy, points, lengthM, widthM, heightM }: Board): Scale | Waiting => {
  if (scaleBy === 'length') {
    const [from, to] = points.length
    if (!from || !to) return 'two points'
    return lengthM === undefined ? 'length' : { kind: 'length', from, to, lengthM }
  }
  const [a, b, c, d] = points.corners
  if (!a || !b || !c || !d) return 'four corners'
  return widthM === undefined || heightM === undefined ? 'sides' : { kind: 'rectangle', corners: [a, b, c, d], widthM, heightM }
}

const outlineOf = ({ outlineBy, points, strokes, sensitivity }: Board): Outline | Waiting => {
  switch (outlineBy) {
    case 'polygon': return points.polygon.length < 3 ? 'outline' : { by: 'polygon', points: [...points.polygon] }
    case 'brush': return strokes.brush.length === 0 ? 'strokes' : { by: 'brush', strokes: [...strokes.brush] }
    case 'finder': return { by: 'finder', finder: 'rust 1', sensitivity, strokes: [...strokes.finder] }
    default: return assertNever(outlineBy)
  }
}

/** What is to be computed: whole, or without a scale as far as the outline goes, so that it can be seen. */
export interface Wanted {
  readonly given: MeasurementGiven
  readonly isScaled: boolean
}

/** Shows an outline before there is a scale; no area is told by it. */
const noScaleYet: Scale = { kind: 'length', from: [0, 0], to: [workingEdgePx, 0], lengthM: 1 }

/** What the board comes to, and what it waits for. A face of one or two points is begun, not ready: then nothing is measured by it. */
export const wantedOf = (board: Board, size: PictureSize): { readonly wanted: Wanted | undefined; readonly waits: Waiting | undefined } => {
  const scale = scaleOf(board)
  const outline = outlineOf(board)
  const { face } = board.points
  const isFaceBegun = face.length > 0 && face.length < 3
  const waits = typeof scale === 'string' ? scale : typeof outline === 'string' ? outline : isFaceBegun ? 'face' : undefined
  if (typeof outline === 'string') return { wanted: undefined, waits }
  const given: MeasurementGiven = { ...size, scale: typeof scale === 'string' ? noScaleYet : scale, outline, ...(face.length > 2 && { face: [...face] }) }
  return { wanted: { given, isScaled: typeof scale !== 'string' && !isFaceBegun }, waits }
}

export const withPoints = (board: Board, list: PointList, points: readonly PixelPoint[]): Board => ({ ...board, points: { ...board.points, [list]: points } })

/** Adds a point at the end, or between two where it was put on their edge; as it was where the list is full. */
export const withPointAdded = (board: Board, list: PointList, point: PixelPoint, after = board.points[list].length - 1): Board => {
  const points = board.points[list]
  return points.length >= mostPoints[list] ? board : withPoints(board, list, points.toSpliced(after + 1, 0, point))
}

/** After which point of the closed outline a new one belongs: on the edge it was put on, else at the end. */
export const placeFor = (points: readonly PixelPoint[], point: PixelPoint, reachPx: number): number => {
  const last = points.length - 1
  if (points.length < 3) return last
  const edges = points.map((from, index) => distanceToEdge(point, from, points[(index + 1) % points.length] ?? from))
  const nearest = edges.indexOf(Math.min(...edges))
  return (edges[nearest] ?? Infinity) <= reachPx ? nearest : last
}
