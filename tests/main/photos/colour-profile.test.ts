import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { longestProfileBytes, profileOfNumbers } from '../../../main/photos/colour-profile'
import { tiffHeadBytes, tiffTailBytes, wrapInTiff } from '../../../main/photos/raw-tiff'
import { plain } from './pictures'

/** The colorants of an ICC profile. Source of the layout: ICC.1:2010, 7.3 and 10.31. */
const colorantsIn = (profile: Buffer): number[][] =>
  ['rXYZ', 'gXYZ', 'bXYZ'].map((name) => {
    const row = profile.indexOf(name, 132, 'latin1')
    const at = profile.readUInt32BE(row + 4) + 8
    return [0, 4, 8].map((step) => profile.readInt32BE(at + step) / 65_536)
  })

const profileFor = (primaries: number, transfer: number): Buffer => {
  const profile = profileOfNumbers(primaries, transfer)
  if (!profile) throw new Error('no profile')
  return profile
}

const expectClose = (found: number[][], wanted: number[][], within: number): void => {
  for (const [row, values] of wanted.entries()) for (const [column, value] of values.entries()) expect(Math.abs((found[row]?.[column] ?? Number.NaN) - value)).toBeLessThan(within)
}

describe('the profile made from numbers', () => {
  test('has the colorants of Display P3 as the imaging library’s own profile has them', async () => {
    const { icc } = await sharp(await plain().withIccProfile('p3').png().toBuffer()).metadata()
    // That one has cut off the little that Display P3's red has below nought in Z, 0.001.
    expectClose(colorantsIn(profileFor(12, 13)), colorantsIn(icc ?? Buffer.alloc(0)), 0.0012)
  })

  test('has the colorants of BT.2020', () => {
    // Source: the matrix from BT.2020 to XYZ D65 of ITU-R BT.2020 (0.6370, 0.1446, 0.1689 …), turned to D50 by linear Bradford; from memory, to three figures.
    expectClose(colorantsIn(profileFor(9, 13)), [[0.673, 0.279, -0.002], [0.166, 0.675, 0.03], [0.125, 0.046, 0.797]], 0.002)
  })

  test('is left out where the picture is sRGB, or says nothing that is known', () => {
    for (const [primaries, transfer] of [[1, 13], [1, 1], [2, 2], [undefined, undefined], [22, 99]] as const) expect(profileOfNumbers(primaries, transfer)).toBeUndefined()
  })

  test('never outgrows the room left for it', () => {
    for (const primaries of [1, 9, 12]) for (const transfer of [4, 5, 8, 13, 16, 18]) expect(profileOfNumbers(primaries, transfer)?.byteLength ?? 0).toBeLessThanOrEqual(longestProfileBytes)
  })
})

/** A grey of 16 bits through the profile for these numbers, as it stands in sRGB of 8 bits. */
const shown = async (signal: number, primaries: number, transfer: number): Promise<number> => {
  const [width, height, channels] = [4, 4, 3]
  const profile = profileFor(primaries, transfer)
  const data = new Uint8Array(tiffHeadBytes + width * height * channels * 2 + tiffTailBytes(profile.byteLength))
  new Uint16Array(data.buffer, tiffHeadBytes, width * height * channels).fill(Math.round(signal * 65_535))
  const pixels = await sharp(wrapInTiff({ width, height, channels, depthBits: 16, data }, profile)).toColourspace('srgb').raw({ depth: 'uchar' }).toBuffer()
  return pixels[0] ?? -1
}

/** Source: IEC 61966-2-1, the curve of sRGB. */
const srgbOf = (light: number): number => 255 * (light <= 0.003_130_8 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055)

describe('light through the curves', () => {
  test.each([
    // Source: ITU-R BT.2408, table 1: diffuse white of 203 cd/m² stands at 58 % of PQ and 75 % of HLG; an 18 % grey card, 26 cd/m², at 38 % of both.
    ['PQ, a grey card of 26 cd/m²', 0.38, 16, 26 / 203],
    ['HLG, diffuse white', 0.75, 18, 1],
    // Source: ITU-R BT.2100, table 5: half the signal is a twelfth of the full light, three quarters 0.2650 of it.
    ['HLG, half the signal', 0.5, 18, 1 / 12 / 0.265],
    ['linear light', 0.25, 8, 0.25],
    ['a power of 2.2', 0.5, 4, 0.5 ** 2.2],
  ])('%s', async (_, signal, transfer, light) => {
    expect(Math.abs((await shown(signal, 9, transfer)) - srgbOf(light))).toBeLessThan(2.5)
  })

  test('PQ, diffuse white: where the curve is cut off the imaging library’s own table rounds the corner a little', async () => {
    expect(await shown(0.5807, 9, 16)).toBeGreaterThan(245)
  })

  test('light over diffuse white is white, not wrapped round', async () => {
    expect(await shown(0.9, 9, 16)).toBe(255)
    expect(await shown(1, 9, 18)).toBe(255)
  })
})
