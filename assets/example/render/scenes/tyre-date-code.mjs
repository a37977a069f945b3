import { arcText, radial } from '../materials.mjs'
import { tyreWall, wall, wallDefs } from '../tyre-wall.mjs'

/** The moulded line that ends in week and year of manufacture. */
export const draw = ({ dateCode }) => {
  const line = { cx: wall.cx, cy: wall.cy, light: '#a9adb0', dark: '#050606' }
  const at = (turn) => [wall.cx + 1625 * Math.sin((turn * Math.PI) / 180), wall.cy - 1625 * Math.cos((turn * Math.PI) / 180)]
  const [x, y] = at(11.4)
  return {
    defs: wallDefs() + radial('polish', [[0, '#fff', 0.2], [1, '#fff', 0]]),
    body: tyreWall(`
      <g transform="rotate(11.4 ${x} ${y})"><rect x="${x - 210}" y="${y - 78}" width="420" height="156" rx="74" fill="#1a1b1d" filter="url(#wallRubber)"/><rect x="${x - 210}" y="${y - 78}" width="420" height="156" rx="74" fill="none" stroke="#96999c" stroke-opacity="0.55" stroke-width="5"/></g>
      ${arcText({ ...line, text: dateCode, r: 1585, turn: 11.4, step: 2.9, size: 118 })}
      ${arcText({ ...line, text: 'DOT EXAMPLE', r: 1585, turn: -11.5, step: 2.45, size: 86 })}
      ${arcText({ ...line, text: 'MAX LOAD SEE PLACARD', r: 1830, turn: 0, step: 1.75, size: 58 })}
      ${arcText({ ...line, text: 'TRAILER SERVICE ONLY', r: 1425, turn: 0, step: 1.8, size: 46 })}
      <ellipse cx="640" cy="420" rx="560" ry="190" fill="url(#polish)"/>`),
    focus: { x: 980, y: 560, r: 1050 },
  }
}
