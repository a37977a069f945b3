import sharp from 'sharp'
import type { Pixels } from '../../../shared-logic/measuring/pixels'
import { type Canvas } from './canvas'
import { type Chance, chanceOf } from './chance'
import { type ScenePlan } from './plan'

/** Standard normal numbers, drawn once (Box and Muller). */
const normals = ((): Float32Array => {
  const chance = chanceOf(99)
  return Float32Array.from({ length: 65_536 }, () => Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next()))
})()

/** Linear light in steps of 1/4095 to the sRGB byte (IEC 61966-2-1). */
const bytes = Uint8Array.from({ length: 4096 }, (_, step) => {
  const light = step / 4095
  return Math.round(255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055))
})

/** The gain that brings the middle of the picture to a middle grey, as a camera's meter would, though never far from it. */
function meteredGain(canvas: Canvas, stops: number): number {
  let sum = 0
  let count = 0
  for (let at = 0; at < canvas.red.length; at += 7, count += 1) sum += Math.min(1, 0.25 * (canvas.red[at] ?? 0) + 0.65 * (canvas.green[at] ?? 0) + 0.1 * (canvas.blue[at] ?? 0))
  const mean = sum / count
  return (0.19 / (0.45 * mean + 0.55 * 0.2)) * 2 ** stops
}

/** A lens that is a little out of focus: [w, 1 - 2w, w] along and across. */
function blurred(plane: Float32Array, widthPx: number, sigma: number): Float32Array {
  const side = Math.min(0.33, (sigma * sigma) / 2)
  const middle = 1 - 2 * side
  const along = plane.slice()
  for (let at = 1; at < plane.length - 1; at += 1) along[at] = middle * (plane[at] ?? 0) + side * ((plane[at - 1] ?? 0) + (plane[at + 1] ?? 0))
  const both = along.slice()
  for (let at = widthPx; at < plane.length - widthPx; at += 1) both[at] = middle * (along[at] ?? 0) + side * ((along[at - widthPx] ?? 0) + (along[at + widthPx] ?? 0))
  return both
}

/** Exposes, with white balance, photon and reading noise, and bends into sRGB bytes. */
function exposed(canvas: Canvas, plan: ScenePlan, chance: Chance): Uint8Array {
  const gain = meteredGain(canvas, plan.exposureStops)
  const gains = [gain * plan.whiteBalance[0], gain, gain * plan.whiteBalance[1]] as const
  const out = new Uint8Array(canvas.red.length * 3)
  ;[canvas.red, canvas.green, canvas.blue].forEach((plane, channel) => {
    const soft = blurred(plane, canvas.widthPx, plan.blurPx)
    developInto(out, channel, soft, gains[channel] ?? gain, plan.noise, { draw: chance.below(65_536), stride: 1 + 2 * chance.below(30_000) })
  })
  return out
}

function developInto(out: Uint8Array, channel: number, plane: Float32Array, gain: number, noise: number, given: { draw: number, stride: number }): void {
  let { draw } = given
  for (let at = 0; at < plane.length; at += 1) {
    draw = (draw + given.stride) & 65_535
    const light = (plane[at] ?? 0) * gain
    const noisy = light + noise * Math.sqrt(0.18 * Math.max(0, light) + 0.0004) * (normals[draw] ?? 0)
    out[at * 3 + channel] = bytes[Math.min(4095, Math.max(0, noisy * 4095 + 0.5)) | 0] ?? 0
  }
}

/** Takes the picture, writes it as JPEG and reads it again. */
export async function photographed(canvas: Canvas, plan: ScenePlan, chance: Chance): Promise<Pixels> {
  const raw = { width: canvas.widthPx, height: canvas.heightPx, channels: 3 as const }
  const jpeg = await sharp(exposed(canvas, plan, chance), { raw }).jpeg({ quality: plan.jpegQuality, chromaSubsampling: plan.chromaSubsampling }).toBuffer()
  const { data, info } = await sharp(jpeg).ensureAlpha().raw().toBuffer({ resolveWithObject: true })
  return { width: info.width, height: info.height, data: new Uint8Array(data.buffer, data.byteOffset, data.byteLength) }
}
