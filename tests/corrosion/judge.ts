import type { Mask, Pixels } from '../../shared-logic/measuring/pixels'
import { decoyKinds } from './scenes/plan'
import { type Scene } from './scenes/render-scene'

/** Shared pixels over pixels in either, inside the face; two empty masks agree wholly. */
export function intersectionOverUnion(found: Mask, scene: Scene): number {
  let both = 0
  let either = 0
  for (let at = 0; at < found.data.length; at += 1) {
    if (scene.faceMask.data[at] !== 1) continue
    const isFound = found.data[at] === 1
    const isTrue = scene.truth.data[at] === 1
    if (isFound && isTrue) both += 1
    if (isFound || isTrue) either += 1
  }
  return either === 0 ? 1 : both / either
}

export interface FalseArea { readonly falsePx: number, readonly decoyPx: number }

/** For each decoy that shows inside the face: its pixels, and how many of them were marked as rust. */
export function falseOnDecoys(found: Mask, scene: Scene): Map<string, FalseArea> {
  const counts = decoyKinds.map(() => ({ falsePx: 0, decoyPx: 0 }))
  for (let at = 0; at < found.data.length; at += 1) {
    if (scene.decoys.data[at] !== 1) continue
    const count = counts[(scene.decoyLabels[at] ?? 0) - 1]
    if (count === undefined) continue
    count.decoyPx += 1
    if (found.data[at] === 1) count.falsePx += 1
  }
  return new Map(decoyKinds.flatMap((kind, index) => {
    const count = counts[index]
    return count === undefined || count.decoyPx === 0 ? [] : [[kind, count] as const]
  }))
}

export function shareOfFace(found: Mask, scene: Scene): number {
  let foundPx = 0
  let facePx = 0
  for (let at = 0; at < found.data.length; at += 1) {
    if (scene.faceMask.data[at] !== 1) continue
    facePx += 1
    foundPx += found.data[at] ?? 0
  }
  return foundPx / facePx
}

/** Value below which `share` of the values lie. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((one, other) => one - other)
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN
}

/** Median of each group, weakest first: 'flash 0.81 (12)'. */
export function mediansBy(rows: readonly { readonly group: string, readonly value: number }[]): string {
  const groups = new Map<string, number[]>()
  for (const row of rows) groups.set(row.group, [...groups.get(row.group) ?? [], row.value])
  return [...groups].map(([group, values]) => ({ group, middle: quantile(values, 0.5), count: values.length })).toSorted((one, other) => one.middle - other.middle)
    .map(({ group, middle, count }) => `${group} ${middle.toFixed(3)} (${count})`).join(', ')
}

/**
 * The plain colour rule that is often seen: hue 5 to 30 (of 180), saturation 60 to 255, value 40 to 255, or hue 0 to 20, saturation 40 to 255,
 * value 20 to 200; darker than 35 never. It stands here to show that the scenes are not won by one threshold.
 */
export function plainHueRule(pixels: Pixels): Mask {
  const data = new Uint8Array(pixels.width * pixels.height)
  for (let at = 0; at < data.length; at += 1) {
    const red = pixels.data[at * 4] ?? 0
    const green = pixels.data[at * 4 + 1] ?? 0
    const blue = pixels.data[at * 4 + 2] ?? 0
    const value = Math.max(red, green, blue)
    const spread = value - Math.min(red, green, blue)
    if (value < 35 || spread === 0 || value !== red || green < blue) continue
    const hue = (30 * (green - blue)) / spread
    const saturation = (255 * spread) / value
    if ((hue >= 5 && hue <= 30 && saturation >= 60) || (hue <= 20 && saturation >= 40 && value <= 200)) data[at] = 1
  }
  return { width: pixels.width, height: pixels.height, data }
}
