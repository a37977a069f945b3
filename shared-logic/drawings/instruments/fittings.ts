import type { Shape } from '../drawing'
import { box, circle, label, line, path } from '../strokes'
import { arrow } from './scale'

const ink = { stroke: 'ink', weight: 2.2 } as const
const metal = { stroke: 'metal', fill: 'metal', weight: 2.2 } as const
const body = { stroke: 'ink', fill: 'paper', weight: 2.2 } as const

const hullBow = path('M236 34 C150 34 96 44 62 66 C78 104 96 128 128 146 L236 146', { stroke: 'hull', weight: 2.6 })
const stern = path('M6 46 H170 L164 138 H6', { stroke: 'hull', weight: 2.6 })

/** What to look at where no figure is read. All on a sheet of 240 x 180, same stroke, same angle of view. */
export const fittings = {
  'tyre sidewall': (): Shape[] => [
    circle(120, 92, 84, { stroke: 'rubber', fill: 'rubber', weight: 2.4 }),
    circle(120, 92, 46, { stroke: 'ink', fill: 'paper', weight: 2 }),
    circle(120, 92, 12, body),
    box(74, 16, 92, 25, { stroke: 'ink', fill: 'paper', weight: 1.8 }, 12),
    label(120, 33, 'DOT … 2319', 13, { anchor: 'middle' }),
    ...arrow({ x: 224, y: 60 }, { x: 172, y: 32 }, 'select'),
  ],
  lamp: (): Shape[] => [
    box(44, 54, 152, 76, body, 10),
    line([{ x: 118, y: 54 }, { x: 118, y: 130 }], ink),
    ...[62, 80, 98].flatMap((x) => [74, 92, 110].map((y) => circle(x, y, 5, { stroke: 'fail', fill: 'strap', weight: 1.6 }))),
    ...[136, 156, 176].flatMap((x) => [74, 92, 110].map((y) => circle(x, y, 5, { stroke: 'advisory', fill: 'oil', weight: 1.6 }))),
    circle(52, 60, 2.4, ink), circle(188, 124, 2.4, ink),
  ],
  'bow stop': (): Shape[] => [
    hullBow,
    box(14, 20, 18, 150, metal, 2),
    path('M32 56 L66 50 M32 92 L72 90', ink),
    path('M66 42 L58 66 L80 98 L88 92', { stroke: 'ink', weight: 5 }),
    ...arrow({ x: 200, y: 90 }, { x: 104, y: 82 }, 'select'),
  ],
  'bow tie': (): Shape[] => [
    hullBow,
    box(14, 20, 18, 150, metal, 2),
    circle(82, 104, 6, ink),
    line([{ x: 32, y: 70 }, { x: 78, y: 101 }], { stroke: 'strap', weight: 3 }),
    line([{ x: 86, y: 108 }, { x: 150, y: 168 }], { stroke: 'strap', weight: 4 }),
    ...arrow({ x: 176, y: 128 }, { x: 200, y: 152 }, 'select'),
    line([{ x: 8, y: 171 }, { x: 236, y: 171 }], { stroke: 'metal', weight: 5 }),
  ],
  'transom straps': (): Shape[] => [
    stern,
    box(168, 60, 26, 90, { stroke: 'hull', fill: 'paper', weight: 2.2 }, 8),
    circle(160, 96, 6, ink),
    line([{ x: 156, y: 100 }, { x: 88, y: 166 }], { stroke: 'strap', weight: 4 }),
    ...arrow({ x: 92, y: 112 }, { x: 62, y: 142 }, 'select'),
    line([{ x: 6, y: 169 }, { x: 176, y: 169 }], { stroke: 'metal', weight: 5 }),
  ],
  hub: (): Shape[] => [
    circle(120, 90, 76, metal),
    circle(120, 90, 34, body),
    circle(120, 90, 22, ink),
    ...[0, 72, 144, 216, 288].map((turn) => circle(120 + 54 * Math.cos(((turn - 90) * Math.PI) / 180), 90 + 54 * Math.sin(((turn - 90) * Math.PI) / 180), 8, body)),
    ...arrow({ x: 214, y: 60 }, { x: 214, y: 120 }, 'select'), ...arrow({ x: 214, y: 120 }, { x: 214, y: 60 }, 'select'),
  ],
  coupler: (): Shape[] => [
    path('M20 66 H126 C150 66 164 78 164 102 H132 C132 96 128 94 122 94 H20 Z', metal),
    path('M84 66 L104 40 L138 44 L120 66 Z', body),
    circle(148, 116, 21, body),
    path('M140 136 H156 V160 H140 Z', body),
    line([{ x: 104, y: 160 }, { x: 210, y: 160 }], { stroke: 'ink', weight: 5 }),
    circle(100, 56, 4, { stroke: 'select', weight: 2.6 }),
    ...arrow({ x: 60, y: 24 }, { x: 92, y: 48 }, 'select'),
  ],
  chains: (): Shape[] => [
    path('M16 46 H104 V74 H16 Z', metal),
    ...chainOf([{ x: 64, y: 76 }, { x: 92, y: 124 }, { x: 142, y: 132 }, { x: 192, y: 84 }]),
    ...chainOf([{ x: 40, y: 76 }, { x: 82, y: 146 }, { x: 152, y: 154 }, { x: 206, y: 98 }]),
    path('M188 70 C206 60 220 72 214 92', { stroke: 'ink', weight: 4 }),
    line([{ x: 10, y: 174 }, { x: 232, y: 174 }], { stroke: 'hairline', weight: 2 }),
  ],
  'corroded spot': (): Shape[] => [
    box(12, 56, 216, 64, metal, 2),
    path('M92 74 C104 62 128 64 138 76 C154 80 152 100 136 104 C122 114 98 108 94 96 C82 92 82 80 92 74 Z', { stroke: 'fail', fill: 'strap', weight: 2 }),
    line([{ x: 86, y: 134 }, { x: 150, y: 134 }], { stroke: 'select', weight: 2 }),
    line([{ x: 86, y: 128 }, { x: 86, y: 140 }], { stroke: 'select', weight: 2 }), line([{ x: 150, y: 128 }, { x: 150, y: 140 }], { stroke: 'select', weight: 2 }),
  ],
  'leaf spring': (): Shape[] => [
    ...[0, 1, 2].map((leaf) => path(`M${24 + leaf * 26} ${70 + leaf * 9} Q120 ${124 + leaf * 5} ${216 - leaf * 26} ${70 + leaf * 9}`, { stroke: 'ink', weight: 4 })),
    circle(24, 66, 8, body), circle(216, 66, 8, body),
    path('M104 84 V138 M136 84 V138', { stroke: 'ink', weight: 4 }), box(96, 116, 48, 14, metal, 2), circle(120, 104, 10, body),
    path('M216 66 L226 34', { stroke: 'ink', weight: 4 }), path('M14 30 H236', { stroke: 'metal', weight: 6 }), path('M24 66 V32', { stroke: 'ink', weight: 4 }),
  ],
  bunk: (): Shape[] => [
    path('M16 92 C86 60 154 60 224 92', { stroke: 'hull', weight: 2.6 }),
    path('M60 88 L96 76 L100 88 L64 100 Z', { stroke: 'ink', fill: 'rubber', weight: 2 }), path('M180 88 L144 76 L140 88 L176 100 Z', { stroke: 'ink', fill: 'rubber', weight: 2 }),
    path('M80 96 V148 M160 96 V148', { stroke: 'metal', weight: 7 }), line([{ x: 20, y: 152 }, { x: 220, y: 152 }], { stroke: 'metal', weight: 9 }),
    circle(80, 132, 3.4, body), circle(160, 132, 3.4, body),
  ],
  winch: (): Shape[] => [
    box(104, 96, 30, 78, metal, 2), circle(120, 76, 42, body), circle(120, 76, 16, ink),
    ...Array.from({ length: 12 }, (_, tooth) => (tooth * Math.PI) / 6).map((turn) => line([{ x: 120 + 42 * Math.cos(turn), y: 76 + 42 * Math.sin(turn) }, { x: 120 + 49 * Math.cos(turn + 0.12), y: 76 + 49 * Math.sin(turn + 0.12) }], { stroke: 'ink', weight: 3 })),
    path('M120 76 L66 30', { stroke: 'ink', weight: 4 }), box(48, 18, 22, 12, body, 5),
    line([{ x: 136, y: 64 }, { x: 232, y: 40 }], { stroke: 'strap', weight: 4 }), path('M166 108 L154 92 L164 82', { stroke: 'select', weight: 4 }),
  ],
  plug: (): Shape[] => [
    circle(120, 90, 66, metal), circle(120, 90, 54, body),
    ...[0, 60, 120, 180, 240, 300].map((turn) => box(114 + 32 * Math.cos(((turn - 90) * Math.PI) / 180), 82 + 32 * Math.sin(((turn - 90) * Math.PI) / 180), 12, 16, { stroke: 'ink', fill: 'faint', weight: 1.8 }, 3)),
    circle(120, 90, 7, { stroke: 'ink', fill: 'faint', weight: 1.8 }), box(108, 16, 24, 12, body, 3),
  ],
  weld: (): Shape[] => [
    box(20, 110, 200, 34, metal, 2), box(96, 28, 48, 82, metal, 2),
    path('M96 110 C92 104 88 104 84 110 M144 110 C148 104 152 104 156 110', ink),
    path('M84 112 l8 -8 M92 112 l8 -8 M140 112 l8 -8 M148 112 l8 -8', ink),
    path('M150 112 L166 104 L174 118 L190 112', { stroke: 'fail', weight: 2.6 }),
  ],
  'wheel nuts': (): Shape[] => [
    circle(120, 90, 80, { stroke: 'rubber', fill: 'rubber', weight: 2.4 }), circle(120, 90, 58, metal), circle(120, 90, 18, body),
    ...[0, 72, 144, 216, 288].map((turn) => hexagon(120 + 38 * Math.cos(((turn - 90) * Math.PI) / 180), 90 + 38 * Math.sin(((turn - 90) * Math.PI) / 180), 9)),
    path('M120 52 L142 121 L84 78 L156 78 L98 121 Z', { stroke: 'select', weight: 1.4, dashed: true }),
  ],
  hose: (): Shape[] => [
    box(14, 60, 34, 26, body, 3), path('M48 73 C96 73 84 132 132 132 C172 132 168 92 206 92', { stroke: 'rubber', weight: 12 }),
    path('M48 73 C96 73 84 132 132 132 C172 132 168 92 206 92', { stroke: 'paper', weight: 6 }), box(204, 80, 26, 24, body, 3),
    path('M104 112 l10 -6 M110 122 l10 -6', { stroke: 'fail', weight: 2.6 }),
  ],
  plate: (): Shape[] => [
    box(28, 40, 184, 104, body, 6), circle(40, 52, 3, ink), circle(200, 52, 3, ink), circle(40, 132, 3, ink), circle(200, 132, 3, ink),
    ...[66, 84, 102, 120].map((y, row) => line([{ x: 54, y }, { x: row % 2 === 0 ? 186 : 150, y }], { stroke: 'ink', weight: 2 })),
  ],
} as const

function chainOf(points: readonly { readonly x: number; readonly y: number }[]): Shape[] {
  return points.slice(1).flatMap((to, index) => {
    const from = points[index] ?? to
    const links = 4
    return Array.from({ length: links }, (_, link) => {
      const share = (link + 0.5) / links
      return circle(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share, link % 2 === 0 ? 6 : 4, { stroke: 'ink', weight: 2 })
    })
  })
}

function hexagon(x: number, y: number, r: number): Shape {
  const corner = (index: number): string => `${(x + r * Math.cos((index * Math.PI) / 3)).toFixed(1)} ${(y + r * Math.sin((index * Math.PI) / 3)).toFixed(1)}`
  return path(`M${[0, 1, 2, 3, 4, 5].map(corner).join(' L')} Z`, body)
}
