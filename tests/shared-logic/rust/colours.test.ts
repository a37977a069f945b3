import { describe, expect, it } from 'vitest'
import { boxMean } from '../../../shared-logic/rust/box-mean'
import { colourless } from '../../../shared-logic/rust/colourless'
import { featuresOf, rustMask } from '../../../shared-logic/rust/find-rust'
import { lightColourOf } from '../../../shared-logic/rust/light-colour'
import { likenessOf } from '../../../shared-logic/rust/likeness'
import { linearOfByte, logOfLight } from '../../../shared-logic/rust/linear-light'
import { planesOf } from '../../../shared-logic/rust/planes'
import { pixelCount } from '../../../shared-logic/measuring/mask'
import type { Pixels } from '../../../shared-logic/measuring/pixels'

type Colour = readonly [number, number, number]

const likenessOfColour = ([red, green, blue]: Colour): number => {
  const [r, g, b] = [red, green, blue].map((byte) => logOfLight(linearOfByte[byte] ?? 0))
  return likenessOf((r ?? 0) - (g ?? 0), (g ?? 0) - (b ?? 0))
}

const painted = (width: number, height: number, colourAt: (x: number, y: number) => Colour): Pixels => {
  const data = new Uint8Array(width * height * 4)
  for (let at = 0; at < width * height; at += 1) data.set([...colourAt(at % width, Math.floor(at / width)), 255], at * 4)
  return { width, height, data }
}

describe('single colours', () => {
  it.each<[string, Colour]>([['dark', [92, 51, 23]], ['middling', [150, 70, 32]], ['fresh', [176, 82, 32]]])('%s rust is like rust', (_, colour) => expect(likenessOfColour(colour)).toBeGreaterThan(0.9))
  it.each<[string, Colour]>([
    ['zinc grey', [160, 165, 170]], ['white product', [225, 225, 222]], ['red paint', [200, 30, 30]], ['an amber lens', [255, 140, 0]], ['a wooden bunk', [139, 115, 85]],
    ['tyre black', [30, 28, 27]], ['blue paint', [28, 62, 128]], ['green paint', [30, 84, 58]],
  ])('%s is not', (_, colour) => expect(likenessOfColour(colour)).toBeLessThan(0.1))
})

describe('a picture without colour', () => {
  const pattern = (x: number, y: number): number => (x * 7 + y * 13) % 256
  it('is grey', () => expect(colourless(painted(200, 100, (x, y) => [pattern(x, y), pattern(x, y), pattern(x, y)]))).toBe(true))
  it('is grey with JPEG’s own rounding in it', () => expect(colourless(painted(200, 100, (x, y) => [pattern(x, y), Math.min(255, pattern(x, y) + 5), Math.max(0, pattern(x, y) - 3)]))).toBe(true))
  it('is not one with a rusty spot on bare zinc', () => expect(colourless(painted(200, 100, (x, y) => (x < 20 && y < 20 ? [150, 70, 32] : [160, 162, 164])))).toBe(false))
  it('is brown all over, as an old print or a toned picture is: one hue tells nothing of rust', () => expect(colourless(painted(200, 100, (x, y) => {
    const shade = pattern(x, y) / 255
    return [Math.round(255 * shade ** 0.9), Math.round(225 * shade), Math.round(180 * shade ** 1.1)]
  }))).toBe(true))
})

describe('the light’s own colour', () => {
  it.each([[1, 1], [1.2, 0.8], [0.85, 1.2]])('is read off grey metal under red × %d and blue × %d, within a step of the reading', (byRed, byBlue) => {
    const byte = (light: number): number => linearOfByte.findIndex((value) => value >= light)
    const picture = painted(300, 200, (x, y) => { const light = 0.2 + 0.1 * Math.sin(x / 9) * Math.cos(y / 7); return [byte(light * byRed), byte(light), byte(light * byBlue)] })
    const light = lightColourOf(planesOf(picture), undefined)
    expect(Math.abs(light.redness - Math.log(byRed))).toBeLessThan(0.06)
    expect(Math.abs(light.yellowness + Math.log(byBlue))).toBeLessThan(0.06)
  })
  it('is left alone where there is no grey', () => expect(lightColourOf(planesOf(painted(100, 100, () => [168, 18, 32])), undefined)).toEqual({ redness: 0, yellowness: 0 }))
})

describe('averages over a square', () => {
  it.each([1, 2, 5, 30])('reaching %i px are those of adding up one by one, at the rim too', (reach) => {
    const [width, height] = [23, 17]
    const plane = Float32Array.from({ length: width * height }, (_, at) => ((at * 7919) % 101) / 101)
    const mean = plane.slice()
    boxMean(mean, width, height, reach)
    for (let y = 0; y < height; y += 1) {
      for (let x = 0; x < width; x += 1) {
        let [sum, count] = [0, 0]
        for (let row = Math.max(0, y - reach); row <= Math.min(height - 1, y + reach); row += 1) for (let column = Math.max(0, x - reach); column <= Math.min(width - 1, x + reach); column += 1) { sum += plane[row * width + column] ?? 0; count += 1 }
        expect(mean[y * width + x]).toBeCloseTo(sum / count, 5)
      }
    }
  })
})

describe('the face', () => {
  const mottled = (x: number, y: number): Colour => ((Math.floor(x / 9) * 5 + Math.floor(y / 9) * 3) % 4 < 2 ? [150, 70, 32] : [105, 56, 28])
  const picture = painted(400, 300, (x, y) => (x % 200 > 50 && x % 200 < 150 && y > 100 && y < 200 ? mottled(x, y) : [160, 162, 164]))
  it('bounds where rust is looked for', () => {
    const everywhere = pixelCount(rustMask(featuresOf(picture), 0.5))
    const left = rustMask(featuresOf(picture, [[10, 10], [190, 10], [190, 290], [10, 290]]), 0.5)
    expect(everywhere / (2 * 99 * 99)).toBeCloseTo(1, 1)
    expect(pixelCount(left) / (99 * 99)).toBeCloseTo(1, 1)
    for (let row = 0; row < 300; row += 1) expect(left.data.subarray(row * 400 + 200, (row + 1) * 400).some((value) => value === 1)).toBe(false)
  })
  it('may be darker or tinted: the same spot under half the light, and under warm light, is found alike', () => {
    const seen = (byRed: number, by: number, byBlue: number): number => pixelCount(rustMask(featuresOf({ ...picture, data: picture.data.map((value, at) => (at % 4 === 3 ? 255 : Math.round(value * ([byRed, by, byBlue][at % 4] ?? 1)))) }), 0.5))
    const usual = seen(1, 1, 1)
    expect(seen(0.7, 0.7, 0.7) / usual).toBeCloseTo(1, 1)
    expect(seen(1.06, 1, 0.9) / usual).toBeCloseTo(1, 1)
  })
})

describe('a picture at the full working size', () => {
  it('keeps the border of a spot where it is, though colours are read at half the fineness', () => {
    const picture = painted(1600, 1200, (x, y) => (Math.hypot(x + 0.5 - 801, y + 0.5 - 601) < 200 ? ((Math.floor(x / 18) * 5 + Math.floor(y / 18) * 3) % 4 < 2 ? [150, 70, 32] : [105, 56, 28]) : [160, 162, 164]))
    const found = rustMask(featuresOf(picture), 0.5)
    expect(found.width).toBe(1600)
    expect(pixelCount(found) / (Math.PI * 200 ** 2)).toBeCloseTo(1, 1.7)
    const columns = Array.from({ length: 1600 }, (_, x) => x).filter((x) => found.data[601 * 1600 + x] === 1)
    expect(Math.abs((columns[0] ?? 0) - 601)).toBeLessThanOrEqual(1)
    expect(Math.abs((columns.at(-1) ?? 0) - 1000)).toBeLessThanOrEqual(1)
  })
})
