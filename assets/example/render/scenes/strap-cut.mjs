import { common, linear, rule, ruleDefs, shadow, threads, webbing, ground } from '../materials.mjs'

const pxPerMm = 9

/** A blue strap laid out flat on the slip; cut from its right edge by `damageM` of its width. */
export const draw = ({ strapWidthM, damageM }) => {
  const left = 470
  const right = left + strapWidthM * 1000 * pxPerMm
  const tip = right - damageM * 1000 * pxPerMm
  const shape = `M${left} -80 H${right} V452 C${right - 24} 486 ${right - 70} 520 ${tip} 556 C${right - 70} 566 ${right - 26} 590 ${right + 16} 636 V1300 H${left} Z`
  const colours = ['#5a86c4', '#2f5f9f', '#9dbbe0', '#24487c']
  return {
    defs: common() + ruleDefs + webbing('weave', { light: '#3f74b5', mid: '#2c5c99', dark: '#173763' }) + shadow('lift', { dx: 12, dy: 12, by: 11, strength: 0.6 }) +
      linear('across', [[0, '#000', 0.35], [0.1, '#fff', 0.16], [0.5, '#fff', 0.02], [0.88, '#000', 0.1], [1, '#000', 0.38]], [0, 0, 1, 0]) + linear('along', [[0, '#000', 0.2], [0.42, '#fff', 0.14], [0.5, '#000', 0.12], [0.56, '#fff', 0.08], [1, '#000', 0.16]]),
    body: `
      ${ground('#9a978f')}
      <g transform="rotate(3 800 600)">
        <g filter="url(#lift)"><path d="${shape}" fill="url(#weave)"/></g>
        <path d="M${left + 46} -80 V1300 M${right - 46} -80 V496 M${right - 46} 590 V1300" stroke="#e9c23d" stroke-width="11" stroke-opacity="0.85" stroke-dasharray="12 3"/>
        <path d="${shape}" fill="url(#across)"/><path d="${shape}" fill="url(#along)"/>
        ${threads({ from: [tip + 6, 548], to: [right, 456], count: 70, reach: 17, colours, seed: 3, outX: 0.1, outY: 1 })}
        ${threads({ from: [tip + 6, 562], to: [right + 14, 632], count: 80, reach: 17, colours, seed: 6, outX: 0.3, outY: -1 })}
        ${rule({ x: left, y: 690, lengthMm: 70, pxPerMm })}
      </g>`,
    focus: { x: 840, y: 600, r: 1000 },
  }
}
