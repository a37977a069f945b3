import { afterEach, expect, test, vi } from 'vitest'
import { readFile } from 'node:fs/promises'

afterEach(() => {
  vi.doUnmock('../../../main/photos/heic')
  vi.resetModules()
})

/** The shelf over a HEIC reader that fails as told: its real bounds, two minutes and 2 GiB, are no matter for a test. */
const takeWith = async (why: 'damaged' | 'takes too much'): Promise<unknown> => {
  vi.resetModules()
  const real = await vi.importActual<typeof import('../../../main/photos/heic')>('../../../main/photos/heic')
  vi.doMock('../../../main/photos/heic', () => ({ ...real, heicAsTiff: () => Promise.reject(new real.HeicFailure(why, 'told to')) }))
  const { openShelf } = await import('../../../main/photos/shelf')
  const { emptyFolder, filesIn } = await import('./shelf-folder')
  const folder = await emptyFolder()
  const bytes = await readFile(new URL('./fixtures/scene.heic', import.meta.url))
  const refused: unknown = await openShelf(folder).take(bytes, '../phone/IMG_7.HEIC').catch((error: unknown) => error)
  return { refused, files: await filesIn(folder) }
}

test.each([['takes too much', 'photograph.takes-too-much'], ['damaged', 'photograph.damaged']] as const)('a HEIC that %s is refused by its name without folders, and nothing is kept', async (why, code) => {
  expect(await takeWith(why)).toMatchObject({ refused: { data: { code, values: { name: 'IMG_7.HEIC' } } }, files: [] })
})
