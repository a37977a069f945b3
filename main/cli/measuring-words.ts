import { pixelPointSchema, type PixelPoint, type Scale } from '../../shared-logic/measuring/measurement'
import { parseQuantity } from '../../shared-logic/units/convert'
import { en } from '../../shared-logic/words/en'
import { fill } from './columns'
import { WrongUsage } from './command'

const wrong = en.commandLine.wrongUsage
const point = /^-?\d+(?:\.\d+)?,-?\d+(?:\.\d+)?$/

const pointOf = (written: string): PixelPoint => {
  const [x, y] = written.split(',').map(Number)
  const read = pixelPointSchema.safeParse([x, y])
  if (!read.success) throw new WrongUsage(fill(wrong.points, { written }))
  return read.data
}

const pointsAndRest = (written: string): { readonly points: PixelPoint[]; readonly rest: string } => {
  const steps = written.trim().split(/\s+/)
  const first = steps.findIndex((step) => !point.test(step))
  const points = (first < 0 ? steps : steps.slice(0, first)).map(pointOf)
  return { points, rest: first < 0 ? '' : steps.slice(first).join(' ') }
}

/** '100,100 400,100 400,300': points in px of the upright photograph. Throws `WrongUsage` for anything else. */
export const pointsOf = (written: string): PixelPoint[] => {
  const { points, rest } = pointsAndRest(written)
  if (rest !== '' || points.length < 3) throw new WrongUsage(fill(wrong.points, { written }))
  return points
}

const lengthOf = (written: string): number | undefined => {
  const read = parseQuantity(written, 'length', 'metric')
  return read.ok && !/^[\d.,\s]*$/.test(written) ? read.si : undefined
}

/** '410,300 1210,300 100 mm', or four corners and '200 mm x 150 mm'. Throws `WrongUsage` for anything else. */
export const scaleOf = (written: string): Scale => {
  const { points, rest } = pointsAndRest(written)
  const lengths = rest.replace(/^=/, '').split(/\s*[x×]\s*/).map(lengthOf)
  const [a, b, c, d] = points
  const [first, second] = lengths
  if (points.length === 2 && lengths.length === 1 && a && b && first !== undefined) return { kind: 'length', from: a, to: b, lengthM: first }
  if (points.length === 4 && lengths.length === 2 && a && b && c && d && first !== undefined && second !== undefined) return { kind: 'rectangle', corners: [a, b, c, d], widthM: first, heightM: second }
  throw new WrongUsage(fill(wrong.scale, { written }))
}

/** A number from 0 to 1. Throws `WrongUsage` for anything else. */
export const sensitivityOf = (written: string): number => {
  const value = Number(written)
  if (written.trim() === '' || !(value >= 0 && value <= 1)) throw new WrongUsage(fill(wrong.sensitivity, { written }))
  return value
}
