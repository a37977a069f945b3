import { common, radial, relief, ground } from './materials.mjs'

export const wall = { cx: 800, cy: 2150, outer: 2080, inner: 1180 }

const ring = (r, width, colour, opacity = 1) => `<circle cx="${wall.cx}" cy="${wall.cy}" r="${r}" fill="none" stroke="${colour}" stroke-width="${width}" stroke-opacity="${opacity}"/>`

export const wallDefs = () => common() + relief('wallRubber', { frequency: '0.42', octaves: 4, height: 1.7, seed: 21 }) +
  radial('bulge', [[0.56, '#17181a'], [0.64, '#2c2e30'], [0.76, '#47494c'], [0.84, '#3b3d40'], [0.94, '#222426'], [1, '#0e0f10']], { r: 0.5 })

/** A tyre's sidewall filling the picture, its rim below, its shoulder above. */
export const tyreWall = (marks) => {
  const { cx, cy, outer, inner } = wall
  const lugs = Array.from({ length: 61 }, (_, i) => `<rect x="${-26}" y="${-outer - 16}" width="52" height="80" rx="8" fill="#191a1c" transform="translate(${cx} ${cy}) rotate(${(i - 30) * 2.2})"/>`).join('')
  return `
    ${ground('#8f8c85')}
    <g filter="url(#cast)">${lugs}<circle cx="${cx}" cy="${cy}" r="${outer}" fill="url(#bulge)" filter="url(#wallRubber)"/></g>
    ${[2030, 2012, 1994].map((r) => ring(r, 6, '#0d0e0f', 0.8) + ring(r + 4, 2, '#8b8e91', 0.35)).join('')}
    ${[1330, 1310].map((r) => ring(r, 7, '#0d0e0f', 0.8) + ring(r + 5, 2, '#8b8e91', 0.3)).join('')}
    ${marks}
    <circle cx="${cx}" cy="${cy}" r="${inner + 24}" fill="#0b0c0d"/>
    <circle cx="${cx}" cy="${cy}" r="${inner}" fill="url(#zinc)" filter="url(#spangle)"/>${ring(inner - 4, 8, '#f4f6f6', 0.55)}${ring(inner - 60, 10, '#5c6468', 0.5)}`
}
