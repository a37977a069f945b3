import { fillOf } from '../../load/load-items'
import type { Rig } from '../../rig/rig'
import type { Place, Shape } from '../drawing'
import { box, circle, line, path } from '../strokes'
import type { SideLayout } from './layout'

const round = (value: number): number => Math.round(value * 10) / 10

/** The hull in profile: a raked stem, a straight keel, a fair sheer. */
const hull = ({ x, y, stemM, sternM, keelM, sheerM, known, bowEye }: SideLayout): Shape[] => {
  const long = sternM - stemM
  const deep = sheerM - keelM
  const p = (aftM: number, heightM: number): string => `${round(x(aftM))} ${round(y(heightM))}`
  const at = (share: number): number => stemM + long * share
  const sheer = `C${p(at(0.75), sheerM - deep * 0.3)} ${p(at(0.35), sheerM - deep * 0.2)} ${p(stemM, sheerM)}`
  const profile = `M${p(stemM, sheerM)} C${p(at(0.03), sheerM - deep * 0.55)} ${p(at(0.12), keelM)} ${p(at(0.28), keelM)} L${p(sternM, keelM)} L${p(sternM, sheerM - deep * 0.26)} ${sheer} Z`
  const chine = `M${p(at(0.08), keelM + deep * 0.5)} C${p(at(0.25), keelM + deep * 0.32)} ${p(at(0.5), keelM + deep * 0.28)} ${p(sternM, keelM + deep * 0.26)}`
  return [path(profile, { stroke: 'hull', fill: 'hull', weight: 2.6, ...(!known.boat && { dashed: true as const }) }), path(chine, { stroke: 'hull', weight: 1.2 }), circle(x(bowEye.aftM), y(bowEye.heightM), 3.5, { stroke: 'hull', fill: 'paper', weight: 1.6 })]
}

const engine = (rig: Rig, { x, y, perM, sternM, keelM, sheerM }: SideLayout): Shape[] => {
  const hullLine = { stroke: 'hull', fill: 'paper', weight: 2.2 } as const
  if (rig.boat?.engine === 'outboard')
    return [
      line([{ x: x(sternM), y: y(sheerM - 0.22) }, { x: x(sternM + 0.14), y: y(sheerM - 0.22) }], { stroke: 'hull', weight: 4 }),
      box(x(sternM + 0.16), y(sheerM - 0.06), 0.12 * perM, (sheerM - 0.06 - keelM + 0.05) * perM, hullLine, 4),
      box(x(sternM + 0.06), y(sheerM + 0.12), 0.36 * perM, 0.38 * perM, hullLine, 0.1 * perM),
    ]
  if (rig.boat?.engine === 'sterndrive') return [box(x(sternM), y(keelM + 0.42), 0.26 * perM, 0.16 * perM, hullLine, 4), box(x(sternM + 0.1), y(keelM + 0.3), 0.12 * perM, 0.34 * perM, hullLine, 4)]
  return []
}

interface Part {
  readonly shapes: readonly Shape[]
  readonly places: readonly Place[]
}

/** Each tank with a known place as a small box, filled as far as it is; half open where its level is not known. */
const tanks = (rig: Rig, { x, y, perM, stemM, keelM, sheerM }: SideLayout): Part[] =>
  (rig.boat?.tanks ?? []).flatMap(({ capacityM3 }, index): Part[] => {
    const at = rig.loading?.tanks?.[index]
    if (at?.aftOfStemM === undefined) return []
    // A tank is drawn as a box as wide as it is high, by its volume.
    const sideM = Math.min(Math.max(Math.cbrt(capacityM3), 0.24), (sheerM - keelM) * 0.62)
    const [left, topM] = [x(stemM + at.aftOfStemM) - (sideM * perM) / 2, keelM + 0.1 + sideM]
    const fill = Math.min(fillOf(capacityM3, at) ?? 0, 1)
    const unknown = fillOf(capacityM3, at) === undefined
    return [{
      shapes: [
        box(left, y(topM), sideM * perM, sideM * perM, { fill: 'paper' }, 4),
        ...(fill > 0 ? [box(left, y(keelM + 0.1 + sideM * fill), sideM * perM, sideM * fill * perM, { fill: 'oil' }, 3)] : []),
        box(left, y(topM), sideM * perM, sideM * perM, { stroke: 'ink', weight: 1.6, ...(unknown && { dashed: true as const }) }, 4),
      ],
      places: [{ id: `tank ${index + 1}`, x: x(stemM + at.aftOfStemM), y: y(topM - sideM / 2) }],
    }]
  })

/** Each piece of gear with a known place, on the sole or on the tongue. */
const gear = (rig: Rig, at: SideLayout): Part[] =>
  (rig.loading?.gear ?? []).flatMap(({ aftOfBallM, aftOfStemM, heightM }, index): Part[] => {
    const inBoat = aftOfBallM === undefined
    const aftM = aftOfBallM ?? (aftOfStemM === undefined ? undefined : at.stemM + aftOfStemM)
    if (aftM === undefined) return []
    const middle = { x: at.x(aftM), y: at.y(heightM ?? (inBoat ? at.keelM + (at.sheerM - at.keelM) * 0.5 : at.deckM + 0.12)) }
    return [{ shapes: [box(middle.x - 9, middle.y - 8, 18, 16, { stroke: 'ink', fill: 'paper', weight: 1.6 }, 2), line([{ x: middle.x, y: middle.y - 8 }, { x: middle.x, y: middle.y + 8 }], { stroke: 'ink', weight: 1.2 })], places: [{ id: `gear ${index + 1}`, ...middle }] }]
  })

/** Hull with engine, and what lies inside. Place 'boat' is at the stem's head, by which the boat is moved. */
export const boatFromSide = (rig: Rig, at: SideLayout): { readonly hull: readonly Shape[]; readonly inside: readonly Shape[]; readonly places: readonly Place[] } => {
  const parts = [...(rig.boat ? tanks(rig, at) : []), ...gear(rig, at)]
  return {
    hull: rig.boat ? [...hull(at), ...engine(rig, at)] : [],
    inside: parts.flatMap(({ shapes }) => shapes),
    places: [...(rig.boat ? [{ id: 'boat', x: at.x(at.stemM), y: at.y(at.sheerM) }] : []), ...parts.flatMap(({ places }) => places)],
  }
}
