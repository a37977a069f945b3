import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { openShelf } from '../../../main/photos/shelf'
import { blue, colourAt, differenceOf, green, grey, quarteredHeightPx, quarteredWidthPx, red, turnedJpeg } from './pictures'
import { emptyFolder } from './shelf-folder'

const quarters = [[0.25, 0.25, red], [0.75, 0.25, green], [0.25, 0.75, blue], [0.75, 0.75, grey]] as const

describe.each([1, 2, 3, 4, 5, 6, 7, 8])('a photograph stored with EXIF orientation %i', (orientation) => {
  test.each(['large', 'small'] as const)('stands upright in the %s preview', async (size) => {
    const shelf = openShelf(await emptyFolder())
    const taken = await shelf.take(await turnedJpeg(orientation), 'turned.jpg')
    expect([taken.widthPx, taken.heightPx]).toEqual([quarteredWidthPx, quarteredHeightPx])
    const preview = await shelf.read(taken.sha256, size)
    if (!preview) throw new Error('no preview')
    for (const [across, down, colour] of quarters) expect(differenceOf(await colourAt(preview.bytes, across, down), colour)).toBeLessThan(8)
    const { width, height, orientation: left } = await sharp(preview.bytes).metadata()
    expect(width > height).toBe(true)
    expect(left).toBeUndefined()
  })
})

test.each(['png', 'webp', 'tiff', 'avif'] as const)('a %s that is stored on its side stands upright', async (format) => {
  const bytes = await sharp(await turnedJpeg(6)).keepMetadata()[format]().toBuffer()
  const shelf = openShelf(await emptyFolder())
  const taken = await shelf.take(bytes, 'turned')
  expect([taken.widthPx, taken.heightPx]).toEqual([quarteredWidthPx, quarteredHeightPx])
  const preview = await shelf.read(taken.sha256, 'large')
  for (const [across, down, colour] of quarters) expect(differenceOf(await colourAt(preview?.bytes ?? new Uint8Array(), across, down), colour)).toBeLessThan(20)
})
