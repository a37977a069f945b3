import type { Rig } from '../../rig/rig'
import type { Shape } from '../drawing'
import { box, circle, line, outline } from '../strokes'
import type { SideLayout } from './layout'

const metal = { stroke: 'metal', fill: 'paper', weight: 2.2 } as const
const ink = { stroke: 'ink', fill: 'paper', weight: 2.2 } as const

/** Tongue rising from the coupler to the rails, and the rails to the rear. */
const frame = (at: SideLayout): Shape[] => {
  const { x, y, perM, lengthM, deckM, ballM } = at
  const deep = 0.1
  const foreM = Math.min(lengthM * 0.22, 1.2)
  const tongue = [{ x: x(0.12), y: y(ballM + 0.02) }, { x: x(foreM), y: y(deckM) }, { x: x(lengthM), y: y(deckM) }, { x: x(lengthM), y: y(deckM - deep) }, { x: x(foreM), y: y(deckM - deep) }, { x: x(0.12), y: y(ballM - 0.07) }]
  const cross = [0.3, 0.52, 0.74, 0.96].map((share) => box(x(lengthM * share) - 4, y(deckM - deep), 8, 0.06 * perM, metal))
  return [...cross, outline(tongue, { ...metal, ...(!at.known.length && { dashed: true as const }) })]
}

const coupler = ({ x, y, perM, ballM }: SideLayout): Shape[] => [
  line([{ x: x(0), y: y(ballM) }, { x: x(0), y: y(ballM - 0.14) }], { stroke: 'ink', weight: 3 }),
  line([{ x: x(-0.1), y: y(ballM - 0.14) }, { x: x(0.06), y: y(ballM - 0.14) }], { stroke: 'ink', weight: 3 }),
  box(x(-0.08), y(ballM + 0.07), 0.3 * perM, 0.14 * perM, ink, 0.05 * perM),
  circle(x(0), y(ballM), Math.max(0.035 * perM, 4), { stroke: 'ink', fill: 'ink', weight: 1 }),
]

const jack = (rig: Rig, { x, y, perM, ballM }: SideLayout): Shape[] =>
  rig.trailer.jack === false
    ? []
    : [
        box(x(0.42), y(ballM + 0.42), 0.06 * perM, 0.5 * perM, { stroke: 'metal', fill: 'paper', weight: 1.6 }, 2),
        circle(x(0.45), y(ballM - 0.16), 0.07 * perM, { stroke: 'metal', fill: 'paper', weight: 1.6 }),
        line([{ x: x(0.45), y: y(ballM + 0.42) }, { x: x(0.57), y: y(ballM + 0.46) }], { stroke: 'metal', weight: 1.6 }),
      ]

/** Winch post with its bow stop, just ahead of the stem. */
const winchPost = (rig: Rig, { x, y, perM, stemM, deckM, bowEye }: SideLayout): Shape[] => {
  if (!rig.boat) return []
  const [foot, topM] = [stemM - 0.16, bowEye.heightM + 0.26]
  const drum = { x: x(foot - 0.04), y: y(bowEye.heightM - 0.02) }
  const winch = rig.trailer.winch === 'none'
    ? []
    : [
        line([drum, { x: x(bowEye.aftM), y: y(bowEye.heightM) }], { stroke: 'strap', weight: 2.6 }),
        circle(drum.x, drum.y, 0.085 * perM, { stroke: 'ink', fill: 'paper', weight: 2 }), circle(drum.x, drum.y, 3, { stroke: 'ink', fill: 'ink', weight: 1 }),
      ]
  return [
    line([{ x: x(foot - 0.34), y: y(deckM) }, { x: x(foot), y: y(bowEye.heightM - 0.06) }], { stroke: 'metal', weight: 2 }),
    box(x(foot - 0.04), y(topM), 0.08 * perM, (topM - deckM) * perM, metal, 2),
    ...winch,
    line([{ x: x(foot), y: y(topM - 0.05) }, { x: x((bowEye.aftM + stemM) / 2) - 2, y: y(topM - 0.05) }], { stroke: 'ink', weight: 5 }),
  ]
}

const wheel = (axleM: number, at: SideLayout): Shape[] => {
  const { x, y, perM, wheelM, known } = at
  const dashed = !known.axle && { dashed: true as const }
  return [
    circle(x(axleM), y(wheelM), wheelM * perM, { stroke: 'rubber', fill: 'faint', weight: 3, ...dashed }),
    circle(x(axleM), y(wheelM), wheelM * perM * 0.58, { stroke: 'metal', fill: 'paper', weight: 1.6 }),
    circle(x(axleM), y(wheelM), wheelM * perM * 0.2, { stroke: 'ink', fill: 'paper', weight: 1.8 }),
  ]
}

const mudguard = ({ x, y, perM, axlesM, wheelM }: SideLayout): Shape => {
  const [first, last] = [axlesM[0] ?? 0, axlesM.at(-1) ?? 0]
  const reach = wheelM * 1.22
  const corner = reach * 0.55
  return line(
    [
      { x: x(first - reach), y: y(wheelM + 0.02) }, { x: x(first - reach) + corner * perM * 0.2, y: y(wheelM * 2 - corner * 0.2) }, { x: x(first - reach + corner), y: y(wheelM * 2 + 0.08) },
      { x: x(last + reach - corner), y: y(wheelM * 2 + 0.08) }, { x: x(last + reach) - corner * perM * 0.2, y: y(wheelM * 2 - corner * 0.2) }, { x: x(last + reach), y: y(wheelM + 0.02) },
    ],
    { stroke: 'metal', weight: 2 },
  )
}

/** Bunks or rollers between rails and hull. */
const supports = (rig: Rig, { x, y, perM, stemM, sternM, lengthM, deckM }: SideLayout): Shape[] => {
  if (!rig.boat) return []
  const [fromM, toM] = [stemM + (sternM - stemM) * 0.24, Math.min(sternM, lengthM) - 0.06]
  if (!(toM > fromM)) return []
  if (rig.trailer.supports === 'rollers')
    return Array.from({ length: 6 }, (_, index) => circle(x(fromM + ((toM - fromM) * (index + 0.5)) / 6), y(deckM + 0.06), 0.055 * perM, { stroke: 'ink', fill: 'faint', weight: 1.6 }))
  return [box(x(fromM), y(deckM + 0.11), (toM - fromM) * perM, 0.08 * perM, { stroke: 'ink', fill: 'faint', weight: 1.6 }, 3)]
}

/** Ground, frame, coupler, winch post, supports and wheels, from the side with the coupler at the left. */
export const trailerFromSide = (rig: Rig, at: SideLayout): Shape[] => [
  line([{ x: 14, y: at.groundY }, { x: at.width - 14, y: at.groundY }], { stroke: 'hairline', weight: 2 }),
  ...supports(rig, at), ...winchPost(rig, at), ...jack(rig, at), ...frame(at), ...coupler(at), mudguard(at), ...at.axlesM.flatMap((axleM) => wheel(axleM, at)),
]
