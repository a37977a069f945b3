import { type Chance, chanceOf } from './chance'

/** A square texture that repeats without a seam; its side is a power of two. */
export interface Tile {
  readonly side: number
  readonly data: Float32Array
}

/** Reads a tile at a point in texels, between its texels; repeats for ever. */
export function readTile(tile: Tile, x: number, y: number): number {
  const { side, data } = tile
  const mask = side - 1
  const wholeX = Math.floor(x)
  const wholeY = Math.floor(y)
  const partX = x - wholeX
  const partY = y - wholeY
  const left = wholeX & mask
  const right = (wholeX + 1) & mask
  const top = (wholeY & mask) * side
  const below = ((wholeY + 1) & mask) * side
  const a = data[top + left] ?? 0
  const b = data[top + right] ?? 0
  const c = data[below + left] ?? 0
  const d = data[below + right] ?? 0
  return a + (b - a) * partX + (c - a + (a - b - c + d) * partX) * partY
}

/** Scales to mean 0 and standard deviation 1, so that thresholds mean the same on every tile. */
function standardized(data: Float32Array): Float32Array {
  let sum = 0
  let squares = 0
  for (const value of data) { sum += value; squares += value * value }
  const mean = sum / data.length
  const spread = Math.sqrt(Math.max(1e-12, squares / data.length - mean * mean))
  for (let i = 0; i < data.length; i += 1) data[i] = ((data[i] ?? 0) - mean) / spread
  return data
}

/** Weights of the four lattice points round each texel (uniform cubic B-spline): no grid shows through, as it does where one smooths between neighbours alone. */
function splineWeights(side: number, cells: number): Float64Array {
  const weights = new Float64Array(side * 4)
  for (let at = 0; at < side; at += 1) {
    const t = ((at * cells) / side) % 1
    weights.set([(1 - t) ** 3 / 6, (3 * t ** 3 - 6 * t ** 2 + 4) / 6, (-3 * t ** 3 + 3 * t ** 2 + 3 * t + 1) / 6, t ** 3 / 6], at * 4)
  }
  return weights
}

/** Draws `rows` rows of `cells` values out to `side` values each and turns the result on its side: twice does both directions. */
function drawnOut(values: Float32Array, rows: number, cells: number, side: number, weights: Float64Array): Float32Array {
  const out = new Float32Array(rows * side)
  for (let at = 0; at < out.length; at += 1) {
    const place = Math.floor(at / rows)
    const row = (at % rows) * cells
    const first = Math.floor((place * cells) / side) + cells - 1
    let sum = 0
    for (let k = 0; k < 4; k += 1) sum += (values[row + ((first + k) % cells)] ?? 0) * (weights[place * 4 + k] ?? 0)
    out[at] = sum
  }
  return out
}

function addOctave(data: Float32Array, side: number, cells: number, strength: number, chance: Chance): void {
  const lattice = Float32Array.from({ length: cells * cells }, () => chance.between(-1, 1))
  const weights = splineWeights(side, cells)
  const octave = drawnOut(drawnOut(lattice, cells, cells, side, weights), side, cells, side, weights)
  for (let at = 0; at < data.length; at += 1) data[at] = (data[at] ?? 0) + strength * (octave[at] ?? 0)
}

/** Fractal noise: `firstCells` lumps across in the coarsest of its octaves, each finer one `gain` as strong as the one before. */
export function fractalTile(seed: number, side: number, firstCells: number, gain: number): Tile {
  const chance = chanceOf(seed)
  const data = new Float32Array(side * side)
  let strength = 1
  for (let cells = firstCells; cells <= side; cells *= 2) {
    addOctave(data, side, cells, strength, chance)
    strength *= gain
  }
  return { side, data: standardized(data) }
}

/** Brush or grain: white noise drawn out along x. */
export function streakTile(seed: number, side: number, lengthTexels: number): Tile {
  const chance = chanceOf(seed)
  const raw = Float32Array.from({ length: side * side }, () => chance.between(-1, 1))
  const data = new Float32Array(side * side)
  for (let y = 0; y < side; y += 1) {
    let run = 0
    for (let x = -lengthTexels; x < side; x += 1) {
      run += (raw[y * side + ((x + side) & (side - 1))] ?? 0) - (raw[y * side + ((x - lengthTexels + 2 * side) & (side - 1))] ?? 0)
      if (x >= 0) data[y * side + x] = run
    }
  }
  return { side, data: standardized(data) }
}

export interface Cells {
  /** One even shade a cell, -1 to 1. */
  readonly shade: Tile
  /** 0 on the seam between two cells, 1 well inside. */
  readonly inside: Tile
}

/** Cells of crystals or pebbles, `cellTexels` wide. */
export function cellTiles(seed: number, side: number, cellTexels: number): Cells {
  const chance = chanceOf(seed)
  const across = side / cellTexels
  const seeds = Float64Array.from({ length: across * across * 3 }, () => chance.next())
  const shade = new Float32Array(side * side)
  const inside = new Float32Array(side * side)
  for (let y = 0; y < side; y += 1) {
    for (let x = 0; x < side; x += 1) {
      const near = nearestCell(seeds, across, x / cellTexels, y / cellTexels)
      shade[y * side + x] = near.shade
      inside[y * side + x] = Math.min(1, near.seamDistance * 3)
    }
  }
  return { shade: { side, data: shade }, inside: { side, data: inside } }
}

function nearestCell(seeds: Float64Array, across: number, x: number, y: number): { shade: number, seamDistance: number } {
  let first = 9
  let second = 9
  let shade = 0
  for (let row = Math.floor(y) - 1; row <= Math.floor(y) + 1; row += 1) {
    for (let column = Math.floor(x) - 1; column <= Math.floor(x) + 1; column += 1) {
      const at = (((row + across) % across) * across + ((column + across) % across)) * 3
      const distance = Math.hypot(column + (seeds[at] ?? 0) - x, row + (seeds[at + 1] ?? 0) - y)
      if (distance < first) { second = first; first = distance; shade = (seeds[at + 2] ?? 0) * 2 - 1 } else if (distance < second) second = distance
    }
  }
  return { shade, seamDistance: second - first }
}

/** Noise whose coarsest lumps are `lumpTexels` wide; it repeats after as many lumps as fit its side. */
export interface NoiseTile extends Tile { readonly lumpTexels: number }

const noiseTile = (seed: number, lumps: number, gain: number): NoiseTile => ({ ...fractalTile(seed, 512, lumps, gain), lumpTexels: 512 / lumps })

// Made once for all scenes.
/** For the outline of one blot, a lump or two across: the finest detail, but it repeats after four lumps. */
export const outlineNoise = [noiseTile(11, 4, 0.62), noiseTile(12, 4, 0.55), noiseTile(13, 4, 0.7)] as const
export const mottleNoise = noiseTile(18, 16, 0.6)
/** For what is a few pixels wide and must not show its repeat over a whole picture. */
export const grainNoise = noiseTile(19, 128, 0.7)
export const softNoise = noiseTile(14, 16, 0.35)
export const brushed = streakTile(15, 512, 96)
export const spangles = cellTiles(16, 512, 32)
export const pebbles = cellTiles(17, 512, 32)
