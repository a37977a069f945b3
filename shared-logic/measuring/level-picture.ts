import type { Measurement, PixelPoint } from './measurement'
import { surfaceMapOf, toSurface, type SurfaceMap } from './surface-map'

/** A measured photograph laid level and to scale: the map from px of the original to m, its origin at the middle of the spot, the picture's right to the right. */
export interface LevelPicture {
  readonly map: SurfaceMap
  /** How far what is of interest reaches from the middle, m. */
  readonly reachM: { readonly across: number; readonly up: number }
}

/** `first` done after `second`: both row by row. */
export const composed = (first: SurfaceMap, second: SurfaceMap): SurfaceMap => {
  const [a, b, c, d, e, f, g, h, i] = first
  const [p, q, r, s, t, u, v, w, x] = second
  return [
    a * p + b * s + c * v, a * q + b * t + c * w, a * r + b * u + c * x, d * p + e * s + f * v, d * q + e * t + f * w, d * r + e * u + f * x,
    g * p + h * s + i * v, g * q + h * t + i * w, g * r + h * u + i * x,
  ]
}

/** Points round the spot: of its outline by hand, of the strokes that painted it, or else of the face; of the whole picture where there is none. */
const pointsRound = ({ outline, face, widthPx, heightPx }: Measurement): readonly PixelPoint[] => {
  if (outline.by === 'polygon') return outline.points
  const painted = outline.by === 'brush' ? outline.strokes.filter(({ does }) => does === 'adds').flatMap(({ points }) => points) : []
  if (painted.length > 0) return painted
  return face ?? [[0, 0], [widthPx, 0], [widthPx, heightPx], [0, heightPx]]
}

const middleOf = (values: readonly number[]): number => (Math.min(...values) + Math.max(...values)) / 2
const halfOf = (values: readonly number[]): number => (Math.max(...values) - Math.min(...values)) / 2

/** Turned so that the picture's right is to the right and its down is down, as the camera saw it. */
const asSeen = (map: SurfaceMap, [x, y]: PixelPoint): SurfaceMap => {
  const [here, right, below] = [toSurface(map, [x, y]), toSurface(map, [x + 1, y]), toSurface(map, [x, y + 1])]
  const across: PixelPoint = [right[0] - here[0], right[1] - here[1]]
  const down: PixelPoint = [below[0] - here[0], below[1] - here[1]]
  const isMirrored = across[0] * down[1] - across[1] * down[0] < 0
  const long = Math.hypot(...across)
  const [cos, sin] = [across[0] / long, across[1] / long]
  return composed([cos, sin, 0, ...(isMirrored ? ([sin, -cos] as const) : ([-sin, cos] as const)), 0, 0, 0, 1], map)
}

/** Lays a measured photograph level; undefined where its scale gives no map. Source: plane geometry. */
export const levelPicture = (measurement: Measurement): LevelPicture | undefined => {
  const points = pointsRound(measurement)
  const middle: PixelPoint = [middleOf(points.map(([x]) => x)), middleOf(points.map(([, y]) => y))]
  const turned = asSeen(surfaceMapOf(measurement.scale), middle)
  const laid = points.map((point) => toSurface(turned, point))
  const [xs, ys] = [laid.map(([x]) => x), laid.map(([, y]) => y)]
  const map = composed([1, 0, -middleOf(xs), 0, 1, -middleOf(ys), 0, 0, 1], turned)
  return map.every(Number.isFinite) && Number.isFinite(halfOf(xs)) ? { map, reachM: { across: halfOf(xs), up: halfOf(ys) } } : undefined
}

/** Room round the largest spot, as a share of its reach. */
const roomRound = 1.5
/** No frame shows less than this, m. */
const leastWidthM = 0.04

/** Frames show whole centimetres, m. */
const wholeM = 0.01

/** The width of surface that every frame of one spot shows, m, so that the largest fits: `tallness` is a frame's height over its width. */
export const commonWidthM = (pictures: readonly LevelPicture[], tallness: number): number =>
  Math.ceil(Math.max(leastWidthM, ...pictures.map(({ reachM: { across, up } }) => 2 * roomRound * Math.max(across, up / tallness))) / wholeM - 1e-9) * wholeM

/** From px of the original to px of a frame that shows so much of the surface. */
export const toFrame = ({ map }: LevelPicture, widthM: number, frame: { readonly width: number; readonly height: number }): SurfaceMap => {
  const perM = frame.width / widthM
  return composed([perM, 0, frame.width / 2, 0, perM, frame.height / 2, 0, 0, 1], map)
}
