import { type Chance } from './chance'
import { mottleNoise, type NoiseTile, readTile, type Tile } from './tiles'

/** A tile laid over a plane: which texel lies at which point, mm. */
export interface Noise {
  readonly tile: Tile
  readonly acrossX: number
  readonly acrossY: number
  readonly downX: number
  readonly downY: number
  readonly shiftX: number
  readonly shiftY: number
}

/** Points of a plane, one a pixel. */
export interface Points { readonly xMm: Float32Array, readonly yMm: Float32Array }

/** Noise with lumps `lumpMm` wide, turned and shifted by chance. */
export function noiseOf(chance: Chance, lumpMm: number, tile: NoiseTile = mottleNoise): Noise {
  const angle = chance.between(0, 2 * Math.PI)
  const cos = (Math.cos(angle) * tile.lumpTexels) / lumpMm
  const sin = (Math.sin(angle) * tile.lumpTexels) / lumpMm
  return { tile, acrossX: cos, acrossY: -sin, downX: sin, downY: cos, shiftX: chance.between(0, 512), shiftY: chance.between(0, 512) }
}

/** A tile that keeps its direction: brush lines, grain, crystals. Texels for each mm along and down. */
export function laidTile(chance: Chance, tile: Tile, alongX: number, downY: number): Noise {
  return { tile, acrossX: alongX, acrossY: 0, downX: 0, downY, shiftX: chance.between(0, 512), shiftY: chance.between(0, 512) }
}

export function noiseAt(noise: Noise, x: number, y: number): number {
  return readTile(noise.tile, x * noise.acrossX + y * noise.acrossY + noise.shiftX, x * noise.downX + y * noise.downY + noise.shiftY)
}

/** The noise at every pixel: `noiseAt` written out in one loop, where a call a pixel would cost several times as much. */
export function noisePlane({ xMm, yMm }: Points, noise: Noise): Float32Array {
  const { acrossX, acrossY, downX, downY, shiftX, shiftY } = noise
  const { side, data } = noise.tile
  const mask = side - 1
  const plane = new Float32Array(xMm.length)
  for (let at = 0; at < plane.length; at += 1) {
    const x = (xMm[at] ?? 0) * acrossX + (yMm[at] ?? 0) * acrossY + shiftX
    const y = (xMm[at] ?? 0) * downX + (yMm[at] ?? 0) * downY + shiftY
    const wholeX = Math.floor(x)
    const wholeY = Math.floor(y)
    const partX = x - wholeX
    const left = wholeX & mask
    const right = (left + 1) & mask
    const top = (wholeY & mask) * side
    const below = ((wholeY + 1) & mask) * side
    const above = (data[top + left] ?? 0) * (1 - partX) + (data[top + right] ?? 0) * partX
    plane[at] = above + ((data[below + left] ?? 0) * (1 - partX) + (data[below + right] ?? 0) * partX - above) * (y - wholeY)
  }
  return plane
}
