import { backdrop, common, ground, radial, rod, shadow, zincRod } from '../materials.mjs'

const link = (x, y, turn) => `<g transform="translate(${x} ${y}) rotate(${turn})">${rod('M-74 -38 H74 A38 38 0 0 1 74 38 H-74 A38 38 0 0 1 -74 -38 Z', 34, zincRod)}</g>`
const edgeLink = (x, y, turn) => `<g transform="translate(${x} ${y}) rotate(${turn})">${rod('M-92 0 H92', 40, zincRod)}</g>`

/** The end of a safety chain on the ground: a slip hook whose spring latch is missing unless `hasLatch`. */
export const draw = ({ hasLatch }) => {
  const links = [0, 1, 2, 3, 4, 5].map((i) => {
    const [x, y] = [1500 - i * 122, 190 + i * 58 - (i > 3 ? (i - 3) * 4 : 0)]
    return i % 2 ? edgeLink(x, y, 154) : link(x, y, 154)
  }).join('')
  return {
    defs: common() + radial('eye', [[0, '#111'], [1, '#333']]) + shadow('hookCast', { dx: 18, dy: 24, by: 14, strength: 0.7 }),
    body: `
      ${ground('#96938b')}
      ${backdrop('<rect x="-300" y="-200" width="2200" height="260" fill="#3a4247"/>', 'veryFar')}
      <path d="M-40 900 q400 -60 760 20 t920 -10" stroke="#5e5b54" stroke-width="7" fill="none" opacity="0.8" filter="url(#soft)"/>
      ${links}
      <g filter="url(#hookCast)">
        ${rod('M700 470 C640 500 560 500 500 560 C380 680 400 880 560 930 C700 968 800 880 812 770', 92, zincRod)}
        ${rod('M812 770 L826 716', 60, zincRod)}
        ${rod('M700 470 m-66 0 a66 66 0 1 1 132 0 a66 66 0 1 1 -132 0', 50, zincRod)}
      </g>
      <g filter="url(#castClose)"><circle cx="566" cy="520" r="30" fill="#8d969a"/></g><circle cx="566" cy="520" r="15" fill="#15181a"/>
      <path d="M544 538 q-14 26 -34 34" stroke="#a3551f" stroke-opacity="0.75" stroke-width="16" fill="none" filter="url(#soft)"/>
      ${hasLatch ? rod('M566 520 L806 716', 26, ['#4c5458', '#a6adb0', '#e9eced']) : ''}
      <path d="M470 640 q-40 100 10 200" stroke="#9a5a2c" stroke-opacity="0.35" stroke-width="26" fill="none" filter="url(#softer)"/>`,
    focus: { x: 660, y: 640, r: 1000 },
  }
}
