import { type Chance } from './chance'
import { type Colour, colour } from './colours'
import { type Background } from './plan'
import { brushed, fractals, pebbles, readTile, softNoise } from './tiles'

/** What lies behind the member, in px of an 800 px wide picture: it is farther off, so it does not share the member's plane. */
export type Backdrop = (column: number, row: number, into: Float64Array) => void

function even(base: Colour, shade: number, into: Float64Array): void {
  into[0] = base[0] * shade
  into[1] = base[1] * shade
  into[2] = base[2] * shade
  into[3] = 0.02
}

function gravel(chance: Chance): Backdrop {
  const [greyStone, brownStone] = [colour(150, 146, 140), colour(134, 118, 98)]
  const size = chance.between(0.9, 2)
  return (column, row, into) => {
    const [x, y] = [column * size, row * size * 1.4]
    const shade = readTile(pebbles.shade, x, y)
    const inside = readTile(pebbles.inside, x, y)
    even(shade > 0.35 ? brownStone : greyStone, (0.55 + 0.35 * shade + 0.08 * readTile(fractals[0], x * 4, y * 4)) * (0.3 + 0.7 * inside), into)
  }
}

function grained(base: Colour, coarse: number, fine: number): Backdrop {
  return (column, row, into) => {
    even(base, Math.max(0.1, 1 + coarse * readTile(softNoise, column * 0.7, row * 0.9) + fine * readTile(fractals[2], column * 9, row * 9)), into)
  }
}

function grass(): Backdrop {
  const [fresh, dry] = [colour(86, 118, 48), colour(146, 138, 84)]
  return (column, row, into) => {
    const blade = readTile(brushed, row * 3.1 + 20 * readTile(softNoise, column, row), column * 1.3)
    const dead = Math.min(1, Math.max(0, 0.25 + 0.3 * readTile(fractals[1], column * 2, row * 2)))
    const shade = Math.max(0.15, 0.8 + 0.35 * blade)
    for (let i = 0; i < 3; i += 1) into[i] = ((fresh[i] ?? 0) * (1 - dead) + (dry[i] ?? 0) * dead) * shade
    into[3] = 0.02
  }
}

function water(): Backdrop {
  const base = colour(70, 96, 108)
  return (column, row, into) => {
    even(base, Math.max(0.3, 1 + 0.4 * readTile(softNoise, column * 0.8, row * 5)), into)
    into[3] = 0.5
  }
}

function hull(chance: Chance): Backdrop {
  const base = chance.pick([colour(232, 232, 228), colour(32, 56, 104), colour(120, 30, 36)])
  const slope = chance.between(-0.5, 0.5)
  return (column, row, into) => {
    even(base, 0.75 + 0.0004 * row + slope * 0.0005 * column + 0.015 * readTile(softNoise, column, row), into)
    into[3] = 0.25
  }
}

export function backdropOf(background: Background, chance: Chance): Backdrop {
  switch (background) {
    case 'gravel': return gravel(chance)
    case 'asphalt': return grained(colour(84, 84, 86), 0.1, 0.22)
    case 'grass': return grass()
    case 'water': return water()
    case 'concrete': return grained(colour(172, 168, 160), 0.08, 0.07)
    case 'hull': return hull(chance)
  }
}
