import { appendFileSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { runCommandLine } from '../../../main/cli/run-command-line'
import { openDesk, type OpenedDesk } from '../../../main/desk/open'
import { plainRig } from '../host/running-host'
import { openWorkplace, today, type Workplace } from './command-line'

let at: Workplace
let opened: OpenedDesk
let surveyId: string
const picture = async (number: number): Promise<Uint8Array> =>
  new Uint8Array(await sharp({ create: { width: 48, height: 32, channels: 3, background: { r: number, g: 90, b: 120 } } }).png().toBuffer())
const add = async (fileName: string, number: number): Promise<void> => {
  await opened.desk['photographs.add']({ surveyId, fileName, source: 'phone' }, await picture(number))
}
beforeAll(async () => {
  at = await openWorkplace()
  opened = await openDesk(join(at.folder, 'yard'), { clock: () => today, zone: 'UTC' })
  const { desk } = opened
  const { settings } = await desk['settings.get']({})
  await desk['settings.save']({ settings: { ...settings, surveyorName: 'A. Surveyor' } })
  const { id: rigId } = await desk['rigs.save']({ rig: plainRig('Tern') })
  surveyId = (await desk['surveys.start']({ rigId, purpose: 'yearly', surveyDate: '2026-06-01', ruleBook: 'us' })).id
  await add('hub.png', 1)
  await add('strap.png', 2)
  await desk['reports.issue']({ surveyId, withPlaces: false, isHarmKnown: false })
  await desk['surveys.start']({ rigId, purpose: 'sale', surveyDate: '2026-06-02', ruleBook: 'us' })
}, 60_000)
afterAll(async () => {
  await opened.close()
  await at.clear()
})

const verify = (...args: string[]) => at.run('verify', ...args, '--folder', 'yard')
const originals = (): string[] => {
  const folder = join(at.folder, 'yard', 'photographs', 'originals')
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.png')).map((name) => join(folder, name)).toSorted()
}

describe('a yard nobody tampered with, open in its window', () => {
  it('is all as it was recorded: exit code 0, and each report’s end is printed to be held to the paper', async () => {
    const { code, out, error } = await verify()
    expect([code, error]).toEqual([0, ''])
    expect(out).toContain('Tern, 2026-06-01, BW-2026-0001\n  2 photographs, all as they came in.')
    expect(out).toMatch(/The record has 4 entries; SHA-256 of the last: [0-9a-f]{64}\n {2}Report BW-2026-0001, revision 1, prints 3 entries; SHA-256 of the last: [0-9a-f]{64}/)
    expect(out).toContain('All is as it was recorded. Photographs: 2; surveys: 1.')
    expect(out).toContain('is found only by what was kept elsewhere')
    expect(out).toMatch(/The yard’s list of surveys has 5 entries; SHA-256 of the last: [0-9a-f]{64}/)
  })

  it('is verified by the survey’s report number or id, and answers as data', async () => {
    for (const named of ['bw-2026-0001', surveyId]) {
      const { code, out } = await verify(named, '--json')
      expect(code).toBe(0)
      expect(JSON.parse(out)).toMatchObject({ surveyId, asRecorded: true, photographCount: 2, problems: [], end: { entryCount: 4 }, reports: [{ number: 'BW-2026-0001', revision: 1, end: { entryCount: 3 } }] })
    }
    expect((await verify('Heron')).code).toBe(1)
    expect((await verify('Tern')).error).toContain('“Tern”')
  })

  it('says on standard error how far it has come, when it takes long', async () => {
    let seconds = 0
    const error: string[] = []
    const code = await runCommandLine(['verify', '--folder', 'yard'], { out: () => undefined, error: (text) => error.push(text), workingFolder: at.folder, now: () => new Date(today.getTime() + 1_000 * (seconds += 1)) })
    expect(code).toBe(0)
    expect(error.length).toBeGreaterThan(0)
    for (const line of error) expect(line).toMatch(/^Read \d.* of \d/)
  })
})

describe('a yard somebody tampered with', () => {
  it('says what was changed, missing and added, in sentences and as data: exit code 1', async () => {
    const [first = ''] = originals()
    appendFileSync(first, 'x')
    writeFileSync(join(at.folder, 'yard', 'photographs', 'originals', 'holiday.jpg'), 'x')
    const { code, out } = await verify()
    expect(code).toBe(1)
    expect(out).toMatch(/“(hub|strap)\.png”: the original was changed\. It has \d+ bytes and was recorded with \d+\./)
    expect(out).toContain('In the yard’s folder, of no survey\n  photographs/originals/holiday.jpg belongs to no photograph: it was added, or the photograph was taken out.')
    expect(out).toContain('2 things are not as they were recorded.')
    const data = await verify('--json')
    expect(data.code).toBe(1)
    expect(JSON.parse(data.out)).toMatchObject({ asRecorded: false, surveys: [{ surveyId, problems: [{ code: 'file-resized' }] }], problems: [{ code: 'file-added', values: { file: 'photographs/originals/holiday.jpg' } }] })
    const one = await verify('BW-2026-0001')
    expect([one.code, one.out.includes('One thing is not as it was recorded.')]).toEqual([1, true])
  }, 30_000)

  it('names the folder of earlier states only where there is one, of a survey and of the yard', async () => {
    const backups = join(at.folder, 'yard', 'backups')
    rmSync(backups, { recursive: true, force: true })
    const ask = async (): Promise<string[]> => [(await verify()).out, (await verify('BW-2026-0001')).out]
    for (const out of await ask()) {
      expect(out).toContain('What to do: change nothing in this yard')
      expect(out).toContain('where the camera or phone kept it')
      expect(out).not.toContain('backups')
    }
    mkdirSync(backups)
    writeFileSync(join(backups, 'yard-2026-06-14T09-21-09Z.sqlite'), 'x')
    for (const out of await ask()) expect(out).toContain('Earlier states of the yard’s file lie in its folder “backups”.')
    rmSync(backups, { recursive: true })
  }, 30_000)
})

it('a yard without photographs has nothing to verify, and a folder without a yard is refused', async () => {
  const empty = await openDesk(join(at.folder, 'new'))
  await empty.close()
  const { code, out } = await at.run('verify', '--folder', 'new')
  expect([code, out]).toEqual([0, 'No photograph and no report is kept in this yard.'])
  expect((await at.run('verify', '--folder', 'nowhere')).code).toBe(1)
  expect((await at.run('verify', 'a', 'b')).code).toBe(2)
})

it('who writes a path in the place of a survey, or none, is told how a path is given', async () => {
  for (const path of ['/yards/harbour', './yard', 'yards\\harbour']) {
    const { code, error } = await at.run('verify', path)
    expect(code).toBe(2)
    expect(error).toMatch(/^“.*” is no survey but a path; a path is given with --folder: verify --folder /)
    expect(error).toContain(`verify --folder ${path}\n`)
  }
  expect((await at.run('verify', '--folder', 'nowhere')).error).toContain('its path is given with --folder.')
})
