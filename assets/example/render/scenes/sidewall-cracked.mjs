import { arcText, chance, radial } from '../materials.mjs'
import { tyreWall, wall, wallDefs } from '../tyre-wall.mjs'

/** One crack running round the wall, wandering in and out as weathered rubber splits. */
const crack = (next, r, from, length) => {
  const steps = 16
  const points = Array.from({ length: steps + 1 }, (_, i) => {
    const turn = ((from + (length * i) / steps) * Math.PI) / 180
    const reach = r + (next() - 0.5) * 26
    return [wall.cx + reach * Math.sin(turn), wall.cy - reach * Math.cos(turn)]
  })
  const there = points.map(([x, y], i) => [x, y - 13 * Math.sin((Math.PI * i) / steps) * (0.6 + next() * 0.6)])
  const outline = [...there, ...points.toReversed()].map(([x, y]) => `${x},${y}`).join(' ')
  const lip = points.map(([x, y]) => `${x},${y + 4}`).join(' ')
  return `<polygon points="${outline}" fill="#050505" stroke="#050505" stroke-width="3" stroke-linejoin="round"/><polyline points="${lip}" fill="none" stroke="#9b9ea0" stroke-opacity="0.6" stroke-width="3"/>`
}

/** A weathered sidewall with `crackCount` open cracks and the fine crazing between them. */
export const draw = ({ crackCount }) => {
  const next = chance(31)
  const open = Array.from({ length: crackCount }, (_, i) => crack(next, 1480 + (i % 5) * 78 + next() * 40, -19 + ((i * 7.3) % 30) + next() * 3, 5 + next() * 6)).join('')
  const fine = Array.from({ length: 150 }, () => {
    const [r, turn] = [1400 + next() * 480, ((-26 + next() * 52) * Math.PI) / 180]
    const [x, y] = [wall.cx + r * Math.sin(turn), wall.cy - r * Math.cos(turn)]
    return `<path d="M${x} ${y} q${20 + next() * 20} ${-8 + turn * 30} ${44 + next() * 50} ${turn * 60 + (next() - 0.5) * 12}" stroke="#0b0c0c" stroke-opacity="0.7" stroke-width="${1 + next() * 1.8}" fill="none"/>`
  }).join('')
  return {
    defs: wallDefs() + radial('bloom', [[0, '#b9b3a6', 0.3], [1, '#b9b3a6', 0]]),
    body: tyreWall(`
      ${arcText({ cx: wall.cx, cy: wall.cy, text: 'TRAILER SERVICE ONLY', r: 1880, turn: -2, step: 1.9, size: 66, light: '#8d9194', dark: '#070808' })}
      <ellipse cx="860" cy="520" rx="760" ry="300" fill="url(#bloom)"/>${fine}${open}`),
    focus: { x: 820, y: 560, r: 1050 },
  }
}
