import type { Shape } from '../drawing'
import { box, circle, label, line, path } from '../strokes'
import { arrow, rule, within } from './scale'

/** `value` in SI, as the field keeps it; undefined draws the instrument without a reading. All on a sheet of 240 x 180. */
export type Gauge = (value: number | undefined) => Shape[]

/** Oil in a hub's sight glass; `value` 0 empty to 1 full. */
export const sightGlass: Gauge = (value) => {
  const r = 62
  const level = value === undefined ? undefined : within(value, 0, 1)
  const y = 90 + r - (level ?? 0) * 2 * r
  const half = Math.sqrt(Math.max(0, r * r - (y - 90) ** 2))
  const large = level !== undefined && level > 0.5 ? 1 : 0
  return [
    circle(120, 90, 80, { stroke: 'metal', fill: 'metal', weight: 2.4 }),
    circle(120, 90, r, { fill: 'paper' }),
    ...(level === undefined || level <= 0 ? [] : level >= 1 ? [circle(120, 90, r, { fill: 'oil' })] : [path(`M${120 - half} ${y} A${r} ${r} 0 ${large} 0 ${120 + half} ${y} Z`, { fill: 'oil' }), line([{ x: 120 - half, y }, { x: 120 + half, y }], { stroke: 'ink', weight: 2 })]),
    circle(120, 90, r, { stroke: 'ink', weight: 2.4 }),
    ...[0, 60, 120, 180, 240, 300].map((turn) => circle(120 + 71 * Math.cos((turn * Math.PI) / 180), 90 + 71 * Math.sin((turn * Math.PI) / 180), 4, { stroke: 'ink', weight: 1.4 })),
    line([{ x: 206, y: 90 }, { x: 188, y: 90 }], { stroke: 'ink', weight: 2 }),
    label(210, 94, '½', 16),
  ]
}

/** Damage across a strap of `value` m; the strap is drawn 50 mm wide. */
export const strapWidth: Gauge = (value) => {
  const perM = 96 / 0.05
  const cut = within(value ?? 0, 0, 0.05) * perM
  return [
    box(20, 36, 200, 96, { stroke: 'strap', fill: 'strap', weight: 2 }),
    ...[54, 84, 114].map((y) => line([{ x: 20, y }, { x: 220, y }], { stroke: 'strap', weight: 1, dashed: true })),
    ...(cut > 0 ? [path(`M108 36 L116 ${36 + cut * 0.5} L112 ${36 + cut} L124 ${36 + cut * 0.55} L132 36 Z`, { stroke: 'ink', fill: 'paper', weight: 2 })] : []),
    line([{ x: 150, y: 36 }, { x: 150, y: 36 + Math.max(cut, 2) }], { stroke: 'ink', weight: 2 }),
    line([{ x: 144, y: 36 }, { x: 156, y: 36 }], { stroke: 'ink', weight: 1.4 }),
    line([{ x: 144, y: 36 + cut }, { x: 156, y: 36 + cut }], { stroke: 'ink', weight: 1.4 }),
  ]
}

const treadDepthPerM = 66 / 0.01

/** Depth in a main groove, `value` m; the gauge's pin stands in the groove. */
export const treadGauge: Gauge = (value) => {
  const depth = within(value ?? 0.008, 0, 0.012) * treadDepthPerM
  const top = 78
  const pin = value === undefined ? 0 : depth
  return [
    path(`M14 ${top} H52 V${top + depth} H76 V${top} H108 V${top + depth} H132 V${top} H164 V${top + depth} H188 V${top} H226 V168 H14 Z`, { stroke: 'rubber', fill: 'rubber', weight: 2.4 }),
    box(88, top - 14, 64, 14, { stroke: 'ink', fill: 'paper', weight: 2 }, 2),
    box(111, 14, 18, top - 28, { stroke: 'ink', fill: 'paper', weight: 2 }, 3),
    line([{ x: 120, y: top }, { x: 120, y: top + pin }], { stroke: 'select', weight: 4 }),
    ...[24, 34, 44, 54].map((y) => line([{ x: 111, y }, { x: 118, y }], { stroke: 'ink', weight: 1.2 })),
  ]
}

/** How far the actuator's inner slide moves in, `value` m; the rule is in millimetres. */
export const actuatorTravel: Gauge = (value) => {
  const xOf = (m: number): number => 60 + m * (150 / 0.1)
  const x = xOf(within(value ?? 0, 0, 0.1))
  return [
    box(x - 44, 58, 34, 30, { stroke: 'ink', fill: 'paper', weight: 2.4 }, 12),
    box(x - 12, 62, 226 - x, 22, { stroke: 'ink', fill: 'faint', weight: 2 }, 2),
    box(168, 46, 66, 56, { stroke: 'metal', fill: 'metal', weight: 2.4 }, 4),
    line([{ x: xOf(0), y: 100 }, { x: xOf(0), y: 112 }], { stroke: 'select', weight: 2 }),
    ...(value === undefined ? [] : arrow({ x: xOf(0), y: 106 }, { x: Math.max(x, xOf(0) + 1), y: 106 }, 'select')),
    ...rule(124, xOf, [{ value: 0, text: '0' }, { value: 0.0254, text: '25.4' }, { value: 0.05, text: '50' }, { value: 0.075, text: '75' }, { value: 0.1, text: '100 mm' }]),
  ]
}

/** Lining left on the plate or shoe, `value` m. */
export const lining: Gauge = (value) => {
  const perM = 60 / 0.012
  const thick = Math.max(within(value ?? 0.008, 0, 0.014) * perM, 1.5)
  return [
    box(30, 116, 180, 20, { stroke: 'metal', fill: 'metal', weight: 2.2 }, 3),
    box(42, 116 - thick, 156, thick, { stroke: 'ink', fill: 'rubber', weight: 2 }, 2),
    line([{ x: 218, y: 116 }, { x: 218, y: 116 - thick }], { stroke: 'select', weight: 3 }),
    line([{ x: 212, y: 116 }, { x: 226, y: 116 }], { stroke: 'select', weight: 1.6 }),
    line([{ x: 212, y: 116 - thick }, { x: 226, y: 116 - thick }], { stroke: 'select', weight: 1.6 }),
    line([{ x: 24, y: 116 - 0.0016 * perM }, { x: 206, y: 116 - 0.0016 * perM }], { stroke: 'fail', weight: 1.4, dashed: true }),
    label(20, 112 - 0.0016 * perM, '1.6', 12, { anchor: 'middle' }),
  ]
}

/** A caliper across the ball, `value` m. */
export const ballGauge: Gauge = (value) => {
  const r = 36
  const gap = value === undefined ? 0 : within((value - 0.05) * 900, -6, 12)
  return [
    path('M102 112 L96 150 H144 L138 112 Z', { stroke: 'ink', fill: 'paper', weight: 2.2 }),
    box(76, 150, 88, 14, { stroke: 'ink', fill: 'metal', weight: 2 }, 2),
    circle(120, 84, r, { stroke: 'ink', fill: 'metal', weight: 2.4 }),
    path(`M${84 - gap} 30 V92 L${78 - gap} 104`, { stroke: 'select', weight: 4 }),
    path(`M${156 + gap} 30 V92 L${162 + gap} 104`, { stroke: 'select', weight: 4 }),
    line([{ x: 60, y: 30 }, { x: 200, y: 30 }], { stroke: 'select', weight: 4 }),
    line([{ x: 84, y: 84 }, { x: 156, y: 84 }], { stroke: 'ink', weight: 1, dashed: true }),
  ]
}

/** Cold tyre pressure, `value` Pa, on a dial to 700 kPa. */
export const pressureGauge: Gauge = (value) => {
  const turn = (pa: number): number => ((-210 + (within(pa, 0, 700_000) / 700_000) * 240) * Math.PI) / 180
  const tip = (pa: number, r: number): { x: number; y: number } => ({ x: 120 + r * Math.cos(turn(pa)), y: 96 + r * Math.sin(turn(pa)) })
  return [
    circle(120, 96, 74, { stroke: 'ink', fill: 'paper', weight: 2.4 }),
    ...[0, 100, 200, 300, 400, 500, 600, 700].flatMap((kPa) => [
      line([tip(kPa * 1000, 64), tip(kPa * 1000, 72)], { stroke: 'ink', weight: 1.6 }),
      ...(kPa % 200 === 0 ? [label(tip(kPa * 1000, 50).x, tip(kPa * 1000, 50).y + 4, String(kPa), 12, { anchor: 'middle' })] : []),
    ]),
    ...(value === undefined ? [] : [line([{ x: 120, y: 96 }, tip(value, 60)], { stroke: 'select', weight: 3.4 })]),
    circle(120, 96, 6, { stroke: 'ink', fill: 'ink' }),
    label(120, 142, 'kPa', 12, { anchor: 'middle' }),
  ]
}

/** A disc between the jaws of a micrometer, `value` m thick. */
export const rotor: Gauge = (value) => {
  const thick = value === undefined ? 24 : within(value * 1800, 8, 48)
  return [
    box(120 - thick / 2, 20, thick, 112, { stroke: 'ink', fill: 'metal', weight: 2.2 }, 2),
    line([{ x: 120, y: 24 }, { x: 120, y: 128 }], { stroke: 'hairline', weight: 1, dashed: true }),
    path(`M${120 - thick / 2} 64 H84 V154 H156 V64 H${120 + thick / 2}`, { stroke: 'select', weight: 4 }),
    box(160, 58, 56, 12, { stroke: 'select', fill: 'paper', weight: 2 }, 3),
  ]
}
