import { backdrop, bolt, common, linear, mottle, relief, rule, ruleDefs } from '../materials.mjs'

const pxPerMm = 26

/** Disc, lining, backing plate and caliper seen edge-on; the lining has its true thickness at the rule's scale. */
export const draw = ({ liningM }) => {
  const lining = liningM * 1000 * pxPerMm
  const discRight = 640
  const plate = 6 * pxPerMm
  return {
    defs: common() + ruleDefs + relief('liningRough', { frequency: '0.4', octaves: 4, height: 4, seed: 2 }) + relief('cast2', { frequency: '0.22', octaves: 4, height: 2.4, seed: 15 }) + mottle('rusty', { frequency: '0.02 0.05', strength: 0.22, seed: 4 }) +
      linear('disc', [[0, '#5c6367'], [0.2, '#b9bfc2'], [0.5, '#eef0f0'], [0.75, '#a2a9ad'], [1, '#6c7478']], [0, 0, 1, 0]) + linear('back', [[0, '#6f6a66'], [0.4, '#a29b95'], [1, '#5a5551']], [0, 0, 1, 0]) + linear('caliper', [[0, '#8f979b'], [0.4, '#767e82'], [1, '#3c4347']]),
    body: `
      <rect width="1600" height="1200" fill="#1c1f21"/>
      ${backdrop('<rect x="1100" y="-200" width="900" height="1700" fill="#4b5256"/><circle cx="200" cy="300" r="420" fill="#5b6266"/>', 'veryFar')}
      <g filter="url(#cast)"><path d="M560 60 H1500 q40 0 40 40 V330 H${discRight + 40} V250 H560 Z" fill="url(#caliper)" filter="url(#cast2)"/></g>
      <g filter="url(#cast)"><path d="M1010 300 H1540 V900 q0 60 -60 60 H1070 q-60 0 -60 -60 Z" fill="url(#caliper)" filter="url(#cast2)"/></g>
      ${bolt(1320, 200, 62)}
      <g filter="url(#cast)"><rect x="${discRight + lining + plate + 6}" y="420" width="170" height="400" rx="18" fill="url(#steel)" filter="url(#brushed)"/></g>
      <g filter="url(#cast)"><rect x="${discRight - 230}" y="-60" width="230" height="1320" fill="url(#disc)" filter="url(#brushed)"/></g>
      <rect x="${discRight - 230}" y="-60" width="18" height="1320" fill="#8a4b22" opacity="0.7" filter="url(#rusty)"/><rect x="${discRight - 16}" y="-60" width="8" height="1320" fill="#8a4b22" opacity="0.5"/>
      <g filter="url(#castClose)"><rect x="${discRight}" y="372" width="${lining}" height="500" fill="#6b4a38" filter="url(#liningRough)"/></g>
      <g filter="url(#castClose)"><path d="M${discRight + lining} 330 h${plate} v590 h${-plate} z" fill="url(#back)" filter="url(#rusty)"/></g>
      <path d="M${discRight + lining + 5} 330 v590" stroke="#d8b79c" stroke-opacity="0.5" stroke-width="3"/>
      <path d="M${discRight + lining + 20} 330 q40 -70 120 -60" fill="none" stroke="#b4bbbe" stroke-width="14"/>
      ${rule({ x: discRight, y: 914, lengthMm: 24, pxPerMm, heightPx: 120 })}`,
    focus: { x: 760, y: 680, r: 1000 },
  }
}
