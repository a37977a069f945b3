import type { Boat } from '../rig/boat'
import { isUnder } from '../rules/beyond'
import type { PlannedStrap } from './planned-strap'

/** How a strap is set wrongly, or what the set lacks; each has a sentence in the words. Common practice, no source, but edges: 49 CFR 393.104(f). */
export type TieDownAdvice =
  | 'transom strap pulls aft' | 'transom strap does not pull down' | 'bow tie pulls forward' | 'bow tie does not pull down'
  | 'winch strap does not pull forward' | 'pulls up' | 'steep' | 'crosses the hull edge' | 'crosses under the hull'
  | 'no rating' | 'no second bow tie' | 'no transom strap left' | 'no transom strap right'

export interface TieDownAdvisory {
  readonly id: TieDownAdvice
  /** Absent where it is about the whole set. */
  readonly index?: number
}

const slack = 1e-6
/** Beyond this a strap mostly presses and holds little along: common practice, no source. */
const steepRad = (60 * Math.PI) / 180

const wrongWay = ({ strap, lead }: PlannedStrap): TieDownAdvice[] => {
  if (!lead || strap.route !== 'direct') return []
  const { aft, up } = lead.pull
  const [forward, down] = [aft < -slack, up < -slack]
  const pullsUp: TieDownAdvice[] = up > slack ? ['pulls up'] : []
  switch (strap.place) {
    case 'transom':
      return [...(forward ? [] : ['transom strap pulls aft' as const]), ...(down || up > slack ? [] : ['transom strap does not pull down' as const]), ...pullsUp]
    case 'bow tie':
      return [...(aft > slack ? [] : ['bow tie pulls forward' as const]), ...(down || up > slack ? [] : ['bow tie does not pull down' as const]), ...pullsUp]
    case 'winch':
      return forward ? [] : ['winch strap does not pull forward']
    case 'amidships':
      return pullsUp
  }
}

const crossings = ({ strap: { boat: hold, trailer: anchor, route } }: PlannedStrap, boat: Boat | undefined): TieDownAdvice[] => {
  if (route !== 'direct') return ['crosses the hull edge']
  if (!hold || !anchor) return []
  const halfBeam = boat?.beamM === undefined ? undefined : boat.beamM / 2
  const overEdge = halfBeam !== undefined && isUnder(Math.abs(hold.toRightM), halfBeam) && Math.abs(anchor.toRightM) > halfBeam
  return [...(overEdge ? ['crosses the hull edge' as const] : []), ...(hold.toRightM * anchor.toRightM < 0 ? ['crosses under the hull' as const] : [])]
}

const ofOne = (planned: PlannedStrap, boat: Boat | undefined): TieDownAdvice[] => {
  const { lead, strap, limitN } = planned
  const isSteep = lead !== undefined && strap.route === 'direct' && strap.place !== 'winch' && lead.downRad > steepRad + slack
  return [...wrongWay(planned), ...(isSteep ? ['steep' as const] : []), ...crossings(planned, boat), ...(limitN === undefined ? ['no rating' as const] : [])]
}

/** Which side of the middle a strap holds the boat on, or leads to. */
const sideOf = ({ strap, lead }: PlannedStrap): number => strap.boat?.toRightM ?? lead?.pull.right ?? 0

const missing = (straps: readonly PlannedStrap[]): TieDownAdvice[] => {
  const transom = straps.filter(({ strap }) => strap.place === 'transom')
  const sideKnown = transom.every((planned) => sideOf(planned) !== 0)
  return [
    ...(straps.some(({ strap }) => strap.place === 'bow tie') ? [] : ['no second bow tie' as const]),
    ...(sideKnown && !transom.some((planned) => sideOf(planned) < 0) ? ['no transom strap left' as const] : []),
    ...(sideKnown && !transom.some((planned) => sideOf(planned) > 0) ? ['no transom strap right' as const] : []),
  ]
}

/** What to say about how the straps are set, strap by strap and then about the set. */
export const adviceOn = (straps: readonly PlannedStrap[], boat: Boat | undefined): TieDownAdvisory[] => [
  ...straps.flatMap((planned) => ofOne(planned, boat).map((id) => ({ id, index: planned.index }))),
  ...missing(straps).map((id) => ({ id })),
]
