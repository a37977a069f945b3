import type { Mask } from '../measuring/pixels'
import type { LightColour } from './light-colour'
import { logOfLight } from './linear-light'
import type { Planes } from './planes'
import { thresholds } from './thresholds'

/** 0 at or below `none`, 1 at or above `sure`; the other way round where `sure` is the lower. */
export const rise = (value: number, none: number, sure: number): number => Math.min(1, Math.max(0, (value - none) / (sure - none)))

/** How much a colour is like rust, 0 to 1, by the worst of its parts. */
export const likenessOf = (redness: number, yellowness: number, logRed: number): number => {
  const { hue, redness: red, yellowness: yellow, tooRed, vividness } = thresholds
  if (redness <= red.from) return 0
  const ratio = yellowness / redness
  return Math.min(
    rise(redness, red.from, red.sureFrom), rise(redness, tooRed.to, tooRed.sureTo), rise(yellowness, yellow.to, yellow.sureTo),
    rise(ratio, hue.from, hue.sureFrom), rise(ratio, hue.to, hue.sureTo),
    rise(redness + logRed / 2, vividness.to, vividness.sureTo),
  )
}

/** What the colour of every pixel tells; nothing off the face. */
export interface ColourReading {
  readonly redness: Float32Array
  /** 0 to 1. */
  readonly likeness: Float32Array
}

export const readColours = ({ red, green, blue }: Planes, light: LightColour, face: Mask | undefined): ColourReading => {
  const [redness, likeness] = [new Float32Array(red.length), new Float32Array(red.length)]
  for (let at = 0; at < red.length; at += 1) {
    if (face && face.data[at] !== 1) continue
    const [logRed, logGreen] = [logOfLight(red[at] ?? 0), logOfLight(green[at] ?? 0)]
    const here = logRed - logGreen - light.redness
    redness[at] = here
    if (here > thresholds.redness.from) likeness[at] = likenessOf(here, logGreen - logOfLight(blue[at] ?? 0) - light.yellowness, logRed)
  }
  return { redness, likeness }
}
