import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { load } from 'exifreader'
import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { assetsFolder } from '../../../main/assets-folder'
import { withMeasurement } from '../../../main/example/measured-spots'
import { pictures, picturesBefore } from '../../../main/example/pictures'
import { tandemBeforeScript, tandemScript } from '../../../main/example/scripts'
import { spotsBefore, spotsNow } from '../../../main/example/tandem-spots'
import { foundOn } from '../../../main/photos/outline-rings'
import { answerAt } from '../../../main/example/walk'
import { measuredArea, type MeasurementGiven } from '../../../shared-logic/measuring/area'
import { catalogue, checkOf } from '../../../shared-logic/checks/catalogue'
import { askedChecks } from '../../../shared-logic/survey/assess'
import { placeKey } from '../../../shared-logic/survey/keys'

const folder = join(assetsFolder(), 'example')
const every = [...pictures.map((picture) => ({ ...picture, script: tandemScript })), ...picturesBefore.map((picture) => ({ ...picture, script: tandemBeforeScript }))]

describe.each(every)('$file', ({ script, ...picture }) => {
  test('is a JPEG of 1600 x 1200 px that carries the time it is listed with', async () => {
    const bytes = await readFile(join(folder, picture.file))
    expect(await sharp(bytes).metadata()).toMatchObject({ format: 'jpeg', width: 1600, height: 1200 })
    const { exif } = load(bytes, { expanded: true })
    const written = `${exif?.DateTimeOriginal?.description.replace(':', '-').replace(':', '-').replace(' ', 'T')}${exif?.OffsetTimeOriginal?.description}`
    expect(written).toBe(picture.takenAt)
    expect(picture.takenAt.slice(0, 10)).toBe(script.surveyDate)
  })

  test('belongs to a check of its survey, has a truth and says that it is invented', () => {
    const asked = askedChecks(catalogue, script).map(({ check, position }) => placeKey(check.id, position))
    expect(asked).toContain(placeKey(picture.checkId, picture.position))
    expect(Object.keys(picture.truth).length).toBeGreaterThan(0)
    expect(picture.caption).toMatch(/Illustration, invented\.$/)
  })
})

/** Where a picture's truth is a figure, the surveyor recorded the same figure. */
test.each([
  ['strap-frayed.jpg', 'damageM', 'length'],
  ['strap-frayed.jpg', 'strapWidthM', 'width'],
  ['strap-cut.jpg', 'damageM', 'length'],
  ['sight-glass-low.jpg', 'oilLevel', 'level'],
  ['tyre-tread.jpg', 'treadDepthM', 'depth'],
  ['tyre-date-code.jpg', 'dateCode', 'date'],
  ['brake-pad.jpg', 'liningM', 'thickness'],
  ['actuator-travel.jpg', 'travelM', 'travel'],
])('%s was drawn with the %s that was recorded as %s', (file, truth, field) => {
  const picture = pictures.find((each) => each.file === file)
  const check = picture && checkOf(picture.checkId)
  if (!picture || !check) throw new Error('no such picture')
  expect(answerAt(tandemScript, check, picture.position).values[field]).toBe(picture.truth[truth])
})

test.each([
  ['rust-spot.jpg', spotsNow], ['rust-spot-before.jpg', spotsBefore],
])('the rust of %s, measured by its rule, is the rust it was drawn with, within what the measurement says', async (file, spots) => {
  const truthM2 = Number(every.find((each) => each.file === file)?.truth.areaM2)
  const [spot] = spots['cross-members']
  if (spot?.areaM2 === undefined || spot.areaUncertaintyM2 === undefined) throw new Error('it is not measured')
  expect(Math.abs(spot.areaM2 - truthM2)).toBeLessThan(spot.areaUncertaintyM2)
  // And found by its colour alone.
  const { scale } = withMeasurement(spot, () => '').measurement ?? {}
  if (scale === undefined) throw new Error('it has no scale')
  const given: MeasurementGiven = { widthPx: 1600, heightPx: 1200, scale, outline: { by: 'finder', finder: 'rust 1', sensitivity: 0.5, strokes: [] } }
  const bytes = await readFile(join(folder, file))
  const found = measuredArea(given, await foundOn(bytes, given))
  expect(Math.abs(found.areaM2 / truthM2 - 1)).toBeLessThan(0.15)
}, 60_000)

test('at least 12 pictures, each listed once, none left over, together under 3 MB', async () => {
  const files = (await readdir(folder)).filter((name) => name.endsWith('.jpg'))
  expect(files.length).toBeGreaterThanOrEqual(12)
  expect(files.toSorted()).toEqual(every.map((picture) => picture.file).toSorted())
  const sizes = await Promise.all(files.map(async (name) => (await readFile(join(folder, name))).byteLength))
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(3_000_000)
})
