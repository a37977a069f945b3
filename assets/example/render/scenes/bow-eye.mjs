import { backdrop, common, linear, radial, rod, shadow, webbing, zincRod } from '../materials.mjs'

const strap = (points, weave) => `<g filter="url(#lift)"><polygon points="${points}" fill="url(#${weave})"/></g><polygon points="${points}" fill="url(#sheen)"/>`

/** The bow eye in the stem: the winch strap goes forward and up, a second tie goes down and back. */
export const draw = ({ tieCount }) => {
  const second = `
    ${strap('968,700 1066,640 1700,1130 1640,1290', 'grey')}
    ${rod('M1004 670 q-60 -30 -104 -66 q-60 -50 -40 -96 q30 -40 76 -4', 40, zincRod)}`
  return {
    defs: common() + webbing('yellow', { light: '#e7b528', mid: '#cf9a12', dark: '#8b6405', pitch: 8 }) + webbing('grey', { light: '#5d666c', mid: '#444c52', dark: '#22282c', pitch: 8 }) + shadow('lift', { dx: 10, dy: 20, by: 14, strength: 0.5 }) +
      linear('sheen', [[0, '#fff', 0.22], [0.4, '#fff', 0], [1, '#000', 0.4]], [0, 0, 0.5, 1]) + linear('hull', [[0, '#ffffff'], [0.48, '#eef0f0'], [0.53, '#cfd5d8'], [1, '#8e999f']], [0, 0, 1, 0]) + radial('pad', [[0, '#f2f4f5'], [0.7, '#a9b1b5'], [1, '#6c7478']], { fx: 0.35, fy: 0.3 }) + linear('boot', [[0, '#1f4e6e'], [1, '#0f2c40']]),
    body: `
      <rect width="1600" height="1200" fill="#c3d0d8"/>
      ${backdrop('<rect x="-300" y="-200" width="2200" height="800" fill="#b8cbd8"/><rect x="-300" y="520" width="2200" height="220" fill="#6c8169"/><rect x="-300" y="740" width="2200" height="700" fill="#8b877d"/><rect x="40" y="300" width="180" height="1000" fill="#8d9599"/>', 'veryFar')}
      <g filter="url(#cast)"><path d="M640 -60 C610 260 640 620 820 1260 H1700 V-60 Z" fill="url(#hull)"/></g>
      <path d="M752 -60 C728 260 760 640 930 1260" fill="none" stroke="#fff" stroke-width="26" opacity="0.85" filter="url(#softer)"/>
      <path d="M640 -60 C610 260 640 620 820 1260" fill="none" stroke="#5b666c" stroke-opacity="0.6" stroke-width="10"/>
      <path d="M777 1080 Q1200 1010 1700 1040 V1300 H830 Z" fill="url(#boot)" opacity="0.9"/>
      <g filter="url(#cast)"><ellipse cx="822" cy="500" rx="74" ry="150" fill="url(#pad)" transform="rotate(-9 822 500)"/></g><circle cx="806" cy="396" r="15" fill="#4d5559"/><circle cx="840" cy="606" r="15" fill="#4d5559"/>
      ${tieCount > 1 ? second : ''}
      ${strap('-60,150 -60,20 560,352 520,456', 'yellow')}
      ${rod('M520 396 L610 446 q90 40 140 66 q70 40 100 0 q20 -40 -14 -66', 40, zincRod)}
      ${rod('M590 430 q60 70 150 92', 14, ['#3b4246', '#8d969a', '#d9dddf'])}
      ${rod('M826 424 C700 380 668 610 838 580', 46, zincRod)}
      <g filter="url(#castClose)"><rect x="446" y="330" width="130" height="150" rx="14" fill="url(#steel)" transform="rotate(29 510 405)"/></g>
      <path d="M-60 60 L520 380 M-60 112 L508 420" stroke="#3b3322" stroke-width="5" stroke-dasharray="12 4" opacity="0.7"/>`,
    focus: { x: 780, y: 520, r: 1000 },
  }
}
