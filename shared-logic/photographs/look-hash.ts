import { coloursBehind, lightnessAt, type Samples } from './samples'

/**
 * A fingerprint of how a picture looks, 64 bits as 16 hex digits: which of its 8 x 8 lowest waves are stronger than
 * their median. Coding, size and brightness hardly change it.
 * Source: Zauner, 'Implementation and Benchmarking of Perceptual Image Hash Functions', 2010, 3.2.1 (DCT-based hash).
 */
const edge = 32
const waves = 8

/** Each cell is the mean of at most so many by so many pixels spread over it. */
const mostInCell = 8

/** Where a cell's pixels lie along one edge of the picture. */
const placesIn = (cell: number, length: number): number[] => {
  const from = (cell * length) / edge
  const count = Math.max(1, Math.min(mostInCell, Math.floor(length / edge)))
  return Array.from({ length: count }, (_, index) => Math.floor(from + ((index + 0.5) * length) / edge / count))
}

/** The picture as 32 x 32 mean lightnesses. */
const shrink = (samples: Samples): Float64Array => {
  const { width, height, channels, data } = samples
  const [green, blue] = coloursBehind(samples)
  const cells = new Float64Array(edge * edge)
  const columns = Array.from({ length: edge }, (_, cell) => placesIn(cell, width))
  for (let row = 0; row < edge; row += 1)
    for (const y of placesIn(row, height))
      for (const [column, places] of columns.entries()) {
        let sum = 0
        for (const x of places) sum += lightnessAt(data, (y * width + x) * channels, green, blue)
        cells[row * edge + column] = (cells[row * edge + column] ?? 0) + sum / places.length
      }
  return cells
}

/** Waves 1 to 8 of the discrete cosine transform over 32 samples; the flat one, wave 0, says only how bright it is. */
const cosines = Array.from({ length: waves }, (_, wave) => Array.from({ length: edge }, (_unused, at) => Math.cos((Math.PI * (wave + 1) * (2 * at + 1)) / (2 * edge))))

const strengths = (cells: Float64Array): number[] =>
  cosines.flatMap((down) =>
    cosines.map((across) => {
      let sum = 0
      for (let row = 0; row < edge; row += 1) {
        let inRow = 0
        for (let column = 0; column < edge; column += 1) inRow += (across[column] ?? 0) * (cells[row * edge + column] ?? 0)
        sum += inRow * (down[row] ?? 0)
      }
      return sum
    }))

/** A wave of one step of lightness, of 255, is this strong. What has none as strong shows nothing to know it by. */
const leastStrength = (edge / 2) ** 2

/** Undefined for a picture that shows nothing: a plain wall, the inside of a pocket. */
export const lookHashOf = (samples: Samples): string | undefined => {
  const found = strengths(shrink(samples))
  if (Math.max(...found.map(Math.abs)) < leastStrength) return undefined
  const ordered = found.toSorted((a, b) => a - b)
  const median = ((ordered[31] ?? 0) + (ordered[32] ?? 0)) / 2
  const nibbles = Array.from({ length: 16 }, (_, place) => found.slice(place * 4, place * 4 + 4).reduce((bits, strength) => bits * 2 + (strength > median ? 1 : 0), 0))
  return nibbles.map((nibble) => nibble.toString(16)).join('')
}

/** How many of 32 bits are set. Source: Warren, 'Hacker's Delight', 5-1. */
const bitsSet = (word: number): number => {
  const pairs = word - ((word >>> 1) & 0x5555_5555)
  const nibbles = (pairs & 0x3333_3333) + ((pairs >>> 2) & 0x3333_3333)
  return Math.imul((nibbles + (nibbles >>> 4)) & 0x0f0f_0f0f, 0x0101_0101) >>> 24
}

/** A fingerprint as two words of 32 bits, for many comparisons. */
export type LookBits = readonly [number, number]
export const lookBitsOf = (hash: string): LookBits => [Number.parseInt(hash.slice(0, 8), 16), Number.parseInt(hash.slice(8), 16)]

/** In how many of 64 bits two fingerprints differ. */
export const lookDistance = (a: LookBits, b: LookBits): number => bitsSet(a[0] ^ b[0]) + bitsSet(a[1] ^ b[1])
