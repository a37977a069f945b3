import { backdrop, bolt, chance, common, linear, rod } from '../materials.mjs'

const wires = [
  { y: 500, colours: ['#4d3b05', '#d7a80f', '#f7d860'] },
  { y: 552, colours: ['#0d3d20', '#1f8a46', '#6cc98d'] },
  { y: 604, colours: ['#2c170a', '#6e4020', '#a8734a'] },
  { y: 656, colours: ['#77797a', '#d5d7d6', '#ffffff'] },
]

const run = (y, i) => `M-60 ${y + 20 - i * 4} C300 ${y - 30 + i * 12} 480 ${y - 4} 640 ${600 + (i - 1.5) * 26} S900 ${600 + (i - 1.5) * 25} 980 ${600 + (i - 1.5) * 30} S1350 ${y + 40 - i * 18} 1680 ${y + 10}`

/** Four wires of a harness under a clip that bites; one has lost its insulation over `barePx` of the picture. */
export const draw = ({ barePx }) => {
  const next = chance(9)
  const strands = Array.from({ length: 13 }, (_, i) => `<path d="M${566 - barePx} ${538 + i * 2.6} q${barePx * 0.6} ${(next() - 0.5) * 22} ${barePx * 1.3} ${8 + (next() - 0.5) * 8}" fill="none" stroke="${['#c4743a', '#e09a5c', '#8f4c1f', '#f0b98a'][i % 4]}" stroke-width="3.4"/>`).join('')
  const loose = Array.from({ length: 6 }, () => `<path d="M${540 - next() * 30} ${548 + next() * 10} q${-8 + next() * 30} ${-40 - next() * 30} ${-20 + next() * 50} ${-64 - next() * 40}" fill="none" stroke="#d68b4d" stroke-width="2.6"/>`).join('')
  return {
    defs: common() + linear('rail', [[0, '#e8ebec'], [0.1, '#c5cbce'], [0.8, '#9ca4a8'], [1, '#596165']]) + linear('clip', [[0, '#eef0f1'], [0.2, '#b5bcbf'], [0.6, '#848c90'], [1, '#50585c']], [0, 0, 1, 0]),
    body: `
      <rect width="1600" height="1200" fill="#33393b"/>
      ${backdrop('<rect x="-300" y="-200" width="2200" height="420" fill="#5e7787"/><rect x="-300" y="990" width="2200" height="400" fill="#615d55"/>', 'veryFar')}
      <g transform="rotate(-3 800 600)">
        <g filter="url(#cast)"><rect x="-200" y="230" width="2000" height="760" fill="url(#rail)" filter="url(#spangle)"/></g><rect x="-200" y="230" width="2000" height="14" fill="#fff" opacity="0.55"/>
        ${wires.map(({ y, colours }, i) => rod(run(y, i), 46, colours)).join('')}
        <path d="M${556 - barePx} 526 q${barePx * 0.7} -8 ${barePx * 1.4} 10 l-4 44 q${-barePx * 0.7} -14 ${-barePx * 1.3} -6 z" fill="#2a180b"/>${strands}<g filter="url(#castClose)">${loose}</g>
        <ellipse cx="640" cy="600" rx="70" ry="110" fill="#000" opacity="0.45" filter="url(#softer)"/>
        <g filter="url(#cast)"><path d="M650 300 H960 q24 0 24 24 V850 q0 24 -24 24 H650 q-24 0 -24 -24 V324 q0 -24 24 -24 Z" fill="url(#clip)" filter="url(#spangle)"/></g>
        <path d="M638 470 V740" stroke="#fff" stroke-opacity="0.75" stroke-width="7"/><path d="M974 470 V740" stroke="#000" stroke-opacity="0.35" stroke-width="10"/>
        <path d="M700 470 q105 -26 210 0 V742 q-105 26 -210 0 Z" fill="#fff" opacity="0.14" filter="url(#softer)"/>
        ${bolt(805, 388, 52)}${bolt(805, 790, 52, 0.7)}
        <path d="M790 850 q10 60 -6 110 t8 90" fill="none" stroke="#8d4a1e" stroke-opacity="0.4" stroke-width="20" filter="url(#soft)"/>
      </g>`,
    focus: { x: 640, y: 580, r: 960 },
  }
}
