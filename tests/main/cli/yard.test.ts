import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openDesk, type OpenedDesk } from '../../../main/desk/open'
import { plainRig } from '../host/running-host'
import { openWorkplace, today, type Workplace } from './command-line'

let at: Workplace
let opened: OpenedDesk
let rigId: string
let issuedId: string
beforeAll(async () => {
  at = await openWorkplace()
  opened = await openDesk(join(at.folder, 'yard'), { clock: () => today, zone: 'UTC' })
  const { desk } = opened
  const { settings } = await desk['settings.get']({})
  await desk['settings.save']({ settings: { ...settings, surveyorName: 'A. Surveyor' } })
  rigId = (await desk['rigs.save']({ rig: plainRig('Tern') })).id
  await desk['rigs.save']({ rig: plainRig('Gull') })
  issuedId = (await desk['surveys.start']({ rigId, purpose: 'yearly', surveyDate: '2026-06-01', ruleBook: 'us' })).id
  await desk['reports.issue']({ surveyId: issuedId, withPlaces: false, isHarmKnown: false })
  await desk['surveys.start']({ rigId, purpose: 'sale', surveyDate: '2026-06-02', ruleBook: 'us' })
})
afterAll(async () => {
  await opened.close()
  await at.clear()
})

const inYard = (...args: string[]) => at.run(...args, '--folder', 'yard')

describe('over a yard, while the program has it open', () => {
  it('list names rigs and surveys', async () => {
    const { code, out } = await inYard('list')
    expect(code).toBe(0)
    for (const word of ['Tern', 'Gull', 'BW-2026-0001', '2026-06-02', 'Before a sale', 'not surveyed yet']) expect(out).toContain(word)
    expect(JSON.parse((await inYard('list', '--json')).out)).toMatchObject({ rigs: [{ rig: { name: 'Gull' } }, { rig: { name: 'Tern' } }], surveys: [{ status: 'under way' }, { id: issuedId }] })
  })

  it('show finds a rig by name or id, and a survey by number, id or the first part of one that is alone', async () => {
    expect(JSON.parse((await inYard('show', 'tern', '--json')).out)).toMatchObject({ id: rigId, surveys: [{}, {}] })
    expect(JSON.parse((await inYard('show', rigId, '--json')).out)).toMatchObject({ id: rigId })
    expect(JSON.parse((await inYard('show', 'bw-2026-0001', '--json')).out)).toMatchObject({ id: issuedId, assessed: { verdict: 'not seen' } })
    expect(JSON.parse((await inYard('show', issuedId.slice(0, -1), '--json')).out)).toMatchObject({ id: issuedId })
    expect((await inYard('show', 'BW-2026-0001')).out).toContain('Verdict: Not seen')
  })

  it('what is not there, or could be several, is refused', async () => {
    const { code, error } = await inYard('show', 'Heron')
    expect([code, error.includes('“Heron”')]).toEqual([1, true])
    expect((await inYard('show', issuedId.slice(0, 6))).code).toBe(1)
  })

  it('report writes the issued PDF to the byte, and takes no other file’s place', async () => {
    const { code } = await inYard('report', 'BW-2026-0001', '-o', 'copy.pdf')
    expect(code).toBe(0)
    const [report] = (await opened.desk['reports.list']({ surveyId: issuedId, offset: 0, limit: 1 })).reports
    const kept = await opened.reportPdf(report?.id ?? '')
    expect((await readFile(join(at.folder, 'copy.pdf'))).equals(kept?.bytes ?? new Uint8Array())).toBe(true)
    expect((await inYard('report', 'BW-2026-0001', '-o', 'copy.pdf')).error).toContain('is there already')
  })

  it('a survey that is not issued has no report, and says so', async () => {
    const { surveys } = await opened.desk['surveys.list']({ offset: 0, limit: 1 })
    const { code, error } = await inYard('report', surveys[0]?.id ?? '')
    expect([code, error]).toEqual([1, 'The survey of Tern on 2026-06-02 is not issued yet, so there is no report of it. Issue it in the window first.'])
  })

  it('nothing was written to the yard: the window’s next answer is kept as ever', async () => {
    expect((await opened.desk['rigs.save']({ rig: plainRig('Heron') })).rig.name).toBe('Heron')
  })
})

describe('where there is no yard', () => {
  it('the sentence says so, and no yard is made', async () => {
    const { code, error } = await at.run('list', '--folder', 'empty')
    expect(code).toBe(1)
    expect(error).toContain('There is no yard in')
    expect((await at.run('list', '--folder', 'empty')).code).toBe(1)
  })
})

describe('example', () => {
  it('does not go into a folder that holds something', async () => {
    await at.put('full/thing.txt', 'x')
    const { code, error } = await at.run('example', 'full')
    expect([code, error.includes('is not empty')]).toEqual([1, true])
  })
})
