import type { Rig } from '../../rig/rig'
import type { Sums } from '../../sums/sums'
import { formatQuantity } from '../../units/convert'
import type { Shape } from '../drawing'
import { line, outline } from '../strokes'
import type { SideLayout } from './layout'
import { backed, type SideText } from './loads'

interface Dimension {
  readonly fromM: number
  readonly toM: number
  readonly name: string
}

/** Only lengths that are known are dimensioned. */
const dimensionsOf = (rig: Rig, { balance }: Sums, at: SideLayout, { words, isSmall }: SideText): Dimension[] => {
  const said = words.sums.drawing
  const { ballToAxleM, lengthM } = rig.trailer
  const stemM = rig.loading?.stemAftOfBallM
  const hullM = rig.boat?.lengthM
  const centreM = balance.lever?.centreM
  const all: (Dimension | undefined)[] = [
    stemM === undefined || !rig.boat ? undefined : { fromM: 0, toM: stemM, name: said.toStem },
    stemM === undefined || hullM === undefined ? undefined : { fromM: stemM, toM: stemM + hullM, name: said.boat },
    centreM === undefined ? undefined : { fromM: 0, toM: centreM, name: said.toCentre },
    ballToAxleM === undefined ? undefined : { fromM: 0, toM: at.middleM, name: said.toAxle },
    lengthM === undefined || isSmall ? undefined : { fromM: 0, toM: lengthM, name: said.trailer },
  ]
  return all.filter((dimension) => dimension !== undefined)
}

/** Stem and hull share a row; each of the others has its own. */
const rowsOf = (dimensions: readonly Dimension[]): Dimension[][] => {
  const rows: Dimension[][] = []
  for (const dimension of dimensions) {
    const last = rows.at(-1)
    const previous = last?.at(-1)
    if (last && previous && previous.toM <= dimension.fromM && previous.toM > previous.fromM) last.push(dimension)
    else rows.push([dimension])
  }
  return rows
}

const tick = (x: number, y: number, way: number): Shape => outline([{ x, y }, { x: x + way * 9, y: y - 3.4 }, { x: x + way * 9, y: y + 3.4 }], { fill: 'ink' })

const drawn = ({ fromM, toM, name }: Dimension, y: number, topY: number, at: SideLayout, text: SideText): Shape[] => {
  const [left, right] = [at.x(Math.min(fromM, toM)), at.x(Math.max(fromM, toM))]
  const figure = formatQuantity('length', toM - fromM, text.system)
  const room = (right - left) / (text.size * 0.56)
  const full = `${name} ${figure}`
  const caption = full.length < room ? full : figure
  return [
    line([{ x: left, y: topY }, { x: left, y: y + 5 }], { stroke: 'hairline', weight: 1 }),
    line([{ x: right, y: topY }, { x: right, y: y + 5 }], { stroke: 'hairline', weight: 1 }),
    line([{ x: left, y }, { x: right, y }], { stroke: 'metal', weight: 1.2 }), tick(left, y, 1), tick(right, y, -1),
    ...backed((left + right) / 2, y - 5, caption, text.size * 0.95, { anchor: 'middle' }),
  ]
}

/** Dimension lines from `topY` down, and how far down they reach. */
export const dimensionLines = (rig: Rig, sums: Sums, at: SideLayout, topY: number, text: SideText): { readonly shapes: readonly Shape[]; readonly footY: number } => {
  const rows = rowsOf(dimensionsOf(rig, sums, at, text))
  const step = text.size + 14
  return { shapes: rows.flatMap((row, index) => row.flatMap((dimension) => drawn(dimension, topY + (index + 1) * step, at.groundY + 4, at, text))), footY: topY + rows.length * step + 12 }
}
