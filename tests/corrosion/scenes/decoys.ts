import type { PixelPoint } from '../../../shared-logic/measuring/measurement'
import { type Canvas, lay, ramp } from './canvas'
import { type Chance } from './chance'
import { type Colour, things } from './colours'
import { dye } from './grounds'
import { type MemberShape } from './member'
import { laidTile, noiseAt, noiseOf } from './noise'
import { type DecoyKind, decoyKinds } from './plan'
import { boxOf, placeOn } from './rust'
import { brushed, grainNoise, outlineNoise, softNoise } from './tiles'
import { through, type View } from './view'

/** A thing that looks like rust and is none: how far inside it a point of the plane lies, mm, and how it looks there. */
interface Thing {
  inside(x: number, y: number): number
  /** Red, green, blue, gloss. */
  paint(x: number, y: number, into: Float64Array): void
  /** No part of it lies farther from its place, mm. */
  readonly reachMm: number
  /** How far it hides what is under it, 1 wholly. */
  readonly thickest?: number
}

/** Distance inside a turned rectangle. */
function boxAt(middle: PixelPoint, halfX: number, halfY: number, angle: number): (x: number, y: number) => number {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  return (x, y) => {
    const dx = x - middle[0]
    const dy = y - middle[1]
    return Math.min(halfX - Math.abs(dx * cos + dy * sin), halfY - Math.abs(dy * cos - dx * sin))
  }
}

type Maker = (place: PixelPoint, acrossMm: number, chance: Chance) => Thing

/** A band across the member, as a bunk lies over it. */
function bunkAt(place: PixelPoint, acrossMm: number, chance: Chance): (x: number, y: number) => number {
  return boxAt(place, acrossMm * chance.between(0.06, 0.13), 9e3, chance.between(-0.12, 0.12))
}

const carpet: Maker = (place, acrossMm, chance) => {
  const base = chance.pick(things.carpet)
  const pitch = (2 * Math.PI) / chance.between(2.2, 3.6)
  const tuft = noiseOf(chance, 1.8, grainNoise)
  const worn = noiseOf(chance, 60, softNoise)
  return {
    reachMm: 9e3,
    inside: bunkAt(place, acrossMm, chance),
    paint: (x, y, into) => {
      const bend = 0.35 * noiseAt(tuft, x, y)
      const weave = Math.sin(x * pitch + bend) * Math.sin(y * pitch + bend)
      dye(into, base, Math.max(0.3, 0.82 + 0.2 * weave + 0.1 * noiseAt(tuft, x, y) + 0.05 * noiseAt(worn, x, y)), 0)
    },
  }
}

const wood: Maker = (place, acrossMm, chance) => {
  const base = chance.pick(things.wood)
  const bend = noiseOf(chance, 90, softNoise)
  const grain = laidTile(chance, brushed, 1, 1)
  return {
    reachMm: 9e3,
    inside: bunkAt(place, acrossMm, chance),
    paint: (x, y, into) => dye(into, base, 0.85 + 0.1 * noiseAt(grain, y * 1.2, x * 3 + 12 * noiseAt(bend, x, y)) + 0.08 * Math.sin(x * 0.9 + 4 * noiseAt(bend, x, y)), 0.03),
  }
}

function lens(base: Colour, ribMm: number): Maker {
  return (place, acrossMm, chance) => {
    const half = Math.min(38, acrossMm * chance.between(0.05, 0.1))
    const round = chance.happens(0.5)
    const box = boxAt(place, half * 1.5, half * 0.8, chance.between(-0.1, 0.1))
    const pitch = (2 * Math.PI) / ribMm
    return {
      reachMm: half * 1.8,
      inside: round ? (x, y) => half - Math.sqrt((x - place[0]) ** 2 + (y - place[1]) ** 2) : box,
      paint: (x, y, into) => dye(into, base, 0.75 + 0.2 * Math.sin(x * pitch) * Math.cos(y * pitch * 0.6) + 0.2 * ramp(0, half, y - place[1] + half / 2), 0.8),
    }
  }
}

const redPaint: Maker = (place, acrossMm, chance) => {
  const stripe = chance.happens(0.5)
  const base = chance.pick(things.redPaint)
  const chalk = noiseOf(chance, 40, softNoise)
  return {
    reachMm: stripe ? 9e3 : acrossMm * 0.2,
    inside: stripe ? boxAt(place, 9e3, acrossMm * chance.between(0.02, 0.05), chance.between(-0.03, 0.03)) : boxAt(place, acrossMm * chance.between(0.06, 0.14), acrossMm * chance.between(0.05, 0.1), chance.between(-0.5, 0.5)),
    paint: (x, y, into) => dye(into, base, 0.9 + 0.06 * noiseAt(chalk, x, y), 0.25),
  }
}

const leaf: Maker = (place, acrossMm, chance) => {
  const base = chance.pick(things.leaf)
  const long = Math.min(45, acrossMm * chance.between(0.06, 0.12))
  const wide = chance.between(0.35, 0.6)
  const angle = chance.between(0, Math.PI)
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const dry = noiseOf(chance, 20, softNoise)
  return {
    reachMm: long,
    inside: (x, y) => {
      const along = ((x - place[0]) * cos + (y - place[1]) * sin) / long
      const across = Math.abs((y - place[1]) * cos - (x - place[0]) * sin) / (long * wide)
      return long * wide * (1 - along * along - across)
    },
    paint: (x, y, into) => {
      const along = (x - place[0]) * cos + (y - place[1]) * sin
      const across = Math.abs((y - place[1]) * cos - (x - place[0]) * sin)
      const vein = across < long * 0.03 ? 1.25 : 1 + 0.12 * ramp(0.8, 1, Math.sin((along - across * 0.8) * (18 / long)))
      dye(into, base, (0.85 + 0.1 * noiseAt(dry, x, y)) * vein, 0.06)
    },
  }
}

const mud: Maker = (place, acrossMm, chance) => {
  const base = chance.pick(things.mud)
  const radius = acrossMm * chance.between(0.05, 0.12)
  const ragged = noiseOf(chance, radius, outlineNoise[0])
  const fine = noiseOf(chance, 3, grainNoise)
  return {
    reachMm: radius * 2.2,
    inside: (x, y) => radius * (1 - Math.sqrt((x - place[0]) ** 2 + (y - place[1]) ** 2) / radius + 0.3 * noiseAt(ragged, x, y)),
    paint: (x, y, into) => dye(into, base, 0.85 + 0.08 * noiseAt(fine, x, y), 0.02),
    thickest: chance.between(0.6, 1),
  }
}

const hand: Maker = (place, acrossMm, chance) => {
  const base = chance.pick(things.skin)
  const radius = Math.min(11, acrossMm * 0.035)
  const angle = chance.between(0.2, Math.PI - 0.2)
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const crease = noiseOf(chance, 6, softNoise)
  const finger = (along: number, across: number, tip: number): number => radius - Math.sqrt(Math.min(0, along - tip) ** 2 + across ** 2)
  const inside = (x: number, y: number): number => {
    const along = (x - place[0]) * cos + (y - place[1]) * sin
    const across = (y - place[1]) * cos - (x - place[0]) * sin
    return Math.max(finger(along, across, 0), finger(along, across - radius * 2.1, radius))
  }
  return { reachMm: 9e3, inside, paint: (x, y, into) => dye(into, base, 0.55 + 0.45 * ramp(0, 0.7, inside(x, y) / radius) + 0.03 * noiseAt(crease, x, y), 0.12) }
}

const makers: Record<Exclude<DecoyKind, 'run-off stain'>, Maker> = {
  'red paint': redPaint, carpet, wood, leaf, mud, hand, 'amber lens': lens(things.amber, 4), 'red reflector': lens(things.reflector, 2.5),
}

/** Lies on the member or crosses it; covers what rust is under it. */
export function paintDecoy(canvas: Canvas, view: View, shape: MemberShape, kind: Exclude<DecoyKind, 'run-off stain'>, chance: Chance): void {
  const place = placeOn(canvas, view, shape, chance, 0)
  const thing = makers[kind](place, canvas.widthPx * canvas.mmPerPx, chance)
  const label = decoyKinds.indexOf(kind) + 1
  const into = new Float64Array(4)
  const soft = canvas.mmPerPx * 0.7
  eachPixelRound(canvas, view, place, thing.reachMm, (at) => {
    const x = canvas.xMm[at] ?? 0
    const y = canvas.yMm[at] ?? 0
    const cover = ramp(-soft, soft, thing.inside(x, y)) * (thing.thickest ?? 1)
    if (cover === 0) return
    thing.paint(x, y, into)
    hide(canvas, at, cover, into[3] ?? 0)
    lay(canvas, at, cover, into[0] ?? 0, into[1] ?? 0, into[2] ?? 0)
    if (cover > 0.5) canvas.decoy[at] = label
  })
}

function hide(canvas: Canvas, at: number, cover: number, gloss: number): void {
  canvas.gloss[at] = (canvas.gloss[at] ?? 0) * (1 - cover) + gloss * cover
  canvas.rust[at] = (canvas.rust[at] ?? 0) * (1 - cover)
  if (cover > 0.5) canvas.decoy[at] = 0
}

function eachPixelRound(canvas: Canvas, view: View, place: PixelPoint, reachMm: number, visit: (at: number) => void): void {
  const everywhere = reachMm > 1e3
  const [fromColumn, toColumn, fromRow, toRow] = everywhere ? [0, canvas.widthPx, 0, canvas.heightPx] : boxOf(canvas, view, place[0], place[1], reachMm + 2 * canvas.mmPerPx)
  for (let row = fromRow; row < toRow; row += 1) visitRow(row * canvas.widthPx + fromColumn, row * canvas.widthPx + toColumn, visit)
}

function visitRow(from: number, to: number, visit: (at: number) => void): void {
  for (let at = from; at < to; at += 1) visit(at)
}

/** Where bolts sit in the picture's part of the face. */
export function boltPlaces(canvas: Canvas, view: View, shape: MemberShape, chance: Chance): PixelPoint[] {
  const left = through(view.toPlane, canvas.widthPx * 0.22, canvas.heightPx / 2)
  const right = through(view.toPlane, canvas.widthPx * 0.78, canvas.heightPx / 2)
  const lift = Math.min(shape.halfHeightMm, canvas.heightPx * canvas.mmPerPx * 0.4) * chance.between(-0.5, 0.5)
  return [[left[0], left[1] + lift], [right[0], right[1] + lift]]
}

/** A hexagon head on its washer, in plain steel, with the shadow it throws. */
export function paintBolt(canvas: Canvas, view: View, place: PixelPoint, radiusMm: number): void {
  const soft = canvas.mmPerPx
  eachPixelRound(canvas, view, place, radiusMm * 2.2, (at) => {
    const dx = (canvas.xMm[at] ?? 0) - place[0]
    const dy = (canvas.yMm[at] ?? 0) - place[1]
    const inHead = radiusMm - Math.max(Math.abs(dx) * 0.866 + Math.abs(dy) * 0.5, Math.abs(dy))
    const head = ramp(-soft, soft, inHead)
    const washer = ramp(-soft, soft, radiusMm * 1.6 - Math.sqrt(dx * dx + dy * dy))
    const shadow = (1 - ramp(radiusMm * 1.2, radiusMm * 1.9, Math.sqrt((dx - radiusMm * 0.15) ** 2 + (dy - radiusMm * 0.25) ** 2))) * 0.6
    lay(canvas, at, shadow * (1 - washer), 0.02, 0.02, 0.02)
    const onWasher = 0.3 - 0.2 * (1 - ramp(0, radiusMm * 0.35, -inHead)) * ramp(-radiusMm, radiusMm, dx + dy)
    lay(canvas, at, washer, onWasher, onWasher * 1.01, onWasher * 1.02)
    const onHead = 0.36 + 0.14 * (1 - ramp(0, radiusMm * 0.18, inHead)) * (dx + dy < 0 ? 1 : -1)
    lay(canvas, at, head, onHead, onHead * 1.01, onHead * 1.02)
    hide(canvas, at, Math.max(head, washer), 0.3)
  })
}
