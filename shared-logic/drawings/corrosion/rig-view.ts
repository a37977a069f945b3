import type { Rig } from '../../rig/rig'
import type { RuleBook } from '../../rules/rule-book'
import type { Spot } from '../../survey/spot'
import type { Drawing, Shape } from '../drawing'
import { planLayout } from '../plan/layout'
import { planView } from '../plan/plan-view'
import { boatFromSide } from '../side/boat'
import { sideLayout, sideSpanOf, type SideLayout } from '../side/layout'
import { trailerFromSide } from '../side/trailer'
import type { Point } from '../strokes'

export const spotViews = ['plan', 'side'] as const
export type SpotView = (typeof spotViews)[number]

/** Where a spot lies: its own place on a drawing where it was given one, else the position it was noted at. */
export interface SpotWhere {
  readonly at?: Spot['at']
  readonly position: string
}

/** The rig drawn from one side, and where its spots fall on it. */
export interface RigView {
  readonly viewBox: Drawing['viewBox']
  readonly shapes: readonly Shape[]
  readonly toScale: boolean
  readonly spotAt: (where: SpotWhere) => Point
}

const fromAbove = (rig: Rig, ruleBook: RuleBook): RigView => {
  const { viewBox, shapes, places, toScale } = planView(rig, ruleBook, { walk: false })
  const { unitsPerM } = planLayout(rig)
  const placeOf = (position: string): Point => places.find(({ id }) => id === position) ?? places.find(({ id }) => id === 'rig') ?? { x: 0, y: 0 }
  const spotAt = ({ at, position }: SpotWhere): Point => {
    const place = placeOf(position)
    if (at === undefined) return place
    return { x: at.view === 'plan' ? at.toRightM * unitsPerM : place.x, y: at.aftOfBallM * unitsPerM }
  }
  return { viewBox, shapes, toScale, spotAt }
}

/** Half the depth of a rail as drawn, m. */
const halfRailM = 0.05

/** Height of a part above the ground where the spot's own is not known, m: as the side view draws it. */
const heightOf = (position: string, { ballM, deckM, wheelM, bowEye }: SideLayout): number => {
  if (position.endsWith('axles') || position.startsWith('axle ')) return wheelM
  if (position === 'tongue') return (ballM + deckM) / 2 - halfRailM
  if (position === 'winch post') return (deckM + bowEye.heightM) / 2
  return position.endsWith('brackets') ? deckM + halfRailM : deckM - halfRailM
}

const fromTheSide = (rig: Rig, ruleBook: RuleBook): RigView => {
  const layout = sideLayout(rig, sideSpanOf(rig), 16)
  const above = fromAbove(rig, ruleBook)
  const { unitsPerM } = planLayout(rig)
  const boat = boatFromSide(rig, layout)
  const aftOf = (position: string): number => {
    const axle = /^axle (\d)/.exec(position)?.[1]
    if (axle !== undefined) return layout.axlesM[Number(axle) - 1] ?? layout.middleM
    if (position === 'all axles') return layout.middleM
    return position === 'winch post' ? layout.stemM - 0.16 : Math.min(above.spotAt({ position }).y / unitsPerM, layout.lengthM)
  }
  return {
    viewBox: [0, 0, layout.width, layout.groundY + 8], shapes: [...boat.hull, ...trailerFromSide(rig, layout), ...boat.inside], toScale: layout.toScale,
    spotAt: ({ at, position }) => ({ x: layout.x(at?.aftOfBallM ?? aftOf(position)), y: layout.y(at?.view === 'side' ? at.heightM : heightOf(position, layout)) }),
  }
}

/** The rig from above (coupler up) or from the side (coupler at the left), by its own geometry. */
export const rigView = (rig: Rig, ruleBook: RuleBook, view: SpotView): RigView => (view === 'plan' ? fromAbove(rig, ruleBook) : fromTheSide(rig, ruleBook))
