import { stations, type StationId } from '../../survey/station'
import { path } from '../strokes'
import type { Part } from './frame'
import type { PlanLayout } from './layout'

/** Room between the rig and the walk-round path, and what is left outside it for the stops. */
export const walkMargin = 74
export const stopRadius = 38

/** Where each stop lies on the walk: clockwise from the left of the coupler. `along` as share of the length. */
const stops: Readonly<Record<StationId, { readonly side: -1 | 0 | 1; readonly along: number }>> = {
  papers: { side: -1, along: 0.06 },
  coupler: { side: 0, along: -0.09 },
  winch: { side: 1, along: 0.1 },
  frame: { side: 1, along: 0.25 },
  bunks: { side: 1, along: 0.4 },
  axles: { side: 1, along: 0.55 },
  hubs: { side: 1, along: 0.7 },
  wheels: { side: 1, along: 0.85 },
  brakes: { side: 1, along: 1 },
  lights: { side: 0, along: 1 },
  'tie-down': { side: -1, along: 0.93 },
  'after-use': { side: -1, along: 0.5 },
}

/** The path runs clear of an outboard hung on the transom. */
export const footOf = (at: PlanLayout): number => at.bottom + 96

/** The walk round the rig as a path, and a place 'station …' for each stop on it. */
export const walkPathPart = (at: PlanLayout): Part => {
  const x = Math.max(at.halfWidth, at.halfBeam) + walkMargin
  const top = -0.09 * at.bottom
  const foot = footOf(at)
  const corner = 70
  return {
    shapes: [
      path(
        `M${-x} ${top + corner} Q${-x} ${top} ${-x + corner} ${top} L${x - corner} ${top} Q${x} ${top} ${x} ${top + corner} L${x} ${foot - corner} Q${x} ${foot} ${x - corner} ${foot} L${-x + corner} ${foot} Q${-x} ${foot} ${-x} ${foot - corner} Z`,
        { stroke: 'hairline', weight: 2, dashed: true },
      ),
    ],
    places: stations.map((station) => ({ id: `station ${station}`, x: stops[station].side * x, y: station === 'lights' ? foot : stops[station].along * at.bottom })),
  }
}
