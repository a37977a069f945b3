import { request } from 'node:http'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import type { PhoneDoor } from '../../../main/desk/phone'
import { makePhoneDoor } from '../../../main/phone/phone-door'
import { inputHeader } from '../../../shared-logic/contract/input-header'
import { Refusal } from '../../../shared-logic/contract/refusal'
import { phoneRefusalSchema } from '../../../shared-logic/phone/phone-door'
import { photograph } from '../host/running-host'
import { pictureId, runDoor, speakTo, type Door, type RunningDoor } from './running-door'

let at: RunningDoor
beforeEach(async () => {
  at = await runDoor()
})
let others: PhoneDoor[] = []
afterEach(async () => {
  for (const doors of others) await doors.closeAll()
  others = []
  await at.stop()
})

type Add = RunningDoor['opened']['desk']['photographs.add']
/** A door to a desk whose intake goes another way for once. */
const doorWhere = async (add: Add): Promise<Door> => {
  const desk = { ...at.opened.desk, 'photographs.add': add }
  const doors = makePhoneDoor({ rendererFolder: join(at.folder, 'renderer'), now: Date.now, onFault: (fault) => void at.faults.push(fault), standsAt: '127.0.0.1' })(() => desk)
  others.push(doors)
  return speakTo(await doors.open({ surveyId: at.surveyId, minutes: 5, isSecure: false }))
}
const refusalOf = async (response: Response): Promise<{ readonly status: number; readonly code: string; readonly sentence: string }> => {
  const { refusal, sentence } = phoneRefusalSchema.parse(await response.json())
  return { status: response.status, code: refusal.code, sentence }
}

it('a full disk is said in a sentence, and the same picture is taken once there is room', async () => {
  let isFull = true
  const door = await doorWhere((input, bytes) => (isFull ? Promise.reject(new Refusal({ code: 'photograph.disk-full', values: { name: 'a.jpg' } })) : at.opened.desk['photographs.add'](input, bytes)))
  const cookie = await door.enter()
  expect(await refusalOf(await door.send(cookie, pictureId(1), await photograph(1)))).toMatchObject({ status: 422, code: 'photograph.disk-full', sentence: expect.stringContaining('disk') })
  isFull = false
  expect((await door.send(cookie, pictureId(1), await photograph(1))).status).toBe(200)
  expect(await at.kept()).toHaveLength(1)
})

it('a fault of ours tells the phone nothing of its inside, and the terminal all of it; the next picture is taken', async () => {
  let isBroken = true
  const fault = new Error('/home/somebody/yard: the inside of the program')
  const door = await doorWhere((input, bytes) => (isBroken ? Promise.reject(fault) : at.opened.desk['photographs.add'](input, bytes)))
  const cookie = await door.enter()
  const heard = await refusalOf(await door.send(cookie, pictureId(1), await photograph(1)))
  expect(heard).toMatchObject({ status: 500, code: 'program.fault' })
  expect(JSON.stringify(heard)).not.toContain('inside of')
  expect(at.faults).toEqual([fault])
  isBroken = false
  expect((await door.send(cookie, pictureId(2), await photograph(2))).status).toBe(200)
})

it('a survey that is issued closes its door, and a picture that comes in that moment is told so and not kept', async () => {
  const { desk } = at.opened
  const { settings } = await desk['settings.get']({})
  await desk['settings.save']({ settings: { ...settings, surveyorName: 'A surveyor' } })
  const { promise: asked, resolve: ask } = Promise.withResolvers<void>()
  const { promise: mayGoOn, resolve: goOn } = Promise.withResolvers<void>()
  const slow = await doorWhere(async (input, bytes) => {
    ask()
    await mayGoOn
    return desk['photographs.add'](input, bytes)
  })
  const door = await at.openDoor()
  const [session, cookie] = [await slow.enter(), await door.enter()]
  const sent = slow.send(session, pictureId(1), await photograph(1))
  await asked
  await desk['reports.issue']({ surveyId: at.surveyId, withPlaces: false, isHarmKnown: false })
  goOn()
  expect(await refusalOf(await sent)).toMatchObject({ status: 410, code: 'survey.issued' })
  expect(await refusalOf(await door.ask('checks', { headers: { cookie } }))).toMatchObject({ status: 410, code: 'phone.closed' })
  expect((await desk['phone.state']({ surveyId: at.surveyId })).door).toBeUndefined()
  expect(await at.kept()).toEqual([])
  await expect(desk['phone.open']({ surveyId: at.surveyId, minutes: 60, isSecure: false })).rejects.toMatchObject({ data: { code: 'survey.issued' } })
})

it('while one upload of a picture is under way a second waits for it and is told the same, though the line of the first is cut', async () => {
  const { promise: asked, resolve: ask } = Promise.withResolvers<void>()
  const { promise: mayGoOn, resolve: goOn } = Promise.withResolvers<void>()
  let times = 0
  const door = await doorWhere(async (input, bytes) => {
    times += 1
    ask()
    await mayGoOn
    return at.opened.desk['photographs.add'](input, bytes)
  })
  const cookie = await door.enter()
  const bytes = await photograph(1)
  const first = request(`${door.origin}/photographs`, { method: 'POST', agent: false, headers: { origin: door.origin, cookie, 'content-type': 'application/octet-stream', 'content-length': bytes.byteLength, [inputHeader]: encodeURIComponent(JSON.stringify({ pictureId: pictureId(1), fileName: 'a.jpg' })) } })
  first.on('error', () => undefined)
  first.end(bytes)
  await asked
  first.destroy()
  const second = door.send(cookie, pictureId(1), bytes)
  await new Promise((resolve) => { setTimeout(resolve, 200) })
  goOn()
  expect(await (await second).json()).toMatchObject({ pictureId: pictureId(1), alreadyThere: false })
  expect(times).toBe(1)
  expect(await at.kept()).toHaveLength(1)
  expect(at.faults).toEqual([])
})

it('neither secret nor session stands in anything that is said, written to a terminal or told as a fault', async () => {
  const written: string[] = []
  const write = (text: unknown): boolean => Boolean(written.push(String(text)))
  const spies = [vi.spyOn(process.stdout, 'write').mockImplementation(write), vi.spyOn(process.stderr, 'write').mockImplementation(write), vi.spyOn(console, 'log').mockImplementation(write), vi.spyOn(console, 'error').mockImplementation(write), vi.spyOn(console, 'warn').mockImplementation(write)]
  const said: string[] = []
  const hear = async (response: Response): Promise<void> => { said.push(await response.text(), ...response.headers.values()) }
  const secrets: string[] = []
  try {
    const door = await doorWhere(() => Promise.reject(new Error('a fault')))
    secrets.push(door.secret)
    await hear(await door.ask('pair', { method: 'POST', body: `{"secret":"${door.secret}"`, headers: { origin: door.origin, 'content-type': 'application/json' } }))
    await hear(await door.ask('pair', { method: 'POST', body: JSON.stringify({ secret: door.secret }), headers: { origin: 'http://evil.example', 'content-type': 'application/json' } }))
    await hear(await door.ask(door.secret))
    const cookie = await door.enter()
    secrets.push(cookie.split('=')[1] ?? '')
    await hear(await door.pair(door.secret))
    await hear(await door.pair(door.secret, { cookie }))
    await hear(await door.ask('', { headers: { cookie } }))
    await hear(await door.ask('checks', { headers: { cookie } }))
    await hear(await door.ask(cookie, { headers: { cookie } }))
    await hear(await door.send(cookie, door.secret.slice(0, 40), await photograph(1)))
    said.push(await door.raw(`GET /${door.secret} HTTP/9.9\r\nCookie: ${cookie}\r\n\r\n`, 500))
  } finally {
    for (const spy of spies) spy.mockRestore()
  }
  expect(secrets.map((each) => each.length)).toEqual([43, 43])
  expect(said.length).toBeGreaterThan(30)
  const all = [...said, ...written, ...at.faults.map((fault) => (fault instanceof Error ? `${fault.message} ${fault.stack ?? ''}` : String(fault)))]
  expect(at.faults).toHaveLength(1)
  for (const secret of secrets) expect(all.filter((text) => text.includes(secret))).toEqual([])
})
