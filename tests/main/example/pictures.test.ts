import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { load } from 'exifreader'
import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { assetsFolder } from '../../../main/assets-folder'
import { pictures } from '../../../main/example/pictures'
import { tandemScript } from '../../../main/example/scripts'
import { answerAt } from '../../../main/example/walk'
import { catalogue, checkOf } from '../../../shared-logic/checks/catalogue'
import { askedChecks } from '../../../shared-logic/survey/assess'
import { placeKey } from '../../../shared-logic/survey/keys'

const folder = join(assetsFolder(), 'example')
const asked = new Set(askedChecks(catalogue, tandemScript).map(({ check, position }) => placeKey(check.id, position)))

describe.each(pictures)('$file', (picture) => {
  test('is a JPEG of 1600 x 1200 px that carries the time it is listed with', async () => {
    const bytes = await readFile(join(folder, picture.file))
    expect(await sharp(bytes).metadata()).toMatchObject({ format: 'jpeg', width: 1600, height: 1200 })
    const { exif } = load(bytes, { expanded: true })
    const written = `${exif?.DateTimeOriginal?.description.replace(':', '-').replace(':', '-').replace(' ', 'T')}${exif?.OffsetTimeOriginal?.description}`
    expect(written).toBe(picture.takenAt)
    expect(picture.takenAt.slice(0, 10)).toBe(tandemScript.surveyDate)
  })

  test('belongs to a check of the finished survey, has a truth and says that it is invented', () => {
    expect(asked.has(placeKey(picture.checkId, picture.position))).toBe(true)
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

test('the rust in the picture is the first spot on the cross-members', () => {
  const truth = pictures.find((each) => each.file === 'rust-spot.jpg')?.truth.areaM2
  const spots = tandemScript.answers['frame.corrosion @ cross-members']?.values.spots
  expect(Array.isArray(spots) && spots[0]?.areaM2).toBe(truth)
})

test('at least 12 pictures, each listed once, none left over, together under 3 MB', async () => {
  const files = (await readdir(folder)).filter((name) => name.endsWith('.jpg'))
  expect(files.length).toBeGreaterThanOrEqual(12)
  expect(files.toSorted()).toEqual(pictures.map((picture) => picture.file).toSorted())
  const sizes = await Promise.all(files.map(async (name) => (await readFile(join(folder, name))).byteLength))
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(3_000_000)
})
