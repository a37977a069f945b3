import { backdrop, blur, bolt, common, linear, radial, relief } from './materials.mjs'

const [cx, cy, r] = [800, 590, 300]

/** The end of an oil-bath hub in its wheel, its glass filled to `oilLevel` (0 to 1 of the glass's height). */
export const hubGlass = ({ oilLevel, deep, middle, bright, clear }) => {
  const level = cy + r - 2 * r * oilLevel
  const nuts = [0, 1, 2, 3, 4].map((i) => {
    const turn = ((i * 72 - 90) * Math.PI) / 180
    return bolt(cx + 545 * Math.cos(turn), cy + 545 * Math.sin(turn), 62, i * 0.4)
  }).join('')
  return {
    defs: common() + blur('glassSoft', 14) + relief('powder', { frequency: '0.6', height: 0.9, seed: 8 }) +
      radial('rim', [[0, '#d8dcdd'], [0.5, '#b6bcbf'], [0.82, '#8d9498'], [1, '#5e666a']], { r: 0.55, fx: 0.35, fy: 0.3 }) +
      radial('cup', [[0, '#9aa2a6'], [0.78, '#8b9397'], [0.86, '#eef1f2'], [0.93, '#99a1a5'], [1, '#454c50']], { fx: 0.46, fy: 0.44 }) +
      radial('inside', [[0, '#d9d3c2'], [0.6, '#a79f8a'], [1, '#4c463a']], { fx: 0.4, fy: 0.35 }) +
      linear('oil', [[0, bright], [0.35, middle], [1, deep]]) + radial('depth', [[0.6, '#000', 0], [1, '#000', 0.6]]) +
      linear('glare', [[0, '#fff', 0.75], [1, '#fff', 0]], [0, 0, 1, 1]) +
      `<clipPath id="glass"><circle cx="${cx}" cy="${cy}" r="${r}"/></clipPath>`,
    body: `
      <rect width="1600" height="1200" fill="#23272a"/>
      ${backdrop('<rect x="-300" y="-200" width="2200" height="420" fill="#56616a"/><rect x="-300" y="980" width="2200" height="420" fill="#6d6b64"/>', 'veryFar')}
      <circle cx="${cx}" cy="${cy}" r="790" fill="#16181a" filter="url(#rubber)"/>
      <g filter="url(#cast)"><circle cx="${cx}" cy="${cy}" r="706" fill="url(#rim)" filter="url(#powder)"/></g>
      <circle cx="${cx}" cy="${cy}" r="706" fill="none" stroke="#f4f6f6" stroke-opacity="0.5" stroke-width="6"/>
      ${nuts}
      <g filter="url(#cast)"><circle cx="${cx}" cy="${cy}" r="408" fill="url(#cup)"/></g>
      <circle cx="${cx}" cy="${cy}" r="338" fill="#2f3538"/><circle cx="${cx}" cy="${cy}" r="322" fill="#15181a"/>
      <g clip-path="url(#glass)">
        <circle cx="${cx}" cy="${cy}" r="${r}" fill="url(#inside)"/>
        <g opacity="0.85"><circle cx="${cx}" cy="${cy}" r="176" fill="#8b8472" filter="url(#castClose)"/><circle cx="${cx}" cy="${cy}" r="150" fill="url(#boltHead)"/>
        <path d="M${cx - 150} ${cy - 24} h44 v48 h-44 z M${cx + 106} ${cy - 24} h44 v48 h-44 z M${cx - 24} ${cy - 150} h48 v44 h-48 z M${cx - 24} ${cy + 106} h48 v44 h-48 z" fill="#3c3f3f"/><circle cx="${cx}" cy="${cy}" r="62" fill="#6d7478"/><circle cx="${cx}" cy="${cy}" r="14" fill="#2a2d2f"/></g>
        <rect x="${cx - r}" y="${level}" width="${2 * r}" height="${2 * r}" fill="url(#oil)" opacity="${clear}"/>
        <path d="M${cx - r} ${level} q${r} 20 ${2 * r} 0 v-10 q${-r} 16 ${-2 * r} 0 z" fill="${bright}" opacity="0.9"/><path d="M${cx - r} ${level + 5} q${r} 18 ${2 * r} 0" stroke="${deep}" stroke-opacity="0.7" stroke-width="5" fill="none"/>
        <circle cx="${cx}" cy="${cy}" r="${r}" fill="url(#depth)"/>
        <path d="M${cx - 250} ${cy - 120} A 280 280 0 0 1 ${cx + 60} ${cy - 275} L ${cx + 40} ${cy - 200} A 210 210 0 0 0 ${cx - 190} ${cy - 80} Z" fill="url(#glare)" filter="url(#soft)"/>
        <ellipse cx="${cx + 150}" cy="${cy + 205}" rx="90" ry="26" fill="#fff" opacity="0.2" transform="rotate(-36 ${cx + 150} ${cy + 205})" filter="url(#glassSoft)"/>
      </g>
      <g stroke="#c8102e" stroke-opacity="0.85" stroke-width="5"><path d="M${cx - 336} ${cy} h-26 M${cx + 336} ${cy} h26"/></g>
      <circle cx="${cx}" cy="${cy}" r="${r + 12}" fill="none" stroke="#f7f9f9" stroke-opacity="0.35" stroke-width="5"/>`,
    focus: { x: cx, y: cy, r: 980 },
  }
}
