import { assertNever } from '../../../shared-logic/assert-never'
import { type Chance } from './chance'
import { type Colour, colour } from './colours'
import { dye, type Surface } from './grounds'
import { laidTile, noiseAt, noisePlane, type Points } from './noise'
import { type Background } from './plan'
import { brushed, grainNoise, mottleNoise, pebbles, softNoise } from './tiles'

/** Places in the picture, as if it were 800 px wide: what lies behind is farther off, so it does not share the member's plane. */
export function backdropPoints(widthPx: number, heightPx: number): Points {
  const xMm = new Float32Array(widthPx * heightPx)
  const yMm = new Float32Array(widthPx * heightPx)
  for (let at = 0; at < xMm.length; at += 1) {
    xMm[at] = ((at % widthPx) * 800) / widthPx
    yMm[at] = (Math.floor(at / widthPx) * 800) / widthPx
  }
  return { xMm, yMm }
}

function gravel(points: Points, chance: Chance): Surface {
  const greyStone = colour(150, 146, 140)
  const brownStone = colour(134, 118, 98)
  const size = chance.between(0.9, 2)
  const stones = laidTile(chance, pebbles.shade, size, size * 1.4)
  const shades = noisePlane(points, stones)
  const inside = noisePlane(points, { ...stones, tile: pebbles.inside })
  const rough = noisePlane(points, laidTile(chance, grainNoise, size, size * 1.3))
  return (at, into) => {
    const shade = shades[at] ?? 0
    dye(into, shade > 0.35 ? brownStone : greyStone, (0.55 + 0.35 * shade + 0.08 * (rough[at] ?? 0)) * (0.3 + 0.7 * (inside[at] ?? 0)), 0.02)
  }
}

function grained(points: Points, chance: Chance, base: Colour, coarse: number, fine: number): Surface {
  const lumps = noisePlane(points, laidTile(chance, softNoise, 0.18, 0.22))
  const grains = noisePlane(points, laidTile(chance, grainNoise, 1.7, 1.7))
  return (at, into) => dye(into, base, Math.max(0.1, 1 + coarse * (lumps[at] ?? 0) + fine * (grains[at] ?? 0)), 0.02)
}

function grass(points: Points, chance: Chance): Surface {
  const fresh = colour(86, 118, 48)
  const dry = colour(146, 138, 84)
  const waves = laidTile(chance, softNoise, 0.25, 0.25)
  const blades = laidTile(chance, brushed, 1, 1)
  const patches = noisePlane(points, laidTile(chance, mottleNoise, 0.5, 0.5))
  return (at, into) => {
    const x = points.xMm[at] ?? 0
    const y = points.yMm[at] ?? 0
    const shade = Math.max(0.15, 0.8 + 0.35 * noiseAt(blades, y * 3.1 + 20 * noiseAt(waves, x, y), x * 1.3))
    const dead = Math.min(1, Math.max(0, 0.25 + 0.3 * (patches[at] ?? 0)))
    for (let i = 0; i < 3; i += 1) into[i] = ((fresh[i] ?? 0) * (1 - dead) + (dry[i] ?? 0) * dead) * shade
    into[3] = 0.02
  }
}

function water(points: Points, chance: Chance): Surface {
  const base = colour(70, 96, 108)
  const swell = noisePlane(points, laidTile(chance, softNoise, 0.2, 1.2))
  return (at, into) => dye(into, base, Math.max(0.3, 1 + 0.4 * (swell[at] ?? 0)), 0.5)
}

function hull(points: Points, chance: Chance): Surface {
  const base = chance.pick([colour(232, 232, 228), colour(32, 56, 104), colour(120, 30, 36)])
  const slope = chance.between(-0.0003, 0.0003)
  const uneven = noisePlane(points, laidTile(chance, softNoise, 0.25, 0.25))
  return (at, into) => dye(into, base, 0.75 + 0.0004 * (points.yMm[at] ?? 0) + slope * (points.xMm[at] ?? 0) + 0.015 * (uneven[at] ?? 0), 0.25)
}

export function backdropOf(background: Background, points: Points, chance: Chance): Surface {
  switch (background) {
    case 'gravel': return gravel(points, chance)
    case 'asphalt': return grained(points, chance, colour(84, 84, 86), 0.1, 0.22)
    case 'grass': return grass(points, chance)
    case 'water': return water(points, chance)
    case 'concrete': return grained(points, chance, colour(172, 168, 160), 0.08, 0.07)
    case 'hull': return hull(points, chance)
    default: return assertNever(background)
  }
}
