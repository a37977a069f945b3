import sharp from 'sharp'

export const widthPx = 1600
export const heightPx = 1200

const label = `
  <g font-family="DejaVu Sans, sans-serif" font-size="21">
    <rect x="${widthPx - 268}" y="${heightPx - 48}" width="248" height="32" rx="3" fill="#0d1013" fill-opacity="0.55"/>
    <text x="${widthPx - 144}" y="${heightPx - 25}" fill="#f4f1ea" text-anchor="middle">Illustration, invented</text>
  </g>`

const frame = (defs, body) => Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${heightPx}" viewBox="0 0 ${widthPx} ${heightPx}"><defs>${defs}</defs>${body}</svg>`)

const lens = frame(
  `<radialGradient id="v" cx="0.5" cy="0.48" r="0.75"><stop offset="0.5" stop-color="#000" stop-opacity="0"/><stop offset="1" stop-color="#05070a" stop-opacity="0.52"/></radialGradient>
   <linearGradient id="sun" x1="0" y1="0" x2="1" y2="1"><stop offset="0" stop-color="#fff3d8" stop-opacity="0.2"/><stop offset="0.5" stop-color="#fff3d8" stop-opacity="0"/><stop offset="1" stop-color="#1a2b44" stop-opacity="0.16"/></linearGradient>`,
  `<rect width="100%" height="100%" fill="url(#sun)"/><rect width="100%" height="100%" fill="url(#v)"/>`,
)

/** Opaque where the lens is out of focus: outside an ellipse round the subject. */
const focusMask = ({ x, y, r }) => frame(
  `<radialGradient id="f" gradientUnits="userSpaceOnUse" cx="${x}" cy="${y}" r="${r}"><stop offset="0.55" stop-color="#fff" stop-opacity="0"/><stop offset="1" stop-color="#fff" stop-opacity="1"/></radialGradient>`,
  `<rect width="100%" height="100%" fill="url(#f)"/>`,
)

const exifOf = ({ takenAt, caption }) => {
  const written = `${takenAt.slice(0, 10).replaceAll('-', ':')} ${takenAt.slice(11, 19)}`
  return { IFD0: { ImageDescription: caption, Software: 'Drawn, not taken', DateTime: written }, IFD2: { DateTimeOriginal: written, OffsetTimeOriginal: takenAt.slice(19) } }
}

const overlay = (input) => ({ input, blend: 'over' })

/** Turns a drawn scene into a picture as a camera would: depth of field, falling light, a little grain; then the label. */
export const photograph = async ({ defs, body, focus = { x: 800, y: 600, r: 1050 } }, facts) => {
  const drawn = await sharp(frame(defs, body)).flatten({ background: '#444' }).removeAlpha().png().toBuffer()
  const mask = await sharp(focusMask(focus)).extractChannel('alpha').toBuffer()
  const blurred = await sharp(await sharp(drawn).blur(6).toBuffer()).joinChannel(mask).png().toBuffer()
  const grain = await sharp({ create: { width: widthPx, height: heightPx, channels: 3, background: '#808080', noise: { type: 'gaussian', mean: 128, sigma: 7 } } }).greyscale().png().toBuffer()
  const seen = await sharp(drawn).composite([overlay(blurred), overlay(lens), { input: grain, blend: 'soft-light' }]).png().toBuffer()
  return sharp(await sharp(seen).blur(0.6).toBuffer())
    .composite([overlay(frame('', label))])
    .withExif(exifOf(facts))
    .jpeg({ quality: 76, mozjpeg: true })
    .toBuffer()
}
