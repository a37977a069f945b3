import { type Chance } from './chance'
import { fractals, lumpTexels, readTile, type Tile } from './tiles'

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
export function noiseOf(chance: Chance, lumpMm: number, tile: Tile = chance.pick(fractals)): Noise {
  const angle = chance.between(0, 2 * Math.PI)
  const cos = (Math.cos(angle) * lumpTexels) / lumpMm
  const sin = (Math.sin(angle) * lumpTexels) / lumpMm
  return { tile, acrossX: cos, acrossY: -sin, downX: sin, downY: cos, shiftX: chance.between(0, 512), shiftY: chance.between(0, 512) }
}

/** A tile that keeps its direction: brush lines, grain, crystals. Texels for each mm along and down. */
export function laidTile(chance: Chance, tile: Tile, alongX: number, downY: number): Noise {
  return { tile, acrossX: alongX, acrossY: 0, downX: 0, downY, shiftX: chance.between(0, 512), shiftY: chance.between(0, 512) }
}

export function noiseAt(noise: Noise, x: number, y: number): number {
  return readTile(noise.tile, x * noise.acrossX + y * noise.acrossY + noise.shiftX, x * noise.downX + y * noise.downY + noise.shiftY)
}

/** The noise at every pixel: one tight loop, several times as fast as one call a pixel. */
export function noisePlane(points: Points, noise: Noise): Float32Array {
  const { xMm, yMm } = points
  const plane = new Float32Array(xMm.length)
  for (let at = 0; at < plane.length; at += 1) plane[at] = noiseAt(noise, xMm[at] ?? 0, yMm[at] ?? 0)
  return plane
}
