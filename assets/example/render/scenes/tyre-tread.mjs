import { chance, common, ground, linear, relief, shadow } from '../materials.mjs'

const grooves = [250, 610, 990, 1350]

const block = (x, y, width, height, slant) => `<path d="M${x} ${y + slant} q0 -12 14 -14 L${x + width - 12} ${y - 4} q12 0 12 12 V${y + height - slant} q0 10 -12 12 L${x + 12} ${y + height + 4} q-12 0 -12 -12 Z"/>`

/** Tread from above, with a depth gauge standing in a main groove; its display shows the depth. */
export const draw = ({ treadDepthM }) => {
  const next = chance(4)
  const edges = [-60, ...grooves, 1660]
  const blocks = edges.slice(0, -1).flatMap((from, row) => {
    const [x, width] = [from + 24, (edges[row + 1] ?? 0) - from - 48]
    return Array.from({ length: 9 }, (_, i) => block(x, -90 + i * 168 + (row % 2) * 84, width, 142, row % 2 ? 14 : 4))
  }).join('')
  const sipes = edges.slice(0, -1).flatMap((from, row) => {
    const [x, width] = [from + 24, (edges[row + 1] ?? 0) - from - 48]
    return Array.from({ length: 9 }, (_, i) => [0.33, 0.67].map((share) => {
      const y = -90 + i * 168 + (row % 2) * 84 + 142 * share
      return `<path d="M${x} ${y} q${width / 8} -22 ${width / 4} 0 t${width / 4} 0 t${width / 4} 0 t${width / 4} 0" fill="none" stroke="#0e0f10" stroke-width="5" opacity="0.75"/>`
    }).join(''))
  }).join('')
  const stones = Array.from({ length: 26 }, () => `<ellipse cx="${grooves[Math.floor(next() * 4)] + (next() - 0.5) * 30}" cy="${next() * 1200}" rx="${3 + next() * 8}" ry="${3 + next() * 6}" fill="#8d8a80"/>`).join('')
  return {
    defs: common() + relief('tread', { frequency: '0.5', octaves: 4, height: 2, seed: 11 }) + shadow('gaugeCast', { dx: 26, dy: 30, by: 18, strength: 0.7 }) +
      linear('round', [[0, '#000', 0.65], [0.3, '#fff', 0.08], [0.5, '#fff', 0.13], [0.7, '#000', 0.05], [1, '#000', 0.68]]) + linear('case', [[0, '#f2c417'], [0.5, '#e5b20a'], [1, '#a87e00']], [0, 0, 1, 1]) + linear('lcd', [[0, '#c8d2bf'], [1, '#a7b39c']]),
    body: `
      ${ground('#6b6a66')}
      <rect x="-60" y="-60" width="1720" height="1320" fill="#131415"/>
      <g fill="#3a3c3e" filter="url(#tread)"><g>${blocks}</g></g>
      <g fill="none" stroke="#6a6d70" stroke-opacity="0.35" stroke-width="3">${blocks}</g>
      ${sipes}${stones}
      <g fill="#2a2c2e">${grooves.map((x) => `<rect x="${x - 22}" y="186" width="44" height="34" rx="4"/><rect x="${x - 22}" y="1010" width="44" height="34" rx="4"/>`).join('')}</g>
      <rect x="-60" y="-60" width="1720" height="1320" fill="url(#round)"/>
      <g transform="rotate(-7 800 600)"><g filter="url(#gaugeCast)">
        <rect x="566" y="330" width="470" height="280" rx="26" fill="url(#case)"/>
        <path d="M520 604 h560 v52 q0 10 -10 10 h-540 q-10 0 -10 -10 z" fill="url(#steel)"/>
        <rect x="586" y="660" width="18" height="64" rx="3" fill="url(#steel)"/></g>
        <rect x="566" y="330" width="470" height="280" rx="26" fill="none" stroke="#fff" stroke-opacity="0.45" stroke-width="4"/>
        <rect x="612" y="372" width="378" height="140" rx="10" fill="#2d312e"/><rect x="624" y="384" width="354" height="116" rx="4" fill="url(#lcd)"/>
        <text x="796" y="477" text-anchor="middle" font-family="DejaVu Sans Mono, monospace" font-weight="bold" font-size="96" fill="#1a211b">${(treadDepthM * 1000).toFixed(1)}</text>
        <text x="962" y="484" text-anchor="end" font-family="DejaVu Sans, sans-serif" font-size="30" fill="#1a211b">mm</text>
        <circle cx="700" cy="560" r="22" fill="#30343a"/><circle cx="800" cy="560" r="22" fill="#30343a"/><circle cx="900" cy="560" r="22" fill="#8e1f1f"/>
        <path d="M612 372 l378 0 l-120 140 l-258 0 z" fill="#fff" opacity="0.1"/></g>`,
    focus: { x: 800, y: 540, r: 1000 },
  }
}
