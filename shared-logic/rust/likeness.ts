import type { Mask } from '../measuring/pixels'
import type { LightColour } from './light-colour'
import { logOfLight } from './linear-light'
import type { Planes } from './planes'
import { thresholds } from './thresholds'

/** 0 at or below `none`, 1 at or above `sure`; the other way round where `sure` is the lower. */
const rise = (value: number, none: number, sure: number): number => Math.min(1, Math.max(0, (value - none) / (sure - none)))

/** How much a colour is like rust, 0 to 1, by the worst of its parts. */
export const likenessOf = (redness: number, yellowness: number): number => {
  const { hue, redness: red, yellowness: yellow, tooRed } = thresholds
  if (redness <= red.from) return 0
  const ratio = yellowness / redness
  return Math.min(
    rise(redness, red.from, red.sureFrom), rise(redness, tooRed.to, tooRed.sureTo), rise(yellowness, yellow.to, yellow.sureTo),
    rise(ratio, hue.from, hue.sureFrom), rise(ratio, hue.to, hue.sureTo),
  )
}

/** Likeness of every pixel, 0 to 255; 0 off the face. */
export const likenessPlane = ({ red, green, blue }: Planes, light: LightColour, face: Mask | undefined): Uint8Array => {
  const plane = new Uint8Array(red.length)
  for (let at = 0; at < plane.length; at += 1) {
    if (face && face.data[at] !== 1) continue
    const log = logOfLight(green[at] ?? 0)
    const redness = logOfLight(red[at] ?? 0) - log - light.redness
    if (redness <= thresholds.redness.from) continue
    plane[at] = Math.round(255 * likenessOf(redness, log - logOfLight(blue[at] ?? 0) - light.yellowness))
  }
  return plane
}
