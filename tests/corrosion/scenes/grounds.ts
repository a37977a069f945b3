import { ramp } from './canvas'
import { type Chance } from './chance'
import { aluminium, type Colour, paints, zinc } from './colours'
import { type Ground } from './plan'
import { brushed, fractals, lumpTexels, readTile, softNoise, spangles } from './tiles'

/** Red, green, blue and gloss of a surface at a point of its plane, mm; written into `into`, so that nothing is allocated a pixel. */
export type Surface = (xMm: number, yMm: number, into: Float64Array) => void

/** Noise with lumps `lumpMm` wide, turned and shifted by chance. */
export function noiseOf(chance: Chance, lumpMm: number, tile = chance.pick(fractals)): (xMm: number, yMm: number) => number {
  const angle = chance.between(0, 2 * Math.PI)
  const [cos, sin] = [(Math.cos(angle) * lumpTexels) / lumpMm, (Math.sin(angle) * lumpTexels) / lumpMm]
  const [shiftX, shiftY] = [chance.between(0, 512), chance.between(0, 512)]
  return (xMm, yMm) => readTile(tile, xMm * cos - yMm * sin + shiftX, xMm * sin + yMm * cos + shiftY)
}

function set(into: Float64Array, base: Colour, shade: number, gloss: number): void {
  into[0] = base[0] * shade
  into[1] = base[1] * shade
  into[2] = base[2] * shade
  into[3] = gloss
}

function blend(into: Float64Array, over: Colour, cover: number, gloss: number): void {
  for (let i = 0; i < 3; i += 1) into[i] = (into[i] ?? 0) * (1 - cover) + (over[i] ?? 0) * cover
  into[3] = (into[3] ?? 0) * (1 - cover) + gloss * cover
}

function zincSurface(chance: Chance, bright: boolean): Surface {
  const base = bright ? zinc.bright : zinc.weathered
  const spangleMm = chance.between(5, 14)
  const contrast = bright ? chance.between(0.12, 0.24) : chance.between(0.03, 0.09)
  const [shiftX, shiftY] = [chance.between(0, 512), chance.between(0, 512)]
  const cloud = noiseOf(chance, 60, softNoise)
  const fine = noiseOf(chance, 3)
  const product = noiseOf(chance, chance.between(15, 50))
  const productFrom = chance.happens(0.45) ? chance.between(0.7, 1.6) : 9
  return (x, y, into) => {
    const across = (x * 32) / spangleMm + shiftX
    const down = (y * 32) / spangleMm + shiftY
    const seam = readTile(spangles.inside, across, down)
    const shade = 1 + contrast * readTile(spangles.shade, across, down) - contrast * 0.35 * (1 - seam) + 0.05 * cloud(x, y) + 0.025 * fine(x, y)
    set(into, base, shade, bright ? 0.35 : 0.12)
    const white = ramp(productFrom, productFrom + 0.7, product(x, y))
    if (white > 0) blend(into, zinc.white, white * 0.75, 0.02)
  }
}

function paintSurface(chance: Chance, shades: readonly Colour[]): Surface {
  const base = chance.pick(shades)
  const age = chance.next()
  const chalk = noiseOf(chance, 80, softNoise)
  const peel = noiseOf(chance, 4, softNoise)
  const scuff = noiseOf(chance, 25)
  const dust = chance.between(0, 0.1)
  const [shiftX, shiftY] = [chance.between(0, 512), chance.between(0, 512)]
  return (x, y, into) => {
    set(into, base, 1 + 0.06 * age * chalk(x, y) + 0.025 * peel(x, y), 0.3 * (1 - 0.7 * age))
    const cover = dust * ramp(-1, 2, scuff(x, y)) + age * 0.05
    const scratch = ramp(2.4, 3.2, readTile(brushed, x * 1.6 + shiftX, y * 7 + shiftY)) * 0.3
    blend(into, [0.45, 0.43, 0.4], Math.min(0.4, cover + scratch), 0.02)
  }
}

function aluminiumSurface(chance: Chance): Surface {
  const strength = chance.between(0.03, 0.09)
  const cloud = noiseOf(chance, 70, softNoise)
  const oxide = noiseOf(chance, 12)
  const oxideFrom = chance.between(1.2, 3)
  const upright = chance.happens(0.3)
  const [shiftX, shiftY] = [chance.between(0, 512), chance.between(0, 512)]
  return (x, y, into) => {
    const line = upright ? readTile(brushed, y * 2 + shiftX, x * 5 + shiftY) : readTile(brushed, x * 2 + shiftX, y * 5 + shiftY)
    set(into, aluminium.bare, 0.82 + strength * line + 0.05 * cloud(x, y), 0.4)
    const white = ramp(oxideFrom, oxideFrom + 0.6, oxide(x, y))
    if (white > 0) blend(into, aluminium.oxide, white * 0.7, 0.02)
  }
}

export function surfaceOf(ground: Ground, chance: Chance): Surface {
  switch (ground) {
    case 'zinc bright': return zincSurface(chance, true)
    case 'zinc weathered': return zincSurface(chance, false)
    case 'painted grey': return paintSurface(chance, paints.grey)
    case 'painted black': return paintSurface(chance, paints.black)
    case 'painted white': return paintSurface(chance, paints.white)
    case 'painted blue': return paintSurface(chance, paints.blue)
    case 'painted red': return paintSurface(chance, paints.red)
    case 'painted green': return paintSurface(chance, paints.green)
    case 'aluminium': return aluminiumSurface(chance)
  }
}
