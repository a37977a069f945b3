import { backdrop, bolt, chance, common, linear, radial, relief } from '../materials.mjs'

const [x, y, width, height] = [330, 300, 960, 560]
const hole = 'M760 420 L905 372 L1030 452 L1120 470 L1082 588 L1128 690 L968 742 L890 668 L764 704 L716 566 Z'

/** A rear lamp on its galvanized bracket; a piece of the red lens is gone and the bulb lies open. */
export const draw = ({ isBroken }) => {
  const next = chance(12)
  const facets = Array.from({ length: 24 * 14 }, (_, i) => {
    const [column, row] = [i % 24, Math.floor(i / 24)]
    return `<rect x="${x + column * 40}" y="${y + row * 40}" width="36" height="36" rx="6" fill="#ff4a3a" opacity="${0.1 + next() * 0.16}"/>`
  }).join('')
  const cracks = [[905, 372, 850, 300], [1030, 452, 1180, 380], [1128, 690, 1290, 760], [890, 668, 850, 860], [716, 566, 520, 610], [760, 420, 610, 330], [968, 742, 1010, 860], [520, 610, 430, 690], [520, 610, 440, 570]]
    .map(([x1, y1, x2, y2]) => `<path d="M${x1} ${y1} L${(x1 + x2) / 2 + next() * 24 - 12} ${(y1 + y2) / 2 + next() * 24 - 12} L${x2} ${y2}" fill="none" stroke="#3a0508" stroke-width="6"/><path d="M${x1 + 3} ${y1 + 3} L${(x1 + x2) / 2 + 4} ${(y1 + y2) / 2 + 3} L${x2 + 3} ${y2 + 3}" fill="none" stroke="#ffb1a8" stroke-opacity="0.8" stroke-width="2.4"/>`).join('')
  const broken = `
    <path d="${hole}" fill="#2b2725" stroke="#ffa097" stroke-width="9" stroke-linejoin="round"/>
    <g clip-path="url(#opening)"><rect x="700" y="350" width="460" height="420" fill="url(#reflector)"/><path d="${hole}" fill="none" stroke="#000" stroke-opacity="0.6" stroke-width="50" filter="url(#softer)"/>
      <g filter="url(#cast)"><rect x="860" y="600" width="130" height="170" rx="8" fill="url(#steel)"/><path d="M862 604 C820 540 838 450 925 446 C1012 450 1030 540 988 604 Z" fill="url(#bulb)"/></g>
      <path d="M892 600 L905 540 q20 -24 40 0 L958 600" fill="none" stroke="#5b4636" stroke-width="4"/><path d="M905 540 q5 14 10 0 t10 0 t10 0 t10 0" fill="none" stroke="#2c211a" stroke-width="4"/>
      <ellipse cx="892" cy="498" rx="16" ry="34" fill="#fff" opacity="0.7" transform="rotate(20 892 498)"/></g>
    <path d="${hole}" fill="none" stroke="#7d0f12" stroke-width="4" stroke-linejoin="round" transform="translate(5 6)"/>${cracks}`
  return {
    defs: common() + relief('bracket', { frequency: '0.4', height: 1.2, seed: 6 }) + linear('lens', [[0, '#e2362f'], [0.4, '#b5161a'], [1, '#6d0a10']]) + linear('shine', [[0, '#fff', 0.55], [1, '#fff', 0]]) +
      radial('reflector', [[0, '#f2efe6'], [0.5, '#a9a59b'], [1, '#4e4b46']], { fx: 0.4, fy: 0.4 }) + radial('bulb', [[0, '#fff', 0.85], [0.6, '#dfe6e6', 0.5], [1, '#9aa5a6', 0.8]], { fx: 0.35, fy: 0.3 }) + `<clipPath id="opening"><path d="${hole}"/></clipPath><clipPath id="lensEdge"><rect x="${x}" y="${y}" width="${width}" height="${height}" rx="64"/></clipPath>`,
    body: `
      <rect width="1600" height="1200" fill="#394146"/>
      ${backdrop('<rect x="-300" y="-200" width="2200" height="500" fill="#9db4c2"/><rect x="-300" y="930" width="2200" height="500" fill="#6d6a62"/><rect x="-300" y="300" width="300" height="700" fill="#e9ebe9"/>', 'veryFar')}
      <g transform="rotate(2 800 600)">
        <g filter="url(#cast)"><path d="M120 170 H1500 q30 0 30 30 V980 q0 30 -30 30 H120 q-30 0 -30 -30 V200 q0 -30 30 -30 Z" fill="url(#zinc)" filter="url(#spangle)"/></g>
        ${bolt(190, 270, 40)}${bolt(1430, 270, 40, 0.8)}${bolt(190, 910, 40, 0.5)}${bolt(1430, 910, 40, 0.1)}
        <g filter="url(#cast)"><rect x="${x - 46}" y="${y - 46}" width="${width + 92}" height="${height + 92}" rx="92" fill="#17191b" filter="url(#rubber)"/></g>
        <rect x="${x}" y="${y}" width="${width}" height="${height}" rx="64" fill="url(#lens)"/><g clip-path="url(#lensEdge)">${facets}</g>
        <rect x="${x + 40}" y="${y + 26}" width="${width - 80}" height="110" rx="50" fill="url(#shine)"/>
        ${isBroken ? broken : ''}
        <rect x="${x}" y="${y}" width="${width}" height="${height}" rx="64" fill="none" stroke="#ff9d92" stroke-opacity="0.4" stroke-width="6"/>
      </g>`,
    focus: { x: 880, y: 570, r: 1000 },
  }
}
