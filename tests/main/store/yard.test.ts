import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { expect, test } from 'vitest'
import { countYard } from '../../../main/store/surveys'
import { openYardToRead } from '../../../main/store/yard-to-read'
import { openMarker, yardFile } from '../../../main/store/yard'
import { aRig, keepRig, newFolder, open, refusalOf } from './a-yard'

test('a new yard keeps its log ahead of the file, flushes every change and holds its references', async () => {
  const yard = open(join(newFolder(), 'a folder', 'not there yet'))
  const setting = (name: string): unknown => yard.database.pragma(name, { simple: true })
  expect({ journal: setting('journal_mode'), synchronous: setting('synchronous'), references: setting('foreign_keys'), schema: setting('trusted_schema') })
    .toEqual({ journal: 'wal', synchronous: 2, references: 1, schema: 0 })
  await yard.close()
})

test('a change that fails half-way leaves nothing of itself', async () => {
  const yard = open(newFolder())
  await expect(yard.write(async (db) => {
    await keepRig(db, aRig('half'))
    throw new Error('half-way')
  })).rejects.toThrow('half-way')
  expect(await yard.read(countYard)).toEqual({ rigCount: 0, surveyCount: 0 })
  await yard.close()
})

test('changes that are asked for at once are made one after the other', async () => {
  const yard = open(newFolder())
  await Promise.all(Array.from({ length: 40 }, (_, index) => yard.write((db) => keepRig(db, aRig(`rig ${index}`)))))
  expect((await yard.read(countYard)).rigCount).toBe(40)
  await yard.close()
})

test('a second copy is refused while the first is open, and admitted once it is closed', async () => {
  const folder = newFolder()
  const first = open(folder)
  expect(await refusalOf(() => open(folder))).toEqual({ code: 'yard.open-elsewhere', values: { folder } })
  await first.write((db) => keepRig(db, aRig('still working')))
  await first.close()
  const second = open(folder)
  expect((await second.read(countYard)).rigCount).toBe(1)
  await second.close()
})

test('a yard that was closed says so; one that was left open is looked through at the next start', async () => {
  const folder = newFolder()
  await open(folder).close()
  expect(existsSync(openMarker(folder))).toBe(false)
  writeFileSync(openMarker(folder), '')
  const yard = open(folder)
  expect(yard.wasUnclean).toBe(true)
  await yard.close()
})

test('a yard is read beside the program that has it open, and by a reader that cannot write', async () => {
  const folder = newFolder()
  const yard = open(folder)
  await yard.write((db) => keepRig(db, aRig('seen from beside')))
  const reader = openYardToRead(folder, { programVersion: '0.1.0' })
  expect((await reader.read(countYard)).rigCount).toBe(1)
  await reader.close()
  await yard.close()
})

test('a folder without a yard is said to have none, and stays empty', async () => {
  const folder = newFolder()
  expect((await refusalOf(() => openYardToRead(folder, { programVersion: '0.1.0' }))).code).toBe('yard.none-here')
  expect(existsSync(yardFile(folder))).toBe(false)
})

test('another program’s database under the yard’s name is left as it is', async () => {
  const folder = newFolder()
  const theirs = new Database(yardFile(folder))
  theirs.exec('CREATE TABLE recipes (name TEXT)')
  theirs.close()
  expect((await refusalOf(() => open(folder))).code).toBe('yard.not-a-yard')
  const again = new Database(yardFile(folder), { readonly: true })
  expect(again.prepare('SELECT count(*) FROM recipes').pluck().get()).toBe(0)
  again.close()
})

test('a newer program’s yard is refused by both versions, and not a byte of it changes', async () => {
  const folder = newFolder()
  await open(folder).close()
  const newer = new Database(yardFile(folder))
  newer.exec("INSERT INTO migrations VALUES (990, '7.4.0', '2031-01-01T00:00:00Z'); PRAGMA user_version = 990")
  newer.close()
  const before = readFileSync(yardFile(folder))
  expect(await refusalOf(() => open(folder))).toEqual({ code: 'yard.newer-version', values: { folder, theirs: '7.4.0', ours: '0.1.0' } })
  expect((await refusalOf(() => openYardToRead(folder, { programVersion: '0.1.0' }))).code).toBe('yard.newer-version')
  expect(readFileSync(yardFile(folder)).equals(before)).toBe(true)
})

test('a file where the folder should be is refused', async () => {
  const file = join(newFolder(), 'a file')
  writeFileSync(file, 'words')
  expect((await refusalOf(() => open(file))).code).toBe('disk.not-a-folder')
  rmSync(file)
})
