import type { TieDownPlan } from '../../lashing/plan'
import type { Rig } from '../../rig/rig'
import type { Shape } from '../drawing'
import { box, circle, line, path } from '../strokes'

const drawnLength = 880
const margin = 60

/** Proportions of the sketch while a length is not known: common practice, no source. */
const sketch = { lengthM: 6.5, widthM: 2.3, axleShare: 0.64, bowM: 1.3, wheelM: 0.33, railM: 0.55, hullDepthM: 0.85 }

/** Where things stand, in drawing units; `x`, `side` and `plan` turn metres into them. */
export interface LashingLayout {
  readonly width: number
  readonly height: number
  readonly perM: number
  readonly groundY: number
  readonly planTop: number
  readonly planY: number
  readonly middleX: number
  readonly stemM: number
  readonly sternM: number
  readonly halfBeamM: number
  readonly halfWidthM: number
  readonly lengthM: number
  readonly axleM: number
  readonly sheerM: number
  readonly toScale: boolean
  readonly x: (aftM: number) => number
  readonly side: (heightM: number) => number
  readonly plan: (toRightM: number) => number
}

export const lashingLayout = (rig: Rig, { straps }: TieDownPlan): LashingLayout => {
  const { trailer, boat, loading } = rig
  const ends = straps.flatMap(({ strap }) => [strap.boat, strap.trailer].flatMap((end) => end ?? []))
  const stemM = loading?.stemAftOfBallM ?? Math.min(sketch.bowM, ...straps.flatMap(({ strap }) => strap.boat?.aftOfBallM ?? []))
  const holdsAft = Math.max(0, ...straps.flatMap(({ strap }) => strap.boat?.aftOfBallM ?? []))
  const sternM = boat?.lengthM === undefined ? Math.max(holdsAft, stemM + 5) : stemM + boat.lengthM
  const lengthM = trailer.lengthM ?? Math.max(sternM - 0.2, sketch.lengthM)
  const first = Math.min(0, ...ends.map(({ aftOfBallM }) => aftOfBallM))
  const last = Math.max(lengthM, sternM, ...ends.map(({ aftOfBallM }) => aftOfBallM))
  const perM = drawnLength / (last - first + 0.5)
  const halfWidthM = (trailer.widthM ?? sketch.widthM) / 2
  const halfBeamM = boat?.beamM === undefined ? halfWidthM * 0.92 : boat.beamM / 2
  const sheerM = Math.max(1.45, ...straps.flatMap(({ strap }) => (strap.boat ? [strap.boat.heightM + 0.15] : [])))
  const acrossM = Math.max(halfWidthM, halfBeamM, ...ends.map(({ toRightM }) => Math.abs(toRightM))) + 0.25
  const groundY = 56 + (sheerM + 0.3) * perM
  const planTop = groundY + 56
  const planY = planTop + acrossM * perM
  const x = (aftM: number): number => margin + (aftM - first + 0.25) * perM
  return {
    width: drawnLength + 2 * margin, height: Math.round(planY + acrossM * perM + 34), perM, groundY, planTop, planY, middleX: x((stemM + sternM) / 2),
    stemM, sternM, halfBeamM, halfWidthM, lengthM, axleM: trailer.ballToAxleM ?? lengthM * sketch.axleShare, sheerM,
    toScale: [loading?.stemAftOfBallM, boat?.lengthM, boat?.beamM, trailer.lengthM, trailer.widthM, trailer.ballToAxleM].every((value) => value !== undefined),
    x, side: (heightM) => groundY - heightM * perM, plan: (toRightM) => planY - toRightM * perM,
  }
}

const metal = { stroke: 'metal', weight: 2 } as const
const hullLine = { stroke: 'hull', weight: 2.2 } as const

const axlesOf = (rig: Rig, { axleM }: LashingLayout): number[] => {
  const count = rig.trailer.axleCount ?? 1
  return Array.from({ length: count }, (_, index) => axleM + (index - (count - 1) / 2) * (rig.stance?.axleSpacingM ?? 0.8))
}

const sideView = (rig: Rig, at: LashingLayout): Shape[] => {
  const { x, side, perM, stemM, sternM } = at
  const [keel, sheer, long] = [side(sketch.railM + 0.12), side(at.sheerM), sternM - stemM]
  return [
    line([{ x: x(-0.2), y: at.groundY }, { x: x(Math.max(at.lengthM, sternM) + 0.2), y: at.groundY }], { stroke: 'hairline', weight: 1.6 }),
    ...(rig.boat ? [path(`M${x(stemM)} ${sheer} C${x(stemM + long * 0.04)} ${(sheer + keel) / 2} ${x(stemM + long * 0.14)} ${keel} ${x(stemM + long * 0.3)} ${keel} L${x(sternM)} ${keel} L${x(sternM)} ${side(at.sheerM - 0.18)} C${x(stemM + long * 0.6)} ${side(at.sheerM - 0.2)} ${x(stemM + long * 0.3)} ${side(at.sheerM - 0.1)} ${x(stemM)} ${sheer} Z`, { ...hullLine, fill: 'faint' })] : []),
    box(x(0.15), side(sketch.railM), (at.lengthM - 0.15) * perM, 8, { ...metal, fill: 'paper' }, 2),
    line([{ x: x(0), y: side(sketch.railM) + 4 }, { x: x(0.15), y: side(sketch.railM) + 4 }], { stroke: 'ink', weight: 4 }),
    circle(x(0), side(sketch.railM) + 8, 6, { stroke: 'ink', fill: 'paper', weight: 2 }),
    ...axlesOf(rig, at).flatMap((axle) => [
      circle(x(axle), side(sketch.wheelM), sketch.wheelM * perM, { stroke: 'rubber', fill: 'paper', weight: 2.4 }),
      circle(x(axle), side(sketch.wheelM), 5, { stroke: 'ink', fill: 'paper', weight: 1.6 }),
    ]),
  ]
}

const planView = (rig: Rig, at: LashingLayout): Shape[] => {
  const { x, plan, perM, stemM, sternM, halfBeamM: beam, halfWidthM, lengthM } = at
  const rail = halfWidthM * 0.62
  const [fore, shoulder] = [lengthM * 0.3, stemM + (sternM - stemM) * 0.42]
  const half = (sign: number): string => `C${x(stemM + 0.1)} ${plan(sign * beam * 0.6)} ${x(stemM + (shoulder - stemM) * 0.5)} ${plan(sign * beam)} ${x(shoulder)} ${plan(sign * beam)} L${x(sternM)} ${plan(sign * beam * 0.93)}`
  return [
    ...(rig.boat ? [path(`M${x(stemM)} ${plan(0)} ${half(1)} L${x(sternM)} ${plan(-beam * 0.93)} M${x(stemM)} ${plan(0)} ${half(-1)}`, hullLine)] : []),
    ...[1, -1].flatMap((sign) => [
      line([{ x: x(0.15), y: plan(0) }, { x: x(fore), y: plan(sign * rail) }, { x: x(lengthM), y: plan(sign * rail) }], metal),
      ...axlesOf(rig, at).map((axle) => box(x(axle - sketch.wheelM), plan(sign * (halfWidthM - 0.1)) - 0.1 * perM, sketch.wheelM * 2 * perM, 0.2 * perM, { stroke: 'rubber', fill: 'faint', weight: 2 }, 6)),
    ]),
    ...axlesOf(rig, at).map((axle) => line([{ x: x(axle), y: plan(halfWidthM - 0.2) }, { x: x(axle), y: plan(0.2 - halfWidthM) }], { stroke: 'metal', weight: 3 })),
    line([{ x: x(lengthM), y: plan(rail) }, { x: x(lengthM), y: plan(-rail) }], metal),
    circle(x(0), plan(0), 6, { stroke: 'ink', fill: 'paper', weight: 2 }),
  ]
}

/** Trailer and boat in thin lines, side view above, plan below. */
export const lashingBackground = (rig: Rig, at: LashingLayout): Shape[] => [...sideView(rig, at), ...planView(rig, at)]
