/**
 * A colour profile for pictures that say their colours by number instead of by profile (an 'nclx' box).
 * Source of the numbers, primaries and curves: ITU-T H.273, tables 2 and 3.
 */

type Pair = readonly [x: number, y: number]
type Triple = readonly [number, number, number]

const whiteD65: Pair = [0.3127, 0.329]

export interface Primaries {
  readonly red: Pair
  readonly green: Pair
  readonly blue: Pair
}

/** By colour_primaries, all with white D65. */
const primariesByNumber: Readonly<Record<number, Primaries>> = {
  1: { red: [0.64, 0.33], green: [0.3, 0.6], blue: [0.15, 0.06] },
  9: { red: [0.708, 0.292], green: [0.17, 0.797], blue: [0.131, 0.046] },
  12: { red: [0.68, 0.32], green: [0.265, 0.69], blue: [0.15, 0.06] },
}

const srgbCurve = (signal: number): number => (signal <= 0.040_45 ? signal / 12.92 : ((signal + 0.055) / 1.055) ** 2.4)

/** SMPTE ST 2084, as light against diffuse white of 203 cd/m² (ITU-R BT.2408, table 1); brighter light is cut off. */
const perceptualQuantizer = (signal: number): number => {
  const [m1, m2, c1, c2, c3] = [2610 / 16_384, (2523 / 4096) * 128, 3424 / 4096, (2413 / 4096) * 32, (2392 / 4096) * 32]
  const root = signal ** (1 / m2)
  return (10_000 * (Math.max(0, root - c1) / (c2 - c3 * root)) ** (1 / m1)) / 203
}

/** ITU-R BT.2100, table 5, the scene's light; diffuse white stands at three quarters of the signal (BT.2408, table 1). */
const hybridLogGamma = (signal: number): number => {
  const [a, b, c] = [0.178_832_77, 0.284_668_92, 0.559_910_73]
  const lightOf = (at: number): number => (at <= 0.5 ? at ** 2 / 3 : (Math.exp((at - c) / a) + b) / 12)
  return lightOf(signal) / lightOf(0.75)
}

/** By transfer_characteristics. Those of television (1, 6, 14, 15) are shown like sRGB: common practice, no source. */
const curvesByNumber: Readonly<Record<number, (signal: number) => number>> = {
  4: (signal) => signal ** 2.2,
  5: (signal) => signal ** 2.8,
  8: (signal) => signal,
  16: perceptualQuantizer,
  18: hybridLogGamma,
}

const light = ([x, y]: Pair): Triple => [x / y, 1, (1 - x - y) / y]

/** Rows. */
type Matrix = readonly [Triple, Triple, Triple]

const times = (matrix: Matrix, [a, b, c]: Triple): Triple => {
  const row = ([p, q, r]: Triple): number => p * a + q * b + r * c
  return [row(matrix[0]), row(matrix[1]), row(matrix[2])]
}

const cross = ([a, b, c]: Triple, [d, e, f]: Triple): Triple => [b * f - c * e, c * d - a * f, a * e - b * d]
const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]

/** How much of each of three lights makes the wanted one: Cramer's rule. */
const sharesOf = (wanted: Triple, a: Triple, b: Triple, c: Triple): Triple => {
  const whole = dot(a, cross(b, c))
  return [dot(wanted, cross(b, c)) / whole, dot(a, cross(wanted, c)) / whole, dot(a, cross(b, wanted)) / whole]
}

/** White D65 turned to the profile's D50 by linear Bradford, ICC.1:2010, annex E.3; the figures are those of the imaging library's own profiles. */
const bradfordD65ToD50: Matrix = [
  [1.047_886, 0.022_919, -0.050_216],
  [0.029_582, 0.990_484, -0.017_079],
  [-0.009_252, 0.015_073, 0.751_678],
]

/** The three colorants of a profile, D50. */
export const colorantsOf = ({ red, green, blue }: Primaries): readonly Triple[] => {
  const lights = [light(red), light(green), light(blue)] as const
  const shares = sharesOf(light(whiteD65), ...lights)
  return lights.map(([x, y, z], index) => {
    const share = shares[index] ?? 0
    return times(bradfordD65ToD50, [x * share, y * share, z * share])
  })
}

const curvePoints = 4096
const headerBytes = 128
const d50: Triple = [0.9642, 1, 0.8249]

const fixed = (bytes: Buffer, value: number, at: number): void => void bytes.writeInt32BE(Math.round(value * 65_536), at)

const xyzTag = (values: Triple): Buffer => {
  const tag = Buffer.alloc(20)
  tag.write('XYZ ', 0, 'latin1')
  for (const [index, value] of values.entries()) fixed(tag, value, 8 + index * 4)
  return tag
}

const curveTag = (curve: (signal: number) => number): Buffer => {
  const tag = Buffer.alloc(12 + curvePoints * 2)
  tag.write('curv', 0, 'latin1')
  tag.writeUInt32BE(curvePoints, 8)
  for (let point = 0; point < curvePoints; point += 1) tag.writeUInt16BE(Math.round(Math.min(1, curve(point / (curvePoints - 1))) * 65_535), 12 + point * 2)
  return tag
}

const headerOf = (byteCount: number): Buffer => {
  const header = Buffer.alloc(headerBytes)
  header.writeUInt32BE(byteCount, 0)
  header.writeUInt32BE(0x0240_0000, 8)
  header.write('mntrRGB XYZ ', 12, 'latin1')
  header.write('acsp', 36, 'latin1')
  for (const [index, value] of d50.entries()) fixed(header, value, 68 + index * 4)
  return header
}

/** A display profile of three colorants and one curve, for the imaging library alone: it is written into no file. Source: ICC.1:2010, 7 and 10. */
export const profileFrom = (primaries: Primaries, curve: (signal: number) => number): Buffer => {
  const colorants = colorantsOf(primaries).map(xyzTag)
  const bodies = [xyzTag(d50), ...colorants, curveTag(curve)]
  const names = [['wtpt', 0], ['rXYZ', 1], ['gXYZ', 2], ['bXYZ', 3], ['rTRC', 4], ['gTRC', 4], ['bTRC', 4]] as const
  const table = Buffer.alloc(4 + names.length * 12)
  table.writeUInt32BE(names.length, 0)
  const starts = bodies.map((_, index) => headerBytes + table.byteLength + bodies.slice(0, index).reduce((sum, body) => sum + body.byteLength, 0))
  for (const [index, [name, body]] of names.entries()) {
    table.write(name, 4 + index * 12, 'latin1')
    table.writeUInt32BE(starts[body] ?? 0, 8 + index * 12)
    table.writeUInt32BE(bodies[body]?.byteLength ?? 0, 12 + index * 12)
  }
  const rest = [table, ...bodies]
  return Buffer.concat([headerOf(headerBytes + rest.reduce((sum, part) => sum + part.byteLength, 0)), ...rest])
}

/** The profile for these numbers; undefined where the picture is sRGB already or the numbers say nothing we know. */
export const profileOfNumbers = (primaries: number | undefined, transfer: number | undefined): Buffer | undefined => {
  const known = primariesByNumber[primaries ?? 0]
  const curve = curvesByNumber[transfer ?? 0]
  if (curve === undefined && (known === undefined || primaries === 1)) return undefined
  return profileFrom(known ?? { red: [0.64, 0.33], green: [0.3, 0.6], blue: [0.15, 0.06] }, curve ?? srgbCurve)
}

/** No longer than this, whatever the numbers. */
export const longestProfileBytes = 10_000
