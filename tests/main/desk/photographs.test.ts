import { existsSync, readFileSync, readdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { ask, newFolder, open, picture, placeWith, refusalOf, sha256, startSurvey } from './yard-on-disk'

const place = placeWith('choice')
const at = { checkId: place.checkId, position: place.position }

const originals = (folder: string): string[] =>
  existsSync(join(folder, 'photographs', 'originals')) ? readdirSync(join(folder, 'photographs', 'originals'), { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.jpg') || name.endsWith('.jpeg')) : []

test('a photograph is kept to the byte, served by its hash, and there after a restart', async () => {
  const folder = newFolder()
  const opened = await open(folder)
  const { id: surveyId } = await startSurvey(opened)
  const bytes = await picture(10)
  const { photograph, alreadyThere } = await ask(opened, 'photographs.add', { surveyId, ...at, fileName: '/cards/1/hub.jpg', caption: 'hub' }, bytes)
  expect(alreadyThere).toBe(false)
  expect(photograph).toMatchObject({ ...at, sha256: sha256(bytes), fileName: 'hub.jpg', caption: 'hub', format: 'jpeg', widthPx: 48, heightPx: 32, byteCount: bytes.byteLength })
  await opened.close()
  const again = await open(folder)
  expect(await again.missingPhotographs()).toEqual([])
  expect((await ask(again, 'surveys.get', { surveyId })).photographs).toEqual([photograph])
  const original = await again.photograph(photograph.sha256, 'original')
  expect(sha256(original?.bytes ?? '')).toBe(photograph.sha256)
  expect((await again.photograph(photograph.sha256, 'small'))?.type).toBe('image/jpeg')
  await again.close()
})

test('the same photograph twice at one check is there once; at another check it stands there too', async () => {
  const folder = newFolder()
  const opened = await open(folder)
  const { id: surveyId } = await startSurvey(opened)
  const bytes = await picture(20)
  const first = await ask(opened, 'photographs.add', { surveyId, ...at, fileName: 'a.jpg' }, bytes)
  const second = await ask(opened, 'photographs.add', { surveyId, ...at, fileName: 'b.jpg' }, bytes)
  expect(second).toEqual({ photograph: first.photograph, alreadyThere: true })
  expect((await ask(opened, 'photographs.add', { surveyId, fileName: 'a.jpg' }, bytes)).alreadyThere).toBe(false)
  expect((await ask(opened, 'surveys.get', { surveyId })).photographs).toHaveLength(2)
  expect(originals(folder)).toHaveLength(1)
  await opened.close()
})

test('a removed photograph can be brought back, and its original is never deleted', async () => {
  const folder = newFolder()
  const opened = await open(folder)
  const { id: surveyId } = await startSurvey(opened)
  const bytes = await picture(30)
  const { photograph } = await ask(opened, 'photographs.add', { surveyId, ...at, fileName: 'a.jpg' }, bytes)
  await ask(opened, 'photographs.remove', { photographId: photograph.id })
  expect((await ask(opened, 'surveys.get', { surveyId })).photographs).toEqual([])
  await opened.close()
  const again = await open(folder)
  await again.missingPhotographs()
  expect(originals(folder)).toHaveLength(1)
  expect((await ask(again, 'photographs.restore', { photographId: photograph.id })).photograph).toEqual(photograph)
  await ask(again, 'photographs.remove', { photographId: photograph.id })
  expect((await ask(again, 'photographs.add', { surveyId, ...at, fileName: 'a.jpg' }, bytes))).toEqual({ photograph, alreadyThere: false })
  await again.close()
})

test('a photograph whose original is taken out of the folder is told as missing, and no other', async () => {
  const folder = newFolder()
  const opened = await open(folder)
  const { id: surveyId } = await startSurvey(opened)
  const { photograph } = await ask(opened, 'photographs.add', { surveyId, ...at, fileName: 'a.jpg' }, await picture(50))
  await ask(opened, 'photographs.add', { surveyId, ...at, fileName: 'b.jpg' }, await picture(60))
  await opened.close()
  const whole = await open(folder)
  expect(await ask(whole, 'photographs.missing', {})).toEqual({ missing: [] })
  await whole.close()
  const [file] = originals(folder).filter((name) => name.includes(photograph.sha256))
  rmSync(join(folder, 'photographs', 'originals', file ?? ''))
  const again = await open(folder)
  expect(await ask(again, 'photographs.missing', {})).toEqual({ missing: [photograph.sha256] })
  await again.close()
})

test('a caption is changed, and one too long is refused', async () => {
  const opened = await open(newFolder())
  const { id: surveyId } = await startSurvey(opened)
  const { photograph } = await ask(opened, 'photographs.add', { surveyId, fileName: 'a.jpg' }, await picture(40))
  expect((await ask(opened, 'photographs.describe', { photographId: photograph.id, caption: 'port side' })).photograph.caption).toBe('port side')
  expect((await refusalOf(opened, 'photographs.describe', { photographId: photograph.id, caption: 'x'.repeat(401) })).code).toBe('field.too-long')
  await opened.close()
})

test.each([
  ['text by the name of a photograph', new TextEncoder().encode('this is not a photograph'), 'photograph.not-a-photograph'],
  ['nothing', new Uint8Array(), 'photograph.empty'],
])('%s is refused by its file’s name, and no row is made', async (_what, bytes, code) => {
  const folder = newFolder()
  const opened = await open(folder)
  const { id: surveyId } = await startSurvey(opened)
  const refused = await refusalOf(opened, 'photographs.add', { surveyId, fileName: 'hub.jpg' }, bytes)
  expect(refused.code).toBe(code)
  expect(refused.sentence).toContain('hub.jpg')
  expect((await ask(opened, 'surveys.get', { surveyId })).photographs).toEqual([])
  expect(originals(folder)).toEqual([])
  await opened.close()
})

test('a photograph goes to a whole place of this rig or to none', async () => {
  const opened = await open(newFolder())
  const { id: surveyId } = await startSurvey(opened)
  const bytes = await picture(50)
  expect((await refusalOf(opened, 'photographs.add', { surveyId, checkId: at.checkId, fileName: 'a.jpg' }, bytes)).code).toBe('field.missing')
  expect((await refusalOf(opened, 'photographs.add', { surveyId, checkId: at.checkId, position: 'axle 9', fileName: 'a.jpg' }, bytes)).code).toBe('answer.not-asked')
  expect((await refusalOf(opened, 'photographs.add', { surveyId, fileName: 'a.jpg' })).code).toBe('photograph.empty')
  await opened.close()
})

test('a hash that no row names is not served', async () => {
  const opened = await open(newFolder())
  expect(await opened.photograph(sha256('nobody'), 'original')).toBeUndefined()
  expect(await opened.photograph('../yard', 'original')).toBeUndefined()
  await opened.close()
})

test('what was measured of a photograph is kept with it, and there after a restart', async () => {
  const folder = newFolder()
  const opened = await open(folder)
  const { id: surveyId } = await startSurvey(opened)
  const { photograph } = await ask(opened, 'photographs.add', { surveyId, ...at, fileName: 'latch.jpg' }, readFileSync('assets/example/coupler-latch.jpg'))
  expect(photograph.quality).toMatchObject({ edgeWidthPx: expect.any(Number), burntShare: expect.any(Number), blackShare: expect.any(Number), medianLuminance: expect.any(Number) })
  expect(photograph.lookHash).toMatch(/^[0-9a-f]{16}$/)
  await opened.close()
  const again = await open(folder)
  expect((await ask(again, 'surveys.get', { surveyId })).photographs).toEqual([photograph])
  await again.close()
})

test('a HEIC is kept to the byte and served as one; its previews are JPEG', async () => {
  const opened = await open(newFolder())
  const { id: surveyId } = await startSurvey(opened)
  const bytes = readFileSync(new URL('../photos/fixtures/scene-p3.heic', import.meta.url))
  const { photograph } = await ask(opened, 'photographs.add', { surveyId, ...at, fileName: 'IMG_0042.HEIC' }, bytes)
  expect(photograph).toMatchObject({ format: 'heic', sha256: sha256(bytes), takenAt: '2026-05-03T09:15:27+02:00', widthPx: 480, heightPx: 320 })
  const original = await opened.photograph(photograph.sha256, 'original')
  expect([original?.type, sha256(original?.bytes ?? '')]).toEqual(['image/heic', photograph.sha256])
  expect((await opened.photograph(photograph.sha256, 'large'))?.type).toBe('image/jpeg')
  await opened.close()
})
