import { backdrop, common, linear, rule, ruleDefs, shadow, threads, webbing } from '../materials.mjs'

const pxPerMm = 9

/** An orange strap over a white transom; the lower edge is worn through by `damageM` of its width. */
export const draw = ({ strapWidthM, damageM }) => {
  const width = strapWidthM * 1000 * pxPerMm
  const worn = damageM * 1000 * pxPerMm
  const top = 330
  const bottom = top + width
  const edge = `M-100 ${top} H1700 V${bottom} H1130 C1080 ${bottom} 1060 ${bottom - worn * 0.7} 1010 ${bottom - worn} S900 ${bottom - worn * 0.55} 850 ${bottom - worn * 0.95} S720 ${bottom - worn * 0.5} 660 ${bottom} H-100 Z`
  const colours = ['#f08a32', '#d9701c', '#f7a95e', '#c25c10', '#f4c08a']
  return {
    defs: common() + ruleDefs + webbing('weave', { light: '#f18b30', mid: '#dc7219', dark: '#a34d0c' }) + shadow('lift', { dx: 6, dy: 18, by: 13, strength: 0.5 }) +
      linear('gelcoat', [[0, '#f7f7f3'], [0.45, '#e4e6e4'], [1, '#b9c0c4']]) +
      linear('fold', [[0, '#fff', 0.3], [0.14, '#fff', 0.05], [0.5, '#000', 0], [0.9, '#000', 0.16], [1, '#000', 0.42]]) + linear('drape', [[0, '#000', 0.34], [0.3, '#fff', 0.1], [0.62, '#000', 0.04], [1, '#000', 0.4]], [0, 0, 1, 0]),
    body: `
      <rect width="1600" height="1200" fill="url(#gelcoat)"/>
      ${backdrop('<rect x="-400" y="1010" width="2400" height="300" fill="#31536b"/><rect x="-400" y="985" width="2400" height="26" fill="#cfd6d9"/><ellipse cx="1250" cy="120" rx="420" ry="60" fill="#fff"/>')}
      <g transform="rotate(-4 800 600)">
        <g filter="url(#lift)"><path d="${edge}" fill="url(#weave)"/></g>
        <path d="M-100 ${top + 40} H1700 M-100 ${top + 52} H1700 M-100 ${bottom - worn - 58} H1700 M-100 ${bottom - worn - 70} H1700" stroke="#2a2c2f" stroke-width="7" stroke-opacity="0.78" stroke-dasharray="11 3"/>
        <path d="${edge}" fill="url(#fold)"/><path d="${edge}" fill="url(#drape)"/>
        <ellipse cx="870" cy="${bottom - worn - 26}" rx="240" ry="26" fill="#f6c596" opacity="0.42" filter="url(#far)"/>
        <g filter="url(#castClose)">
          ${threads({ from: [690, bottom - worn * 0.4], to: [1100, bottom - worn * 0.55], count: 150, reach: 56, colours, seed: 5, outX: 0.1, outY: 1 })}
          ${threads({ from: [720, bottom - worn * 0.8], to: [1060, bottom - worn * 0.9], count: 90, reach: 34, colours, seed: 8, outX: -0.3, outY: 0.8 })}
        </g>
        ${rule({ x: 396, y: bottom + 58, lengthMm: 100, pxPerMm })}
      </g>`,
    focus: { x: 860, y: 760, r: 1000 },
  }
}
