import { assertNever } from '../assert-never'
import { refuse } from '../contract/refusal'
import { knownLengthRangeM, type PixelPoint, type Scale } from './measurement'
import { originalPxPerWorkingPx, type PictureSize } from './picture-size'
import { turnOf } from './polygon'
import { leastScalePx, leastTriangleHeightPx } from './reading-errors'

type Corners = Extract<Scale, { kind: 'rectangle' }>['corners']

/** Whether a point lies on the picture, its border counted in. */
export const isOnPicture = ({ widthPx, heightPx }: PictureSize, [x, y]: PixelPoint): boolean => x >= 0 && y >= 0 && x <= widthPx && y <= heightPx

const lengthPx = (from: PixelPoint, to: PixelPoint): number => Math.hypot(to[0] - from[0], to[1] - from[1])

const checkLength = (from: PixelPoint, to: PixelPoint, step: number): void => {
  const longPx = lengthPx(from, to)
  if (longPx === 0) refuse('measure.scale-zero-length', {}, 'scale')
  if (longPx < leastScalePx * step) refuse('measure.scale-too-short', { length: Math.round(longPx), limit: Math.ceil(leastScalePx * step) }, 'scale')
}

const triangleHeightPx = (a: PixelPoint, b: PixelPoint, c: PixelPoint): number => {
  const base = Math.max(lengthPx(a, b), lengthPx(b, c), lengthPx(c, a))
  return base === 0 ? 0 : Math.abs(turnOf(a, b, c)) / base
}

/** A rectangle shows as four corners that turn the same way all round. Three of one turn and one of the other is dented, two and two is a bow tie. */
const checkCorners = ([a, b, c, d]: Corners, step: number): void => {
  const triples = [[d, a, b], [a, b, c], [b, c, d], [c, d, a]] as const
  if (triples.some(([first, second, third]) => triangleHeightPx(first, second, third) < leastTriangleHeightPx * step)) refuse('measure.rectangle-corners-in-line', {}, 'scale')
  const leftTurns = triples.filter(([first, second, third]) => turnOf(first, second, third) > 0).length
  if (leftTurns === 2) refuse('measure.rectangle-crossed', {}, 'scale')
  if (leftTurns === 1 || leftTurns === 3) refuse('measure.rectangle-dented', {}, 'scale')
  for (const [from, to] of [[a, b], [b, c], [c, d], [d, a]] as const) checkLength(from, to, step)
}

/** What a person typed has been through no schema yet. */
export const isKnownLength = (lengthM: number): boolean => lengthM >= knownLengthRangeM.least && lengthM <= knownLengthRangeM.most

/** Refuses (`measure.…`, field 'scale') what gives no scale: points off the picture, no length or too little, a length that none can be, four corners that no rectangle can show. */
export const checkScale = (scale: Scale, picture: PictureSize): void => {
  const knownM = scale.kind === 'length' ? [scale.lengthM] : [scale.widthM, scale.heightM]
  if (!knownM.every(isKnownLength)) refuse('measure.scale-no-length', {}, 'scale')
  const points = scale.kind === 'length' ? [scale.from, scale.to] : scale.corners
  if (!points.every((point) => isOnPicture(picture, point))) refuse('measure.scale-outside-picture', {}, 'scale')
  const step = originalPxPerWorkingPx(picture)
  switch (scale.kind) {
    case 'length': return checkLength(scale.from, scale.to, step)
    case 'rectangle': return checkCorners(scale.corners, step)
    default: return assertNever(scale)
  }
}
