import { backdrop, bolt, common, linear, mottle, rule, ruleDefs } from '../materials.mjs'

const pxPerMm = 12

/** The slide of a surge actuator pushed into its case; the bright length from the old mark to the case is the travel. */
export const draw = ({ travelM }) => {
  const travel = travelM * 1000 * pxPerMm
  const caseLeft = 900
  const mark = caseLeft - travel
  return {
    defs: common() + ruleDefs + mottle('worn', { frequency: '0.008 0.12', strength: 0.35, seed: 3 }) + mottle('rusty', { frequency: '0.012 0.03', strength: 0.28, seed: 10 }) +
      linear('case', [[0, '#f0f2f2'], [0.06, '#c9cfd1'], [0.5, '#a8b0b3'], [0.92, '#838b8f'], [1, '#4d5458']]) + linear('slide', [[0, '#dde1e2'], [0.12, '#9da5a8'], [0.5, '#8b9397'], [1, '#4a5155']]) + linear('bright', [[0, '#f8f9f9'], [0.2, '#ccd2d4'], [0.55, '#b3babd'], [1, '#6e767a']]),
    body: `
      <rect width="1600" height="1200" fill="#3d4346"/>
      ${backdrop('<rect x="-300" y="-200" width="2200" height="420" fill="#8fa6b3"/><rect x="-300" y="860" width="2200" height="600" fill="#76726a"/><rect x="100" y="40" width="220" height="300" fill="#39434a"/>', 'veryFar')}
      <g transform="rotate(-1.5 800 600)">
        <g filter="url(#cast)"><rect x="-200" y="372" width="1300" height="320" fill="url(#slide)" filter="url(#worn)"/></g>
        <rect x="-200" y="372" width="${mark + 200}" height="320" fill="#8d5a34" opacity="0.28" filter="url(#rusty)"/>
        <rect x="${mark}" y="372" width="${travel}" height="320" fill="url(#bright)" filter="url(#brushed)"/>
        <path d="M${mark} 372 V692" stroke="#3a2a1c" stroke-width="6"/><path d="M${mark - 6} 372 V692" stroke="#c77f3d" stroke-opacity="0.6" stroke-width="6"/>
        <path d="M${mark + 30} 430 H${caseLeft - 14} M${mark + 60} 560 H${caseLeft - 40} M${mark + 20} 640 H${caseLeft - 90}" stroke="#fff" stroke-opacity="0.5" stroke-width="3"/>
        <rect x="-200" y="372" width="1200" height="12" fill="#fff" opacity="0.55"/>
        <g filter="url(#cast)"><path d="M${caseLeft} 306 H1800 V768 H${caseLeft} q-16 0 -16 -16 V322 q0 -16 16 -16 Z" fill="url(#case)" filter="url(#spangle)"/></g>
        <rect x="${caseLeft - 16}" y="306" width="26" height="462" rx="10" fill="#5e666a"/><rect x="${caseLeft}" y="306" width="900" height="12" fill="#fff" opacity="0.6"/>
        ${bolt(1080, 430, 54)}${bolt(1080, 650, 54, 0.9)}${bolt(1450, 430, 54, 0.6)}
        <g transform="translate(1290 610)"><rect x="-110" y="-64" width="260" height="120" rx="8" fill="#1c2328" stroke="#9aa2a6" stroke-width="3"/><text x="20" y="-14" text-anchor="middle" font-family="DejaVu Sans, sans-serif" font-size="30" fill="#e4e6e2">EXAMPLE</text><text x="20" y="32" text-anchor="middle" font-family="DejaVu Sans, sans-serif" font-size="22" fill="#b8bdb9">surge actuator</text></g>
        ${rule({ x: mark, y: 700, lengthMm: 70, pxPerMm, heightPx: 110 })}
      </g>`,
    focus: { x: 740, y: 600, r: 1000 },
  }
}
