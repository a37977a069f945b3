import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test, type TestContext } from 'vitest'
import { countYard } from '../../../main/store/surveys'
import { openYardToRead } from '../../../main/store/yard-to-read'
import { aRig, keepRig, open, refusalOf } from './a-yard'

/** A small disk of its own, in memory: room for an empty yard and a little work. Mounting takes rights that not every machine gives to a test. */
let disk = ''
let trouble = ''

const mount = (...given: readonly string[]): string => {
  const { status, stderr, error } = spawnSync('mount', given, { encoding: 'utf8' })
  return status === 0 ? '' : (error?.message ?? stderr.trim())
}

beforeEach(() => {
  disk = mkdtempSync(join(tmpdir(), 'disk-'))
  trouble = process.platform === 'linux' ? mount('-t', 'tmpfs', '-o', 'size=1200k', 'tmpfs', disk) : 'only tried on Linux'
})
afterEach(() => {
  if (trouble === '') spawnSync('umount', [disk])
  rmSync(disk, { recursive: true, force: true })
})

const needDisk = ({ skip, task }: TestContext): void => {
  if (trouble === '') return
  console.warn(`NOT TESTED: ${task.name}: no small disk could be mounted (${trouble})`)
  skip(`no small disk could be mounted: ${trouble}`)
}

const long = (index: number) => aRig(`rig ${index}`, { remarks: 'as long as remarks may be '.repeat(150) })

describe('a full disk', () => {
  test('refuses what does not fit, keeps all that was acknowledged, and goes on when there is room again', async (context) => {
    needDisk(context)
    const folder = join(disk, 'yard')
    const yard = open(folder)
    let kept = 0
    const refused = await refusalOf(async () => {
      for (; kept < 2_000; kept += 1) await yard.write((db) => keepRig(db, long(kept)))
    })
    expect(refused).toEqual({ code: 'disk.full', values: { folder } })
    expect(kept).toBeGreaterThan(20)
    expect((await yard.read(countYard)).rigCount).toBe(kept)
    expect(mount('-o', 'remount,size=8m', disk)).toBe('')
    await yard.write((db) => keepRig(db, long(kept)))
    await yard.close()
    const again = open(folder)
    expect((await again.read(countYard)).rigCount).toBe(kept + 1)
    expect(again.database.pragma('integrity_check', { simple: true })).toBe('ok')
    await again.close()
  })
})

describe('a read-only folder', () => {
  test('is refused for work with a sentence of its own, and can still be read', async (context) => {
    needDisk(context)
    const folder = join(disk, 'yard')
    const yard = open(folder)
    await yard.write((db) => keepRig(db, aRig('laid down')))
    await yard.close()
    expect(mount('-o', 'remount,ro', disk)).toBe('')
    expect(await refusalOf(() => open(folder))).toEqual({ code: 'disk.read-only', values: { folder } })
    expect((await refusalOf(() => open(join(disk, 'another')))).code).toBe('disk.read-only')
    const reader = openYardToRead(folder, { programVersion: '0.1.0' })
    expect((await reader.read(countYard)).rigCount).toBe(1)
    await reader.close()
  })
})
