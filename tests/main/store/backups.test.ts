import { closeSync, existsSync, openSync, readdirSync, readFileSync, rmSync, statSync, truncateSync, writeFileSync, writeSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { listBackups, newestGoodBackup } from '../../../main/store/backups'
import { openBackup } from '../../../main/store/restore'
import { keepAnswer } from '../../../main/store/answers'
import { countYard } from '../../../main/store/surveys'
import { openMarker, yardFile } from '../../../main/store/yard'
import { aRig, keepRig, keepSurvey, newFolder, noon, open, refusalOf } from './a-yard'

const clock = (): Date => noon

/** A yard of one rig with today's backup, and a second rig after it; closed. */
const yardWithBackup = async (): Promise<{ folder: string; backup: string }> => {
  const folder = newFolder()
  const yard = open(folder)
  await yard.write((db) => keepRig(db, aRig('in the backup')))
  const backup = await yard.backUp()
  await yard.write((db) => keepRig(db, aRig('after the backup')))
  await yard.close()
  return { folder, backup: backup ?? '' }
}

const spoil = (file: string, at: number, length: number): void => {
  const descriptor = openSync(file, 'r+')
  writeSync(descriptor, Buffer.alloc(length, 0x5a), 0, length, at)
  closeSync(descriptor)
}

test('a yard without a rig is not backed up, so that the first day’s work is', async () => {
  const yard = open(newFolder())
  expect(await yard.backUp()).toBeUndefined()
  await yard.write((db) => keepRig(db, aRig('first')))
  expect(await yard.backUp()).toBe('yard-2026-06-15T12-00-00Z.sqlite')
  await yard.close()
})

test('one backup a day is made, and the newest ten are kept, each a single file', async () => {
  const folder = newFolder()
  for (let day = 1; day <= 13; day += 1) {
    const yard = open(folder, { clock: () => new Date(Date.UTC(2026, 5, day, 9)) })
    if (day === 1) await yard.write((db) => keepRig(db, aRig('kept')))
    expect(await yard.backUp()).toBeDefined()
    expect(await yard.backUp()).toBeUndefined()
    await yard.close()
  }
  expect(listBackups(folder).map(({ date }) => date)).toEqual(Array.from({ length: 10 }, (_, index) => `2026-06-${String(13 - index).padStart(2, '0')}`))
  expect(readdirSync(join(folder, 'backups'))).toHaveLength(10)
})

test('work goes on while a backup is made, and the backup is whole', async () => {
  const folder = newFolder()
  const yard = open(folder)
  await yard.write((db) => keepRig(db, aRig('before')))
  const backup = yard.backUp()
  for (let index = 0; index < 50; index += 1) await yard.write((db) => keepRig(db, aRig(`meanwhile ${index}`)))
  await backup
  expect(newestGoodBackup(folder)?.name).toBe(await backup)
  await yard.close()
})

const damages: readonly { readonly how: string; readonly harm: (file: string) => void }[] = [
  { how: 'overwritten by text', harm: (file) => writeFileSync(file, 'this is no database at all, it only has the name of one\n'.repeat(9)) },
  { how: 'emptied', harm: (file) => truncateSync(file, 0) },
  { how: 'cut off in the first page', harm: (file) => truncateSync(file, 60) },
  { how: 'cut off half-way', harm: (file) => truncateSync(file, Math.floor(statSync(file).size / 2 / 4096) * 4096) },
  { how: 'spoiled in its first page', harm: (file) => spoil(file, 100, 2000) },
]

test.each(damages)('a yard $how is left as it is, and its newest good backup is named and can be opened', async ({ harm }) => {
  const { folder, backup } = await yardWithBackup()
  harm(yardFile(folder))
  writeFileSync(openMarker(folder), '')
  const harmed = readFileSync(yardFile(folder))
  expect(await refusalOf(() => open(folder))).toEqual({ code: 'yard.damaged', values: { folder, backup, date: '2026-06-15' } })
  expect(readFileSync(yardFile(folder)).equals(harmed)).toBe(true)

  openBackup(folder, backup, { clock })
  const yard = open(folder)
  expect((await yard.read(countYard)).rigCount).toBe(1)
  await yard.close()
  const aside = readdirSync(join(folder, 'damaged')).filter((name) => name.endsWith('.sqlite'))
  expect(aside).toHaveLength(1)
  expect(readFileSync(join(folder, 'damaged', aside[0] ?? '')).equals(harmed)).toBe(true)
})

test('pages spoiled in the middle are found at the start after an unclean end', async () => {
  const { folder } = await yardWithBackup()
  spoil(yardFile(folder), 4096 * 3, 4096 * 4)
  writeFileSync(openMarker(folder), '')
  expect((await refusalOf(() => open(folder))).code).toBe('yard.damaged')
})

test('answers that were spoiled are found beside the work', async () => {
  const folder = newFolder()
  const yard = open(folder)
  const rig = aRig('with answers')
  await yard.write(async (db) => {
    const rigId = await keepRig(db, rig)
    for (let day = 1; day < 20; day += 1) {
      const surveyId = await keepSurvey(db, rigId, rig, `2026-05-${String(day).padStart(2, '0')}`)
      for (let index = 0; index < 40; index += 1)
        await keepAnswer(db, surveyId, { checkId: `check ${index}`, position: 'rig', answer: { values: {}, note: 'as found '.repeat(20) }, answeredAt: noon.toISOString() })
    }
  })
  await yard.lookThrough()
  const leaf = yard.database.prepare<[], { pageno: number }>("SELECT pageno FROM dbstat WHERE name = 'answers' AND pagetype = 'leaf' LIMIT 1 OFFSET 5").get()?.pageno ?? 0
  const backup = await yard.backUp()
  await yard.close()
  spoil(yardFile(folder), (leaf - 1) * 4096, 4096)
  const again = open(folder)
  expect(await refusalOf(() => again.lookThrough())).toEqual({ code: 'yard.damaged', values: { folder, backup, date: '2026-06-15' } })
  await again.close()
})

test('damage met while working is refused by the same sentence', async () => {
  const { folder, backup } = await yardWithBackup()
  const yard = open(folder)
  const root = yard.database.prepare<[], { rootpage: number }>("SELECT rootpage FROM sqlite_schema WHERE name = 'rigs'").get()?.rootpage ?? 0
  await yard.close()
  spoil(yardFile(folder), (root - 1) * 4096, 4096)
  const again = open(folder)
  expect(await refusalOf(() => again.write((db) => keepRig(db, aRig('onto spoiled ground'))))).toMatchObject({ code: 'yard.damaged', values: { backup } })
  await again.close()
})

test('a spoiled backup is passed over for an older good one', async () => {
  const { folder, backup } = await yardWithBackup()
  writeFileSync(join(folder, 'backups', 'yard-2026-06-16T12-00-00Z.sqlite'), 'not a backup')
  expect(newestGoodBackup(folder)?.name).toBe(backup)
  expect(await refusalOf(() => openBackup(folder, 'yard-2026-06-16T12-00-00Z.sqlite', { clock }))).toMatchObject({ code: 'backup.not-good' })
})

test('a yard whose file is gone is not begun anew over its backups', async () => {
  const { folder, backup } = await yardWithBackup()
  rmSync(yardFile(folder))
  expect(await refusalOf(() => open(folder))).toMatchObject({ code: 'yard.missing', values: { backup } })
  expect(existsSync(yardFile(folder))).toBe(false)
})

test('without a good backup the refusal says so', async () => {
  const folder = newFolder()
  await open(folder).close()
  writeFileSync(yardFile(folder), 'no database')
  expect((await refusalOf(() => open(folder))).code).toBe('yard.damaged-no-backup')
})

test.each(['../yard.sqlite', 'yard.sqlite', '', '/etc/hostname'])('“%s” is no backup’s name', async (name) => {
  const { folder } = await yardWithBackup()
  expect((await refusalOf(() => openBackup(folder, name, { clock }))).code).toBe('backup.not-good')
})

test('a backup is not opened over a yard at work', async () => {
  const { folder, backup } = await yardWithBackup()
  const yard = open(folder)
  expect((await refusalOf(() => openBackup(folder, backup, { clock }))).code).toBe('yard.open-elsewhere')
  expect((await yard.read(countYard)).rigCount).toBe(2)
  await yard.close()
})
