import { backdrop, blob, chance, common, eaten, linear, mottle, relief, rule, ruleDefs, bolt } from '../materials.mjs'

const pxPerMm = 9
/** Reach of the dark crust within the rust. */
const crust = 0.88

/** Red rust through the zinc of a cross-member: the rust with its orange rim has the true area at the rule's scale; the stain round it and below it is none of it. */
export const draw = ({ areaM2, turnDegrees = -2.5 }) => {
  const areaPx = areaM2 * 1e6 * pxPerMm ** 2
  const ry = Math.sqrt(areaPx / (Math.PI * 1.5))
  const rx = ry * 1.5
  const next = chance(17)
  const freckles = Array.from({ length: 60 }, () => {
    const [turn, far] = [next() * 6.28, 1.05 + next() * 0.9]
    return `<ellipse cx="${760 + rx * far * Math.cos(turn)}" cy="${500 + ry * far * Math.sin(turn)}" rx="${2 + next() * 8}" ry="${2 + next() * 6}" fill="#9a4a1c" opacity="${0.3 + next() * 0.5}"/>`
  }).join('')
  return {
    defs: common() + ruleDefs + relief('scale', { frequency: '0.09', octaves: 5, height: 9, seed: 14, elevation: 48 }) + mottle('rustTint', { frequency: '0.03', strength: 0.6, seed: 6 }) + eaten('rustEdge', { frequency: '0.035', level: 0.36, sharpness: 9, seed: 3 }) +
      linear('run', [[0, '#8f4417', 0.55], [1, '#8f4417', 0]]) + linear('beam', [[0, '#dfe3e4'], [0.1, '#c3c9cb'], [0.85, '#a3abae'], [1, '#6d7579']]),
    body: `
      <rect width="1600" height="1200" fill="#2b3033"/>
      ${backdrop('<rect x="-300" y="-200" width="2200" height="330" fill="#6f8593"/><rect x="-300" y="1000" width="2200" height="400" fill="#57544d"/><rect x="1180" y="-200" width="180" height="1700" fill="#b9bfc2"/>', 'veryFar')}
      <g transform="rotate(${turnDegrees} 800 600)">
        <g filter="url(#cast)"><rect x="-200" y="130" width="2000" height="850" fill="url(#beam)" filter="url(#spangle)"/></g>
        <rect x="-200" y="130" width="2000" height="16" fill="#fff" opacity="0.5"/><rect x="-200" y="930" width="2000" height="50" fill="#000" opacity="0.22"/>
        ${bolt(240, 330, 66)}${bolt(240, 780, 66, 0.9)}
        <path d="M${760 - rx * 0.5} ${500 + ry * 0.6} q-14 230 10 300 q30 40 56 -10 q24 60 60 20 q40 20 70 -60 q36 30 60 -80 L${760 + rx * 0.6} ${500 + ry * 0.5} Z" fill="url(#run)" filter="url(#softer)"/>
        <path d="${blob(760, 500, rx * 1.25, ry * 1.3, 4, 0.2)}" fill="#b06a35" opacity="0.5" filter="url(#softer)"/>
        <g filter="url(#rustEdge)"><path d="${blob(760, 500, rx, ry, 9, 0.12)}" fill="#c9752e"/></g>
        <g filter="url(#rustTint)"><path d="${blob(760, 500, rx * crust, ry * crust, 9, 0.12)}" fill="#8b3d14" filter="url(#scale)"/></g>
        <g filter="url(#rustEdge)"><path d="${blob(770, 490, rx * crust * 0.6, ry * crust * 0.62, 5, 0.3)}" fill="#3c1a0c" opacity="0.75"/></g>
        ${freckles}
        ${rule({ x: 420, y: 760, lengthMm: 100, pxPerMm })}
      </g>`,
    focus: { x: 780, y: 580, r: 1000 },
  }
}
