import { backdrop, blob, bolt, chance, common, eaten, linear, relief, rule, ruleDefs } from '../materials.mjs'

const pxPerMm = 7

/** Bulky white product of zinc round a bunk bracket, where water stands. */
export const draw = ({ areaM2 }) => {
  const areaPx = areaM2 * 1e6 * pxPerMm ** 2
  const ry = Math.sqrt(areaPx / (Math.PI * 1.8))
  const rx = ry * 1.8
  const next = chance(23)
  const grains = Array.from({ length: 240 }, () => {
    const [turn, far] = [next() * 6.28, Math.sqrt(next()) * 1.12]
    return `<circle cx="${900 + rx * far * Math.cos(turn)}" cy="${600 + ry * far * Math.sin(turn)}" r="${2 + next() * 7}" fill="#fff" opacity="${0.5 + next() * 0.5}"/>`
  }).join('')
  return {
    defs: common() + ruleDefs + relief('powder', { frequency: '0.075', octaves: 5, height: 4.5, seed: 19, elevation: 58 }) + eaten('powderEdge', { frequency: '0.026', level: 0.36, sharpness: 5, seed: 8, octaves: 5 }) +
      linear('rail', [[0, '#eef0f1'], [0.08, '#ccd2d4'], [0.8, '#a4acaf'], [1, '#5f676b']]) + linear('plate', [[0, '#c8ced0'], [1, '#8a9296']], [0, 0, 1, 0]),
    body: `
      <rect width="1600" height="1200" fill="#454b4d"/>
      ${backdrop('<rect x="-300" y="-200" width="2200" height="430" fill="#4c6b54"/><rect x="-300" y="-200" width="2200" height="220" fill="#a9c0cf"/><rect x="-300" y="1040" width="2200" height="400" fill="#6f6b62"/>', 'veryFar')}
      <g transform="rotate(1.5 800 600)">
        <g filter="url(#cast)"><rect x="-200" y="330" width="2000" height="610" fill="url(#rail)" filter="url(#spangle)"/></g><rect x="-200" y="330" width="2000" height="14" fill="#fff" opacity="0.6"/>
        <path d="M-200 890 H1800" stroke="#000" stroke-opacity="0.25" stroke-width="50" filter="url(#softer)"/>
        <g filter="url(#cast)"><path d="M390 -100 H690 V760 q0 34 -34 34 H424 q-34 0 -34 -34 Z" fill="url(#plate)" filter="url(#spangle)"/></g>
        ${bolt(540, 450, 62)}${bolt(540, 680, 62, 0.8)}
        <path d="${blob(900, 600, rx * 1.2, ry * 1.22, 3, 0.2)}" fill="#eef1f1" opacity="0.5" filter="url(#softer)"/>
        <g filter="url(#powderEdge)"><path d="${blob(900, 600, rx * 1.1, ry * 1.1, 7, 0.18)}" fill="#f6f7f5" filter="url(#powder)"/></g>
        <g filter="url(#powderEdge)"><path d="${blob(860, 610, rx * 0.8, ry * 0.85, 12, 0.25)}" fill="#fff" filter="url(#powder)"/></g>
        ${grains}
        ${rule({ x: 640, y: 800, lengthMm: 110, pxPerMm, heightPx: 92 })}
      </g>`,
    focus: { x: 860, y: 620, r: 1000 },
  }
}
