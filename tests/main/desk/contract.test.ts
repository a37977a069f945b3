import { expect, test } from 'vitest'
import { contract, procedureNames } from '../../../shared-logic/contract/contract'
import { answerCall } from '../../../main/desk/answer-call'
import { makeDesk } from '../../../main/desk/make-desk'
import { ask, newFolder, open, refusalOf } from './yard-on-disk'

test('every procedure of the contract is answered at the desk, and no other', async () => {
  const opened = await open(newFolder())
  expect(Object.keys(opened.desk).toSorted()).toEqual([...procedureNames].toSorted())
  expect(Object.values(opened.desk).every((procedure) => typeof procedure === 'function')).toBe(true)
  expect(makeDesk).toBeTypeOf('function')
  await opened.close()
})

test('what is not in the contract is refused by name, also what every object has', async () => {
  const opened = await open(newFolder())
  for (const name of ['rigs.burn', 'toString', '__proto__', 'constructor', '', 7, null, undefined, {}]) {
    const reply = await answerCall(opened.desk, name, {})
    expect(reply).toMatchObject({ ok: false, refusal: { code: 'door.no-procedure' } })
  }
  await opened.close()
})

test('nothing at all as input is refused, not a fault', async () => {
  const opened = await open(newFolder())
  for (const name of procedureNames) {
    for (const input of [undefined, null, 3, 'words', []]) {
      const reply = await answerCall(opened.desk, name, input, undefined, () => expect.unreachable(`${name} met a fault`))
      expect(reply.ok, `${name} ${JSON.stringify(input)}`).toBe(false)
    }
  }
  await opened.close()
})

test('ids that name nothing are refused by every procedure that takes one', async () => {
  const opened = await open(newFolder())
  const nobody = '01900000-0000-7000-8000-00000000dead'
  const place = { surveyId: nobody, checkId: 'hubs.seal', position: 'axle 1 left' }
  const calls: readonly (readonly [string, unknown])[] = [
    ['rigs.get', { rigId: nobody }], ['rigs.remove', { rigId: nobody }], ['rigs.save', { rigId: nobody, rig: { name: 'x', trailer: {} } }],
    ['surveys.start', { rigId: nobody, purpose: 'sale', surveyDate: '2026-06-15', ruleBook: 'us' }], ['surveys.get', place], ['surveys.answer', { ...place, answer: {} }],
    ['surveys.clear', place], ['surveys.standAt', { surveyId: nobody, here: place }], ['surveys.discard', place], ['surveys.reopen', place], ['reports.issue', place],
    ['reports.list', { surveyId: nobody }], ['photographs.describe', { photographId: nobody, caption: '' }], ['photographs.remove', { photographId: nobody }],
    ['photographs.restore', { photographId: nobody }], ['photographs.turnAll', { turns: [{ photographId: nobody, quarterTurns: 1 }] }], ['photographs.removeAll', { photographIds: [nobody] }],
    ['photographs.restoreAll', { photographIds: [nobody] }],
  ]
  for (const [name, input] of calls) expect(`${name}: ${(await refusalOf(opened, name, input)).code}`).toMatch(/\.not-found$/)
  await opened.close()
})

test('a fault inside is answered without its inside, and told to whoever watches', async () => {
  const opened = await open(newFolder())
  const secret = new Error('SELECT secret FROM /home/somebody')
  const faults: unknown[] = []
  const broken = { ...opened.desk, 'settings.get': () => Promise.reject(secret) }
  const reply = await answerCall(broken, 'settings.get', {}, undefined, (fault) => faults.push(fault))
  expect(reply).toEqual({ ok: false, refusal: { code: 'program.fault' } })
  expect(faults).toEqual([secret])
  await opened.close()
})

test('bytes reach only the procedures that carry them', () => {
  expect(procedureNames.filter((name) => contract[name].carriesBytes)).toEqual(['photographs.add'])
})

test('a new yard says its folder, the surveyor’s own day and that it is empty', async () => {
  const folder = newFolder()
  const opened = await open(folder, { clock: () => new Date('2026-06-15T23:30:00Z'), zone: 'Europe/Lisbon' })
  expect(await ask(opened, 'yard.about', {})).toMatchObject({ folder, today: '2026-06-16', zone: 'Europe/Lisbon', rigCount: 0, surveyCount: 0, version: '0.1.0' })
  await opened.close()
})

test('the example is filled in through the desk, and only into an empty yard', async () => {
  const opened = await open(newFolder(), { fillExample: async (desk) => void (await desk['rigs.save']({ rig: { name: 'example', trailer: {} } })) })
  expect(await ask(opened, 'yard.openExample', {})).toEqual({ rigCount: 1 })
  expect((await refusalOf(opened, 'yard.openExample', {})).code).toBe('yard.not-empty')
  await opened.close()
})

test('settings are the defaults until they are saved, and then what was saved', async () => {
  const folder = newFolder()
  const opened = await open(folder)
  expect(await ask(opened, 'settings.get', {})).toMatchObject({ saved: false, settings: { surveyorName: '', ruleBook: 'us' } })
  await ask(opened, 'settings.save', { settings: { surveyorName: '  Þóra Ngũgĩ ', ruleBook: 'eu', units: 'metric', paper: 'A4' } })
  await opened.close()
  const again = await open(folder)
  expect(await ask(again, 'settings.get', {})).toMatchObject({ saved: true, settings: { surveyorName: 'Þóra Ngũgĩ', ruleBook: 'eu', units: 'metric', paper: 'A4', theme: 'as the system' } })
  await again.close()
})
