import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { decode } from '../../../main/photos/decoder'
import { makePreviews } from '../../../main/photos/previews'
import { twelveMegapixels } from '../../bench/twelve-megapixels'

describe('a photograph of 12 MP with the detail of a rough surface', () => {
  test('weighs between 100 and 140 kB at 1600 px and stays true to its pixels', async () => {
    const pixels = await decode(await twelveMegapixels(11), 'rough.jpg')
    const { large } = await makePreviews(pixels)
    expect(large.byteLength).toBeGreaterThan(100_000)
    expect(large.byteLength).toBeLessThan(140_000)
    const shown = await sharp(large).raw().toBuffer()
    let squares = 0
    for (let i = 0; i < shown.byteLength; i++) squares += ((shown[i] ?? 0) - (pixels.data[i] ?? 0)) ** 2
    const decibel = 10 * Math.log10(255 ** 2 / (squares / shown.byteLength))
    expect(decibel).toBeGreaterThan(32)
  }, 60_000)
})

test('a calm picture is kept at high quality and is small all the same', async () => {
  const calm = await sharp({ create: { width: 2400, height: 1800, channels: 3, background: '#8a8f94' } }).blur(3).jpeg({ quality: 95 }).toBuffer()
  expect((await makePreviews(await decode(calm, 'calm.jpg'))).large.byteLength).toBeLessThan(40_000)
})
