import type { Quality } from './quality'
import { coloursBehind, lightnessAt, type Samples } from './samples'

/** Of 255: at and over it nothing is left to see of a bright part, at and under it nothing of a dark one. Common practice, no source. */
const burntFrom = 250
const blackTo = 6

/** Light of a stored lightness, 0 to 1. Source: IEC 61966-2-1, the curve of sRGB. */
const lightOf = (lightness: number): number => {
  const signal = lightness / 255
  return signal <= 0.040_45 ? signal / 12.92 : ((signal + 0.055) / 1.055) ** 2.4
}

/** One pixel in so many is counted; a prime, so that no column of the picture is counted alone. */
const pixelStep = 31

/** How much of a picture is burnt out or black, and how light it is in the middle of its pixels. */
export const exposureOf = (samples: Samples): Pick<Quality, 'burntShare' | 'blackShare' | 'medianLuminance'> => {
  const { data, channels } = samples
  const [green, blue] = coloursBehind(samples)
  const counts = new Uint32Array(256)
  let total = 0
  for (let at = 0; at < data.length; at += pixelStep * channels) {
    const lightness = Math.round(lightnessAt(data, at, green, blue))
    counts[lightness] = (counts[lightness] ?? 0) + 1
    total += 1
  }
  const share = (from: number, to: number): number => counts.subarray(from, to + 1).reduce((whole, each) => whole + each, 0) / total
  let seen = 0
  const median = counts.findIndex((each) => (seen += each) * 2 >= total)
  return { burntShare: share(burntFrom, 255), blackShare: share(0, blackTo), medianLuminance: lightOf(median) }
}
