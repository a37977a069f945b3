import { load } from 'exifreader'
import { expect, test } from 'vitest'
import { openShelf, type Original } from '../../../main/photos/shelf'
import { plain } from './pictures'
import { emptyFolder } from './shelf-folder'

const now = () => new Date('2026-11-25T12:00:00Z')
type Tags = Parameters<ReturnType<typeof plain>['withExif']>[0]

const withTags = (tags: Tags): Promise<Buffer> => plain().withExif(tags).jpeg().toBuffer()
const takeWith = async (tags: Tags): Promise<Original> => openShelf(await emptyFolder(), now).take(await withTags(tags), 'strap.jpg')

const place = { GPSLatitudeRef: 'N', GPSLatitude: '53/1 30/1 3600/100', GPSLongitudeRef: 'W', GPSLongitude: '4/1 15/1 0/1' }

test('time with offset and place are read from the file', async () => {
  const taken = await takeWith({ IFD2: { DateTimeOriginal: '2026:05:03 09:15:27', OffsetTimeOriginal: '+02:00' }, IFD3: place })
  expect(taken.takenAt).toBe('2026-05-03T09:15:27+02:00')
  expect(taken.latitude).toBeCloseTo(53.51, 6)
  expect(taken.longitude).toBeCloseTo(-4.25, 6)
})

test('a time without offset stays local', async () => {
  expect((await takeWith({ IFD2: { DateTimeOriginal: '2026:05:03 09:15:27' } })).takenAt).toBe('2026-05-03T09:15:27')
})

test.each([
  ['no date', '0000:00:00 00:00:00'],
  ['30 February', '2026:02:30 10:00:00'],
  ['before there were such cameras', '1970:01:01 00:00:00'],
  ['more than a day ahead of today', '2026:11:27 10:00:00'],
  ['words', 'last Tuesday, early'],
])('an absurd time is dropped: %s', async (_, written) => {
  expect((await takeWith({ IFD2: { DateTimeOriginal: written } })).takenAt).toBeUndefined()
})

test.each([
  ['north of the pole', { ...place, GPSLatitude: '120/1 0/1 0/1' }],
  ['exactly 0, 0, as written without a fix', { ...place, GPSLatitude: '0/1 0/1 0/1', GPSLongitude: '0/1 0/1 0/1' }],
  ['latitude alone', { GPSLatitudeRef: 'N', GPSLatitude: '53/1 30/1 0/1' }],
  ['divided by nothing', { ...place, GPSLatitude: '53/0 30/0 0/0' }],
])('an absurd place is dropped: %s', async (_, tags) => {
  const { latitude, longitude } = await takeWith({ IFD3: tags })
  expect([latitude, longitude]).toEqual([undefined, undefined])
})

test('previews carry neither time nor place nor camera', async () => {
  const shelf = openShelf(await emptyFolder(), now)
  const bytes = await withTags({ IFD0: { Make: 'invented' }, IFD2: { DateTimeOriginal: '2026:05:03 09:15:27' }, IFD3: place })
  const { sha256 } = await shelf.take(bytes, 'strap.jpg')
  for (const size of ['small', 'large'] as const) {
    const preview = Buffer.from((await shelf.read(sha256, size))?.bytes ?? [])
    const { exif, gps } = load(preview, { expanded: true })
    expect([exif, gps]).toEqual([undefined, undefined])
  }
  const { exif } = load(Buffer.from((await shelf.read(sha256, 'original'))?.bytes ?? []), { expanded: true })
  expect(exif?.DateTimeOriginal?.description).toBe('2026:05:03 09:15:27')
})
