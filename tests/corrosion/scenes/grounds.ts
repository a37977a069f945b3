import { assertNever } from '../../../shared-logic/assert-never'
import { type Canvas, ramp } from './canvas'
import { type Chance } from './chance'
import { aluminium, type Colour, paints, zinc } from './colours'
import { laidTile, noiseOf, noisePlane } from './noise'
import { type Ground } from './plan'
import { brushed, grainNoise, softNoise, spangles } from './tiles'

/** Red, green, blue and gloss of a surface at a pixel; written into `into`, so that nothing is allocated a pixel. */
export type Surface = (at: number, into: Float64Array) => void

export function dye(into: Float64Array, base: Colour, shade: number, gloss: number): void {
  into[0] = base[0] * shade
  into[1] = base[1] * shade
  into[2] = base[2] * shade
  into[3] = gloss
}

function blend(into: Float64Array, over: Colour, cover: number, gloss: number): void {
  into[0] = (into[0] ?? 0) * (1 - cover) + over[0] * cover
  into[1] = (into[1] ?? 0) * (1 - cover) + over[1] * cover
  into[2] = (into[2] ?? 0) * (1 - cover) + over[2] * cover
  into[3] = (into[3] ?? 0) * (1 - cover) + gloss * cover
}

/** White product of zinc or aluminium stands in patches where this is high. */
function whiteProduct(canvas: Canvas, chance: Chance, lumpMm: number): Float32Array {
  return noisePlane(canvas, noiseOf(chance, lumpMm))
}

function zincSurface(canvas: Canvas, chance: Chance, bright: boolean): Surface {
  const base = bright ? zinc.bright : zinc.weathered
  const contrast = bright ? chance.between(0.12, 0.24) : chance.between(0.03, 0.09)
  const texelsPerMm = 32 / chance.between(5, 14)
  const crystal = laidTile(chance, spangles.shade, texelsPerMm, texelsPerMm)
  const shades = noisePlane(canvas, crystal)
  const seams = noisePlane(canvas, { ...crystal, tile: spangles.inside })
  const cloud = noisePlane(canvas, noiseOf(chance, 60, softNoise))
  const fine = noisePlane(canvas, noiseOf(chance, 3, grainNoise))
  const product = whiteProduct(canvas, chance, chance.between(15, 50))
  const productFrom = chance.happens(0.45) ? chance.between(0.7, 1.6) : 9
  return (at, into) => {
    const shade = 1 + contrast * ((shades[at] ?? 0) - 0.35 * (1 - (seams[at] ?? 0))) + 0.05 * (cloud[at] ?? 0) + 0.025 * (fine[at] ?? 0)
    dye(into, base, shade, bright ? 0.35 : 0.12)
    const white = ramp(productFrom, productFrom + 0.7, product[at] ?? 0)
    if (white > 0) blend(into, zinc.white, white * 0.75, 0.02)
  }
}

const dustColour: Colour = [0.45, 0.43, 0.4]

function paintSurface(canvas: Canvas, chance: Chance, shades: readonly Colour[]): Surface {
  const base = chance.pick(shades)
  const age = chance.next()
  const chalk = noisePlane(canvas, noiseOf(chance, 80, softNoise))
  const peel = noisePlane(canvas, noiseOf(chance, 4, grainNoise))
  const scuff = noisePlane(canvas, noiseOf(chance, 25))
  const scratches = noisePlane(canvas, laidTile(chance, brushed, 1.6, 7))
  const dust = chance.between(0, 0.1)
  return (at, into) => {
    dye(into, base, 1 + 0.06 * age * (chalk[at] ?? 0) + 0.025 * (peel[at] ?? 0), 0.3 * (1 - 0.7 * age))
    const cover = dust * ramp(-1, 2, scuff[at] ?? 0) + age * 0.05 + 0.3 * ramp(2.4, 3.2, scratches[at] ?? 0)
    blend(into, dustColour, Math.min(0.4, cover), 0.02)
  }
}

function aluminiumSurface(canvas: Canvas, chance: Chance): Surface {
  const strength = chance.between(0.03, 0.09)
  const upright = chance.happens(0.3)
  const along = laidTile(chance, brushed, 2, 5)
  const lines = noisePlane(canvas, upright ? { ...along, acrossX: 0, acrossY: 2, downX: 5, downY: 0 } : along)
  const cloud = noisePlane(canvas, noiseOf(chance, 70, softNoise))
  const oxide = whiteProduct(canvas, chance, 12)
  const oxideFrom = chance.between(1.2, 4)
  return (at, into) => {
    dye(into, aluminium.bare, 0.82 + strength * (lines[at] ?? 0) + 0.05 * (cloud[at] ?? 0), 0.4)
    const white = ramp(oxideFrom, oxideFrom + 0.6, oxide[at] ?? 0)
    if (white > 0) blend(into, aluminium.oxide, white * 0.7, 0.02)
  }
}

export function surfaceOf(ground: Ground, canvas: Canvas, chance: Chance): Surface {
  switch (ground) {
    case 'zinc bright': return zincSurface(canvas, chance, true)
    case 'zinc weathered': return zincSurface(canvas, chance, false)
    case 'painted grey': return paintSurface(canvas, chance, paints.grey)
    case 'painted black': return paintSurface(canvas, chance, paints.black)
    case 'painted white': return paintSurface(canvas, chance, paints.white)
    case 'painted blue': return paintSurface(canvas, chance, paints.blue)
    case 'painted red': return paintSurface(canvas, chance, paints.red)
    case 'painted green': return paintSurface(canvas, chance, paints.green)
    case 'aluminium': return aluminiumSurface(canvas, chance)
    default: return assertNever(ground)
  }
}
