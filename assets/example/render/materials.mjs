// Shared stuff the scenes are made of: surfaces, light, screws, a steel rule. All return SVG text.

/** A repeatable source of chance, 0 to 1 (mulberry32). */
export const chance = (seed) => {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

const multiply = (source, by, k, out) => `<feComposite in="${source}" in2="${by}" operator="arithmetic" k1="${k}" k2="0" k3="0" k4="0" result="${out}"/>`
const region = 'x="-10%" y="-10%" width="120%" height="120%" color-interpolation-filters="sRGB"'

/** A rough surface: noise as height, lit from the upper left, multiplied into whatever it is laid on. */
export const relief = (id, { frequency, octaves = 3, seed = 1, height = 2, elevation = 55 }) => `
  <filter id="${id}" ${region}>
    <feTurbulence type="fractalNoise" baseFrequency="${frequency}" numOctaves="${octaves}" seed="${seed}" result="noise"/>
    <feColorMatrix in="noise" values="0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 1 0 0 0 0" result="height"/>
    <feDiffuseLighting in="height" surfaceScale="${height}" diffuseConstant="1" lighting-color="#fff" result="lit"><feDistantLight azimuth="235" elevation="${elevation}"/></feDiffuseLighting>
    ${multiply('SourceGraphic', 'lit', 1 / Math.sin((elevation * Math.PI) / 180), 'made')}
    <feComposite in="made" in2="SourceAlpha" operator="in"/>
  </filter>`

/** A blotchy surface: the same colour, lighter and darker by `strength` (0 to 1). */
export const mottle = (id, { frequency, octaves = 4, seed = 1, strength = 0.4 }) => `
  <filter id="${id}" ${region}>
    <feTurbulence type="fractalNoise" baseFrequency="${frequency}" numOctaves="${octaves}" seed="${seed}" result="noise"/>
    <feColorMatrix in="noise" values="${`${strength * 2} 0 0 0 ${0.5 - strength} `.repeat(3)} 0 0 0 0 1" result="grey"/>
    ${multiply('SourceGraphic', 'grey', 2, 'made')}
    <feComposite in="made" in2="SourceAlpha" operator="in"/>
  </filter>`

/** Bends edges and lines irregularly by about `by` px. */
export const wander = (id, { frequency, by, seed = 1, octaves = 2 }) => `
  <filter id="${id}" x="-15%" y="-15%" width="130%" height="130%">
    <feTurbulence type="fractalNoise" baseFrequency="${frequency}" numOctaves="${octaves}" seed="${seed}"/>
    <feDisplacementMap in="SourceGraphic" scale="${by}" xChannelSelector="R" yChannelSelector="G"/>
  </filter>`

/** Breaks a shape up into islands, as rust and salts grow: only where the noise stands above `level` does it show. */
export const eaten = (id, { frequency, level = 0.5, sharpness = 12, seed = 1, octaves = 4 }) => `
  <filter id="${id}" x="-15%" y="-15%" width="130%" height="130%" color-interpolation-filters="sRGB">
    <feTurbulence type="fractalNoise" baseFrequency="${frequency}" numOctaves="${octaves}" seed="${seed}" result="noise"/>
    <feColorMatrix in="noise" values="0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 ${sharpness} 0 0 0 ${-sharpness * level}" result="holes"/>
    <feComposite in="SourceGraphic" in2="holes" operator="in"/>
  </filter>`

export const blur = (id, by) => `<filter id="${id}" x="-40%" y="-40%" width="180%" height="180%"><feGaussianBlur stdDeviation="${by}"/></filter>`

export const shadow = (id, { dx = 10, dy = 14, by = 12, strength = 0.55 } = {}) => `
  <filter id="${id}" x="-30%" y="-30%" width="160%" height="160%"><feDropShadow dx="${dx}" dy="${dy}" stdDeviation="${by}" flood-color="#0b0d10" flood-opacity="${strength}"/></filter>`

const stops = (list) => list.map(([at, colour, opacity = 1]) => `<stop offset="${at}" stop-color="${colour}" stop-opacity="${opacity}"/>`).join('')
export const linear = (id, list, [x1, y1, x2, y2] = [0, 0, 0, 1]) => `<linearGradient id="${id}" x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}">${stops(list)}</linearGradient>`
export const radial = (id, list, { cx = 0.5, cy = 0.5, r = 0.5, fx = cx, fy = cy } = {}) => `<radialGradient id="${id}" cx="${cx}" cy="${cy}" r="${r}" fx="${fx}" fy="${fy}">${stops(list)}</radialGradient>`

/** What nearly every scene needs; ids are fixed. */
export const common = () => [
  relief('concrete', { frequency: '0.28', octaves: 3, height: 1.3, seed: 4 }),
  mottle('stained', { frequency: '0.006 0.01', octaves: 5, strength: 0.2, seed: 9 }),
  relief('castRough', { frequency: '0.5', octaves: 3, height: 1.6, seed: 7 }),
  relief('rubber', { frequency: '0.55', octaves: 3, height: 2.4, seed: 3, elevation: 50 }),
  mottle('spangle', { frequency: '0.022 0.03', octaves: 3, strength: 0.11, seed: 12 }),
  mottle('brushed', { frequency: '0.004 0.35', octaves: 3, strength: 0.22, seed: 5 }),
  blur('soft', 3), blur('softer', 9), blur('far', 26), blur('veryFar', 48),
  shadow('cast'), shadow('castClose', { dx: 4, dy: 6, by: 5, strength: 0.6 }),
  linear('steel', [[0, '#f1f3f4'], [0.3, '#aeb4b8'], [0.55, '#7d8488'], [0.8, '#b7bdc0'], [1, '#5f666a']]),
  linear('zinc', [[0, '#d3d8da'], [0.5, '#b1b7ba'], [1, '#8d9498']]),
  radial('boltHead', [[0, '#eef0f1'], [0.6, '#9aa1a5'], [1, '#4e5559']], { fx: 0.35, fy: 0.3 }),
].join('')

/** Ground of a yard or slip, out of focus. */
export const ground = (colour = '#8b8a84') => `<g filter="url(#stained)"><rect x="-50" y="-50" width="1700" height="1300" fill="${colour}" filter="url(#concrete)"/></g>`

/** Blurred shapes behind the subject, so that it stands somewhere. */
export const backdrop = (shapes, by = 'far') => `<g filter="url(#${by})">${shapes}</g>`

const hexagon = (x, y, r, turn) => Array.from({ length: 6 }, (_, i) => `${x + r * Math.cos(turn + (i * Math.PI) / 3)},${y + r * Math.sin(turn + (i * Math.PI) / 3)}`).join(' ')

/** A hexagon bolt on its washer, seen from the front. */
export const bolt = (x, y, r, turn = 0.3) => `
  <g filter="url(#castClose)"><circle cx="${x}" cy="${y}" r="${r * 1.45}" fill="url(#zinc)" stroke="#6b7276" stroke-width="1.5"/></g>
  <g filter="url(#castClose)"><polygon points="${hexagon(x, y, r, turn)}" fill="url(#boltHead)" stroke="#5a6165" stroke-width="2"/></g>
  <circle cx="${x}" cy="${y}" r="${r * 0.72}" fill="none" stroke="#fff" stroke-opacity="0.35" stroke-width="2"/>`

/** A steel rule in millimetres, its edge at y = 0, from x = 0: the scale of the picture. */
export const rule = ({ x, y, lengthMm, pxPerMm, turn = 0, heightPx = 104, above = false }) => {
  const marks = Array.from({ length: lengthMm + 1 }, (_, mm) => {
    const long = mm % 10 === 0 ? 40 : mm % 5 === 0 ? 29 : 19
    const at = mm * pxPerMm
    const [from, to] = above ? [heightPx, heightPx - long] : [0, long]
    return `<line x1="${at}" y1="${from}" x2="${at}" y2="${to}" stroke="#15181a" stroke-width="${mm % 10 === 0 ? 2.6 : 1.7}"/>`
  }).join('')
  const numbers = Array.from({ length: Math.floor(lengthMm / 10) + 1 }, (_, i) => i * 10)
    .map((mm) => `<text x="${mm * pxPerMm + 5}" y="${above ? heightPx - 44 : 70}" font-family="DejaVu Sans, sans-serif" font-size="27" fill="#15181a">${mm}</text>`).join('')
  return `
  <g transform="translate(${x} ${y}) rotate(${turn})"><g filter="url(#cast)">
    <rect x="${-2.5 * pxPerMm}" y="0" width="${(lengthMm + 6.5) * pxPerMm + 40}" height="${heightPx}" rx="4" fill="url(#ruleSteel)" filter="url(#brushed)"/></g>
    ${marks}${numbers}<text x="${(lengthMm - 4) * pxPerMm}" y="${above ? 28 : heightPx - 10}" font-family="DejaVu Sans, sans-serif" font-size="19" fill="#30363a">mm</text>
  </g>`
}
export const ruleDefs = linear('ruleSteel', [[0, '#e9ecee'], [0.4, '#cdd2d5'], [0.7, '#dfe3e5'], [1, '#a5abaf']])

/** A smooth closed outline round a place, irregular like something that grew. */
export const blob = (x, y, rx, ry, seed, roughness = 0.25, points = 22) => {
  const next = chance(seed)
  const ring = Array.from({ length: points }, (_, i) => {
    const turn = (i / points) * Math.PI * 2
    const reach = 1 - roughness + next() * roughness * 2
    return [x + rx * reach * Math.cos(turn), y + ry * reach * Math.sin(turn)]
  })
  const middle = (a, b) => `${(a[0] + b[0]) / 2} ${(a[1] + b[1]) / 2}`
  return `M${middle(ring.at(-1), ring[0])} ${ring.map((point, i) => `Q${point[0]} ${point[1]} ${middle(point, ring[(i + 1) % points])}`).join(' ')} Z`
}

/** Woven strap: ribs across, fine threads along, in a pattern to fill a shape with. */
export const webbing = (id, { light, mid, dark, pitch = 9 }) => `
  <pattern id="${id}" width="${pitch * 2}" height="${pitch * 2}" patternUnits="userSpaceOnUse">
    <rect width="${pitch * 2}" height="${pitch * 2}" fill="${mid}"/>
    <path d="M0 ${pitch * 0.5} L${pitch} ${pitch * 0.1} L${pitch} ${pitch * 0.9} L0 ${pitch * 1.3} Z M${pitch} ${pitch * 1.5} L${pitch * 2} ${pitch * 1.1} L${pitch * 2} ${pitch * 1.9} L${pitch} ${pitch * 2.3} Z" fill="${light}"/>
    <path d="M0 ${pitch * 1.3} L${pitch} ${pitch * 0.9} M${pitch} ${pitch * 0.3} L${pitch * 2} ${-pitch * 0.1} M${pitch} ${pitch * 2.3} L${pitch * 2} ${pitch * 1.9}" stroke="${dark}" stroke-width="2"/>
    <path d="M${pitch} 0 V${pitch * 2} M0 0 V${pitch * 2}" stroke="${dark}" stroke-opacity="0.55" stroke-width="1.6"/>
  </pattern>`

/** Loose threads standing out of a torn edge: from points along it, outwards. */
export const threads = ({ from, to, count, reach, colours, seed, outX, outY }) => {
  const next = chance(seed)
  return Array.from({ length: count }, () => {
    const t = next()
    const [x, y] = [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t]
    const far = reach * (0.35 + next() * 0.9)
    const bend = () => (next() - 0.5) * reach * 1.5
    const colour = colours[Math.floor(next() * colours.length)]
    return `<path d="M${x} ${y} q${outX * far * 0.4 + bend() * 0.4} ${outY * far * 0.4 + bend() * 0.4} ${outX * far + bend()} ${outY * far + bend()}" fill="none" stroke="${colour}" stroke-width="${1.2 + next() * 1.6}" stroke-linecap="round" opacity="${0.75 + next() * 0.25}"/>`
  }).join('')
}

/** A round bar, wire or cord along a path, lit from the upper left. `colours`: dark, middle, light. */
export const rod = (d, width, [dark, middle, light]) => {
  const stroke = (colour, share, shift, opacity = 1) =>
    `<path d="${d}" fill="none" stroke="${colour}" stroke-width="${width * share}" stroke-linecap="round" stroke-linejoin="round" opacity="${opacity}" transform="translate(${-width * shift} ${-width * shift})"/>`
  return `<g filter="url(#castClose)">${stroke(dark, 1, 0)}</g>${stroke(middle, 0.78, 0.05)}${stroke(light, 0.42, 0.12, 0.85)}${stroke('#fff', 0.12, 0.17, 0.6)}`
}
export const zincRod = ['#5b6367', '#9ca4a8', '#d4d9db']
export const steelRod = ['#33393c', '#7b8387', '#c6ccce']

/** Letters along an arc round (cx, cy), the middle one at `turn` degrees; raised rubber when `light` and `dark` differ. */
export const arcText = ({ text, cx, cy, r, turn, step, size, light, dark, weight = 'bold' }) =>
  [...text].map((letter, i) => {
    const at = turn + (i - (text.length - 1) / 2) * step
    const put = (dx, dy, colour) => `<text x="${dx}" y="${dy}" text-anchor="middle" font-family="DejaVu Sans, sans-serif" font-weight="${weight}" font-size="${size}" fill="${colour}">${letter}</text>`
    return `<g transform="translate(${cx} ${cy}) rotate(${at}) translate(0 ${-r})">${put(3, 4, dark)}${put(-2, -2, light)}${put(0, 0, '#55585b')}</g>`
  }).join('')
