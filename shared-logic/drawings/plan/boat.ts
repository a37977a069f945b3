import type { Rig } from '../../rig/rig'
import type { Shape } from '../drawing'
import { box, circle, line, path } from '../strokes'
import type { Part } from './frame'
import type { PlanLayout } from './layout'

/** The hull from above: a fair curve from stem to transom. */
const hull = ({ bowY, sternY, halfBeam }: PlanLayout): Shape => {
  const length = sternY - bowY
  const shoulder = bowY + length * 0.42
  const quarter = halfBeam * 0.93
  return path(
    `M0 ${bowY} C${halfBeam * 0.55} ${bowY + length * 0.06} ${halfBeam} ${bowY + length * 0.2} ${halfBeam} ${shoulder} L${quarter} ${sternY} L${-quarter} ${sternY} L${-halfBeam} ${shoulder} C${-halfBeam} ${bowY + length * 0.2} ${-halfBeam * 0.55} ${bowY + length * 0.06} 0 ${bowY} Z`,
    { stroke: 'hull', weight: 2.6 },
  )
}

const engine = (rig: Rig, { sternY }: PlanLayout): Shape[] => {
  if (rig.boat?.engine === 'outboard') return [box(-15, sternY + 2, 30, 34, { stroke: 'hull', fill: 'paper', weight: 2 }, 10)]
  if (rig.boat?.engine === 'sterndrive') return [box(-9, sternY + 2, 18, 22, { stroke: 'hull', fill: 'paper', weight: 2 }, 4)]
  return []
}

const bunk = (sign: number, at: PlanLayout): Shape =>
  box(sign * at.railX * 0.62 - 7, at.tongueEnd + 18, 14, Math.min(at.sternY, at.length) - at.tongueEnd - 36, { stroke: 'ink', fill: 'faint', weight: 1.6 }, 6)

const rollers = (x: number, at: PlanLayout, count: number): Shape[] =>
  Array.from({ length: count }, (_, index) => {
    const y = at.tongueEnd + 26 + ((at.length - at.tongueEnd - 60) * index) / (count - 1)
    return box(x - 12, y - 5, 24, 10, { stroke: 'ink', fill: 'faint', weight: 1.6 }, 5)
  })

/** Boat, engine, bunks and rollers. */
export const boatPart = (rig: Rig, at: PlanLayout): Part => {
  const kind = rig.trailer.supports
  const middle = (at.tongueEnd + at.length) / 2
  const withBunks = kind !== 'rollers'
  const withKeelRollers = kind === 'rollers' || kind === 'bunks and rollers'
  const onBoard = rig.boat !== undefined
  return {
    shapes: [
      ...(withBunks ? [bunk(-1, at), bunk(1, at)] : [...rollers(-at.railX * 0.6, at, 5), ...rollers(at.railX * 0.6, at, 5)]),
      ...(withKeelRollers ? rollers(0, at, 6) : []),
      ...(onBoard ? [hull(at), line([{ x: 0, y: at.bowY + 20 }, { x: 0, y: at.sternY - 16 }], { stroke: 'hull', weight: 1, dashed: true }), ...engine(rig, at), circle(0, at.bowY + 9, 4, { stroke: 'hull', weight: 2 })] : []),
    ],
    places: [
      { id: 'bunk left', x: -at.railX * 0.62, y: middle },
      { id: 'bunk right', x: at.railX * 0.62, y: middle },
      { id: 'keel rollers', x: 0, y: middle + 30 },
      { id: 'side rollers left', x: -at.railX * 0.6, y: middle },
      { id: 'side rollers right', x: at.railX * 0.6, y: middle },
    ],
  }
}
