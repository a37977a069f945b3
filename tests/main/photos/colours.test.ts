import { JpegImage } from 'pdfjs-dist/image_decoders/pdf.image_decoders.mjs'
import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { profileFrom } from '../../../main/photos/colour-profile'
import { decode } from '../../../main/photos/decoder'
import { differenceOf, plain } from './pictures'
import { jpegOfInks } from './jpeg-of-inks'

type Colour = readonly [number, number, number]

/** The colour in the middle of a picture as it is worked with: 8 bits, sRGB, no alpha. */
const decoded = async (bytes: Uint8Array): Promise<Colour> => {
  const { data, raw } = await decode(bytes, 'rig')
  const at = (Math.floor(raw.height / 2) * raw.width + Math.floor(raw.width / 2)) * raw.channels
  expect(raw.channels).toBe(3)
  return [data[at] ?? -1, data[at + 1] ?? -1, data[at + 2] ?? -1]
}

/** Rust, galvanised steel, a warning label, a blue hull, a bunk, a black tyre, a white number plate. */
const colours: readonly Colour[] = [[146, 84, 52], [150, 156, 158], [214, 178, 40], [52, 84, 140], [84, 96, 70], [34, 34, 36], [238, 238, 232]]

type Samples = readonly number[]

/** A picture of one colour with samples of 16 bits, 0 to 65,535. */
const deep = (samples: Samples) => {
  const data = new Uint16Array(20 * 20 * samples.length).map((_, index) => samples[index % samples.length] ?? 0)
  return sharp(data, { raw: { width: 20, height: 20, channels: samples.length === 1 ? 1 : samples.length === 2 ? 2 : 3 } }).toColourspace(samples.length < 3 ? 'grey16' : 'rgb16')
}

describe('sixteen bits a channel become eight: 257 steps of the one are a step of the other', () => {
  test.each(colours)('%i, %i, %i in PNG and in TIFF', async (...colour) => {
    const picture = deep(colour.map((channel) => channel * 257))
    for (const bytes of [await picture.clone().png().toBuffer(), await picture.clone().tiff({ compression: 'lzw' }).toBuffer()]) {
      expect((await sharp(bytes).metadata()).depth).toBe('ushort')
      expect(differenceOf(await decoded(bytes), colour)).toBeLessThanOrEqual(1)
    }
  })
})

describe('grey stays grey', () => {
  test.each([0, 40, 128, 201, 255])('%i, in 8 and 16 bits', async (grey) => {
    const shallow = sharp(Buffer.alloc(400, grey), { raw: { width: 20, height: 20, channels: 1 } }).toColourspace('b-w')
    for (const bytes of [await shallow.clone().png().toBuffer(), await shallow.clone().jpeg({ quality: 100 }).toBuffer(), await shallow.clone().tiff().toBuffer(), await deep([grey * 257]).png().toBuffer()])
      expect(differenceOf(await decoded(bytes), [grey, grey, grey])).toBeLessThanOrEqual(1)
  })

  test('on white where it is see-through: half of 100 over 255 is 178', async () => {
    const shallow = await sharp(Buffer.alloc(800).map((_, index) => (index % 2 === 0 ? 100 : 128)), { raw: { width: 20, height: 20, channels: 2 } }).toColourspace('b-w').png().toBuffer()
    expect(await sharp(shallow).metadata()).toMatchObject({ channels: 2, depth: 'uchar' })
    expect(differenceOf(await decoded(shallow), [177, 177, 177])).toBeLessThanOrEqual(2)
    const deeper = await deep([100 * 257, 128 * 257]).png().toBuffer()
    expect(await sharp(deeper).metadata()).toMatchObject({ channels: 2, depth: 'ushort' })
    expect(differenceOf(await decoded(deeper), [177, 177, 177])).toBeLessThanOrEqual(2)
  })
})

/** A JPEG of one colour with these samples as they are, and a profile laid in as APP2. Source: ICC.1:2010, annex B.4. */
const jpegWithProfile = async (samples: Colour, profile: Buffer): Promise<Buffer> => {
  const jpeg = await plain(samples).jpeg({ quality: 100, chromaSubsampling: '4:4:4' }).toBuffer()
  const head = Buffer.from([0xff, 0xe2, 0, 0])
  head.writeUInt16BE(profile.byteLength + 16, 2)
  return Buffer.concat([jpeg.subarray(0, 2), head, Buffer.from('ICC_PROFILE\0\u0001\u0001', 'latin1'), profile, jpeg.subarray(2)])
}

const linear = (channel: number): number => (channel <= 0.040_45 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4)
const times = (matrix: readonly Samples[], light: Samples): number[] => matrix.map((row) => row.reduce((sum, factor, index) => sum + factor * (light[index] ?? 0), 0))
/** Source: IEC 61966-2-1: sRGB to XYZ, D65. */
const fromSrgb = [[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]] as const

/** The samples that show an sRGB colour in another space: its matrix from XYZ D65, and its curve. */
const samplesFor = (colour: Colour, fromXyz: readonly Samples[], curve: (light: number) => number): Colour => {
  const [r = 0, g = 0, b = 0] = times(fromXyz, times(fromSrgb, colour.map((channel) => linear(channel / 255)))).map((light) => Math.round(255 * curve(Math.max(0, light))))
  return [r, g, b]
}

describe('a wide gamut is turned to sRGB by its profile', () => {
  // Source: Adobe RGB (1998) Color Image Encoding, version 2005-05, 4.3.1.1 (primaries), 4.3.4.2 (power 2.199 218 75) and 4.3.6.1 (matrix).
  const adobeFromXyz = [[2.041_59, -0.565_01, -0.344_73], [-0.969_24, 1.875_97, 0.041_56], [0.013_44, -0.118_36, 1.015_17]] as const
  const power = 563 / 256
  test.each(colours)('%i, %i, %i in Adobe RGB (1998)', async (...colour) => {
    const profile = profileFrom({ red: [0.64, 0.33], green: [0.21, 0.71], blue: [0.15, 0.06] }, (signal) => signal ** power)
    const bytes = await jpegWithProfile(samplesFor(colour, adobeFromXyz, (light) => light ** (1 / power)), profile)
    expect(differenceOf(await decoded(bytes), colour)).toBeLessThanOrEqual(4)
  })

  // Source: SMPTE EG 432-1 (primaries, white D65); the matrix as CSS Color Module Level 4 prints it; the curve is that of sRGB.
  const p3FromXyz = [[2.493_497, -0.931_384, -0.402_711], [-0.829_489, 1.762_664, 0.023_625], [0.035_846, -0.076_172, 0.956_885]] as const
  test.each(colours)('%i, %i, %i in Display P3', async (...colour) => {
    const { icc } = await sharp(await plain().withIccProfile('p3').png().toBuffer()).metadata()
    const bytes = await jpegWithProfile(samplesFor(colour, p3FromXyz, (light) => (light <= 0.003_130_8 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055)), icc ?? Buffer.alloc(0))
    expect(differenceOf(await decoded(bytes), colour)).toBeLessThanOrEqual(4)
  })

  test('what is outside sRGB comes out at its border, not wrapped round', async () => {
    const { icc } = await sharp(await plain().withIccProfile('p3').png().toBuffer()).metadata()
    const [red, green, blue] = await decoded(await jpegWithProfile([250, 20, 20], icc ?? Buffer.alloc(0)))
    expect(red).toBe(255)
    expect(Math.max(green, blue)).toBeLessThan(25)
  })
})

/** How an independent library, Mozilla's pdf.js, shows a JPEG of four inks. */
const shownByPdfJs = (jpeg: Buffer): Colour => {
  const image = new JpegImage()
  image.parse(new Uint8Array(jpeg))
  const [r = -1, g = -1, b = -1] = image.getData({ width: image.width, height: image.height, forceRGB: true, isSourcePDF: false })
  return [r, g, b]
}

describe('four inks', () => {
  // Without a profile there is no one right colour: both libraries take ordinary offset printing for it, pdf.js by a polynomial that strays most at full inks.
  const full = 65
  const mixed = 35
  const layouts = ['bare', 'marked', 'marked, lightness and colour'] as const
  test.each([
    ['bare paper', [0, 0, 0, 0], 3], ['rust', [70, 170, 200, 60], mixed], ['steel', [90, 70, 70, 40], mixed], ['half grey', [0, 0, 0, 128], mixed], ['black alone', [0, 0, 0, 255], full],
    ['cyan', [255, 0, 0, 0], full], ['magenta', [0, 255, 0, 0], full], ['yellow', [0, 0, 255, 0], full], ['red', [0, 255, 255, 0], full], ['green', [255, 0, 255, 0], full], ['blue', [255, 255, 0, 0], full],
  ] as const)('%s without a profile shows as pdf.js shows it, however its samples stand in the file', async (_, inks, within) => {
    const marked = await decoded(jpegOfInks(inks, 'marked'))
    for (const layout of layouts) {
      const jpeg = jpegOfInks(inks, layout)
      expect((await sharp(jpeg).metadata()).space).toBe('cmyk')
      const shown = await decoded(jpeg)
      expect(differenceOf(shown, marked), layout).toBeLessThanOrEqual(3)
      expect(differenceOf(shown, shownByPdfJs(jpeg)), layout).toBeLessThanOrEqual(within)
    }
  })

  // In by the profile and out by it, both made for printing: what ink cannot show is drawn in a little.
  test.each(colours)('%i, %i, %i with its profile comes back as it was', async (...colour) => {
    const bytes = await plain(colour).withIccProfile('cmyk').jpeg({ quality: 100 }).toBuffer()
    expect(await sharp(bytes).metadata()).toMatchObject({ space: 'cmyk', hasProfile: true })
    expect(differenceOf(await decoded(bytes), colour)).toBeLessThanOrEqual(30)
  })
})
