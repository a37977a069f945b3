import { existsSync, readdirSync } from 'node:fs'
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { openDesk } from '../../main/desk/open'
import { openYard } from '../../main/store/yard'
import { plainRig } from '../main/host/running-host'
import { hasLeft, hasWindow, leave, startShell } from './start-shell'

let folder: string
beforeEach(async () => {
  folder = join(await mkdtemp(join(tmpdir(), 'bunkwright-refused-')), 'yard')
})
afterEach(() => rm(join(folder, '..'), { recursive: true, force: true }))

const yardWithBackup = async (): Promise<void> => {
  const opened = await openDesk(folder)
  await opened.desk['rigs.save']({ rig: plainRig('Tern') })
  await opened.close()
  const yard = openYard(folder, { programVersion: '0.1.0', clock: () => new Date() })
  await yard.backUp()
  await yard.close()
}

const damage = (): Promise<void> => writeFile(join(folder, 'yard.sqlite'), 'this is no database any more')

describe('a yard that cannot be opened', () => {
  it('damaged without a backup: a sentence, no window, exit code 1, and the file is left as it was', async () => {
    await mkdir(folder, { recursive: true })
    await damage()
    const { record } = await startShell(folder, hasLeft)
    expect(record.windows).toEqual([])
    expect(record.exits).toEqual([1])
    expect(record.dialogs).toHaveLength(1)
    expect(record.dialogs[0]).toMatchObject({ type: 'error', message: 'The yard cannot be opened', buttons: ['Close'] })
    expect(String(record.dialogs[0]?.['detail'])).not.toMatch(/SQLITE|\{\w+\}|yard\.damaged/)
  })

  it('damaged, and the person closes: the newest good backup was offered, and nothing is changed', async () => {
    await yardWithBackup()
    await damage()
    const { record } = await startShell(folder, hasLeft)
    expect(record.dialogs[0]).toMatchObject({ buttons: ['Open the newest good backup', 'Close'], defaultId: 1, cancelId: 1 })
    expect(record.exits).toEqual([1])
    expect(existsSync(join(folder, 'damaged'))).toBe(false)
  })

  it('damaged, and the person takes the offer: the window opens on the backup, and the damaged file is kept beside it', async () => {
    await yardWithBackup()
    await damage()
    const standIn = await startShell(folder, hasWindow, ({ record }) => record.presses.push(0))
    expect(readdirSync(join(folder, 'damaged'))).toHaveLength(1)
    const reply = await standIn.record.handlers.get('desk')?.({ senderFrame: { url: 'app://bunkwright/', parent: null } }, 'rigs.list', {})
    expect(reply).toMatchObject({ ok: true, value: { total: 1 } })
    await leave(standIn)
  })

  it('open in another copy: a sentence, and that copy goes on', async () => {
    const opened = await openDesk(folder)
    const { record } = await startShell(folder, hasLeft)
    expect(record.exits).toEqual([1])
    expect(record.dialogs[0]).toMatchObject({ buttons: ['Close'] })
    expect((await opened.desk['rigs.save']({ rig: plainRig('Tern') })).rig.name).toBe('Tern')
    await opened.close()
  })

  it('already open in this very program: the second start leaves at once, without a word', async () => {
    const { record } = await startShell(folder, hasLeft, (standIn) => (standIn.record.lockIsFree = false))
    expect(record.exits).toEqual([0])
    expect(record.dialogs).toEqual([])
    expect(existsSync(folder)).toBe(false)
  })
})
