import { backdrop, bolt, common, linear, mottle, radial, rod, steelRod, zincRod } from '../materials.mjs'

/** A coupler on its ball, from the side: the lever lies flat; the pin, when there, goes through lever and case. */
export const draw = ({ isPinned }) => {
  const pin = `${rod('M870 470 V330', 26, zincRod)}${rod('M870 330 q-92 -20 -92 90 t92 100 t92 -100 t-92 -90', 11, ['#3b4246', '#98a1a5', '#eef0f1'])}`
  return {
    defs: common() + mottle('aged', { frequency: '0.01 0.03', strength: 0.2, seed: 30 }) + linear('case', [[0, '#f3f5f5'], [0.14, '#c7cdd0'], [0.55, '#969ea2'], [1, '#4c5458']]) + linear('lever', [[0, '#f0f2f2'], [0.3, '#b7bec1'], [1, '#626a6e']]) + radial('ball', [[0, '#ffffff'], [0.3, '#c3c9cc'], [0.75, '#6b7377'], [1, '#2e3336']], { fx: 0.34, fy: 0.28 }) + linear('hitch', [[0, '#2c3033'], [1, '#101214']]),
    body: `
      <rect width="1600" height="1200" fill="#3e4548"/>
      ${backdrop('<rect x="-300" y="-200" width="2200" height="520" fill="#a9bbc6"/><rect x="-300" y="320" width="900" height="500" fill="#2a2f38"/><rect x="-300" y="900" width="2200" height="500" fill="#77736a"/>', 'veryFar')}
      <g filter="url(#cast)"><rect x="-100" y="880" width="720" height="150" rx="12" fill="url(#hitch)" filter="url(#castRough)"/></g>
      <g filter="url(#cast)"><rect x="386" y="800" width="104" height="120" fill="url(#steel)"/></g><g filter="url(#cast)"><circle cx="438" cy="700" r="142" fill="url(#ball)"/></g>
      <g filter="url(#cast)"><path d="M250 760 C220 560 290 452 470 446 H1700 V800 H720 C690 800 690 742 640 742 H600 C600 600 290 600 286 770 Z" fill="url(#case)" filter="url(#spangle)"/></g>
      <path d="M262 700 C250 540 320 462 470 456 H1700" fill="none" stroke="#fff" stroke-opacity="0.75" stroke-width="8"/>
      <path d="M600 742 C600 610 300 600 286 770" fill="none" stroke="#1d2123" stroke-width="16"/>
      ${bolt(1180, 640, 62)}${bolt(1460, 640, 62, 0.8)}
      <g filter="url(#cast)"><path d="M610 452 L640 384 Q660 350 710 352 L1190 392 q44 6 44 40 t-44 34 L700 470 Z" fill="url(#lever)" filter="url(#aged)"/></g><path d="M652 372 Q668 358 710 360 L1190 400" fill="none" stroke="#fff" stroke-opacity="0.8" stroke-width="6"/>
      <g filter="url(#castClose)"><circle cx="668" cy="430" r="34" fill="url(#boltHead)"/></g><circle cx="870" cy="424" r="21" fill="#15181a"/>
      ${isPinned ? pin : ''}
      ${rod('M1000 800 q-20 90 40 130 q90 40 160 -10 q80 -60 200 -20', 30, steelRod)}
      <g transform="translate(900 660)"><rect x="-130" y="-54" width="260" height="108" rx="8" fill="#e9e6dc" stroke="#7b8387" stroke-width="3"/><text x="0" y="-8" text-anchor="middle" font-family="DejaVu Sans, sans-serif" font-weight="bold" font-size="32" fill="#1d2123">EXAMPLE</text><text x="0" y="34" text-anchor="middle" font-family="DejaVu Sans, sans-serif" font-size="24" fill="#1d2123">2 in BALL ONLY</text></g>`,
    focus: { x: 740, y: 540, r: 1000 },
  }
}
