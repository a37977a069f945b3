import sharp, { type Sharp } from 'sharp'
import type { Samples } from '../../../shared-logic/photographs/samples'
import { chanceOf } from '../../corrosion/scenes/chance'
import { renderScene } from '../../corrosion/scenes/render-scene'
import { twelveMegapixels } from '../../bench/twelve-megapixels'

/** Pictures to be degraded, in focus and well exposed: drawn, rendered, and rough as a sensor's. RGB at most 1600 px long. */
const drawn = ['bow-eye', 'coupler-latch', 'strap-frayed', 'tyre-date-code', 'wire-pinched', 'white-product']
const rendered = [0, 2, 6, 12]

const working = (picture: Sharp): Promise<Samples> =>
  picture.resize({ width: 1600, height: 1600, fit: 'inside', withoutEnlargement: true }).removeAlpha().toColourspace('srgb').raw().toBuffer({ resolveWithObject: true })
    .then(({ data, info }) => ({ width: info.width, height: info.height, channels: 3, data }))

const pictureOf = ({ width, height, channels, data }: Samples): Sharp => sharp(data, { raw: { width, height, channels } })

export const scenes = async (): Promise<ReadonlyMap<string, Samples>> => {
  const found = new Map<string, Samples>()
  for (const name of drawn) found.set(name, await working(sharp(`assets/example/${name}.jpg`)))
  for (const seed of rendered) {
    const { pixels } = await renderScene(seed, { blurPx: 0.3 })
    found.set(`rendered ${seed}`, await working(sharp(pixels.data, { raw: { width: pixels.width, height: pixels.height, channels: 4 } })))
  }
  found.set('rough', await working(sharp(await twelveMegapixels(5))))
  return found
}

/** Out of focus: a Gaussian of so many px, by the imaging library. */
export const blurred = async (samples: Samples, sigmaPx: number): Promise<Samples> => (sigmaPx === 0 ? samples : working(pictureOf(samples).blur(sigmaPx)))

/** Coded as JPEG and decoded again. */
export const coded = async (samples: Samples, quality: number): Promise<Samples> => working(sharp(await pictureOf(samples).jpeg({ quality }).toBuffer()))

export const scaled = async (samples: Samples, share: number): Promise<Samples> => working(sharp(await pictureOf(samples).resize({ width: Math.round(samples.width * share) }).png().toBuffer()))

/** Cut by this share of its edges, left and top. */
export const cropped = async (samples: Samples, share: number): Promise<Samples> => {
  const [left, top] = [Math.round(samples.width * share), Math.round(samples.height * share)]
  return working(sharp(await pictureOf(samples).extract({ left, top, width: samples.width - left, height: samples.height - top }).png().toBuffer()))
}

/** The same without its colours. */
export const greyOf = ({ width, height, channels, data }: Samples): Samples => {
  const grey = new Uint8Array(width * height)
  for (let at = 0; at < grey.length; at++) grey[at] = 0.2126 * (data[at * channels] ?? 0) + 0.7152 * (data[at * channels + 1] ?? 0) + 0.0722 * (data[at * channels + 2] ?? 0)
  return { width, height, channels: 1, data: grey }
}

/** The camera moved: each pixel of a grey picture is the mean along a way of so many px; the border, where the way leaves the picture, is cut off. */
export const moved = ({ width, height, data }: Samples, lengthPx: number, [across, down]: readonly [0 | 1, 0 | 1]): Samples => {
  const [newWidth, newHeight] = [width - across * (lengthPx - 1), height - down * (lengthPx - 1)]
  const out = new Uint8Array(newWidth * newHeight)
  const step = down * width + across
  for (let y = 0; y < newHeight; y++)
    for (let x = 0; x < newWidth; x++) {
      const from = y * width + x
      let sum = 0
      for (let at = from, end = from + lengthPx * step; at < end; at += step) sum += data[at] ?? 0
      out[y * newWidth + x] = sum / lengthPx
    }
  return { width: newWidth, height: newHeight, channels: 1, data: out }
}

const fromSrgb = (value: number): number => (value <= 0.040_45 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4)
const toSrgb = (light: number): number => (light <= 0.003_130_8 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055)

/** So many stops more light on the sensor, cut off at white. Source of the curve: IEC 61966-2-1. */
export const exposed = (samples: Samples, stops: number): Samples => {
  const table = Array.from({ length: 256 }, (_, value) => Math.round(255 * toSrgb(Math.min(1, fromSrgb(value / 255) * 2 ** stops))))
  return { ...samples, data: samples.data.map((value) => table[value] ?? 0) }
}

/** Drawn once: a bell curve of deviation 1, the sum of four even draws. */
const bell = (() => {
  const chance = chanceOf(7)
  const even = (): number => chance.between(-1, 1)
  return Float32Array.from({ length: 65_521 }, () => (even() + even() + even() + even()) * Math.sqrt(3 / 4))
})()

/** Noise of so much of 255 in every sample. */
export const noisy = (samples: Samples, sigma: number): Samples => ({ ...samples, data: samples.data.map((value, index) => Math.min(255, Math.max(0, Math.round(value + sigma * (bell[index % bell.length] ?? 0))))) })
