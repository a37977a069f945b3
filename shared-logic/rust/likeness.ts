import type { Mask } from '../measuring/pixels'
import type { LightColour } from './light-colour'
import { logOfLight } from './linear-light'
import type { Planes } from './planes'
import { thresholds } from './thresholds'

/** 0 at or below `none`, 1 at or above `sure`; the other way round where `sure` is the lower. */
export const rise = (value: number, none: number, sure: number): number => Math.min(1, Math.max(0, (value - none) / (sure - none)))

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

/** Vividness where a pixel is not strongly coloured. */
export const notColoured = -99

/** What the colour of every pixel tells; nothing off the face. */
export interface ColourReading {
  /** 0 to 1. */
  readonly likeness: Float32Array
  /** Redness and half the logarithm of the red light, of strongly coloured pixels; `notColoured` else. */
  readonly vividness: Float32Array
}

export const readColours = (planes: Planes, light: LightColour, face: Mask | undefined): ColourReading => {
  const { redness: red, coloured } = thresholds
  const likeness = new Float32Array(planes.red.length)
  const vividness = new Float32Array(planes.red.length).fill(notColoured)
  for (let at = 0; at < likeness.length; at += 1) {
    if (face && face.data[at] !== 1) continue
    const [logRed, logGreen] = [logOfLight(planes.red[at] ?? 0), logOfLight(planes.green[at] ?? 0)]
    const redness = logRed - logGreen - light.redness
    if (redness <= red.from) continue
    const yellowness = logGreen - logOfLight(planes.blue[at] ?? 0) - light.yellowness
    likeness[at] = likenessOf(redness, yellowness)
    if (redness > coloured.redness && yellowness > thresholds.hue.from * redness && yellowness < coloured.slope * redness + coloured.above) vividness[at] = redness + logRed / 2
  }
  return { likeness, vividness }
}
