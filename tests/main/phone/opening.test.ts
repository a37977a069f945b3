import type { NetworkInterfaceInfo } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { makePhoneDoor, type PhoneDoorOptions } from '../../../main/phone/phone-door'
import { photograph } from '../host/running-host'
import { pictureId, runDoor, speakTo, type RunningDoor } from './running-door'

let at: RunningDoor
beforeAll(async () => {
  at = await runDoor()
})
afterAll(() => at.stop())

type Desk = RunningDoor['opened']['desk']
const infoOf = (address: string): NetworkInterfaceInfo => {
  const common = { address, internal: address.startsWith('127.'), netmask: '', mac: '', cidr: null }
  return address.includes(':') ? { ...common, family: 'IPv6', scopeid: 0 } : { ...common, family: 'IPv4' }
}
const networks = (...addresses: string[]) => (): NodeJS.Dict<NetworkInterfaceInfo[]> =>
  Object.fromEntries(addresses.map((address, index) => [`network-${index}`, [infoOf(address)]]))
const doorWith = (more: Partial<PhoneDoorOptions>, desk: () => Desk = () => at.opened.desk) =>
  makePhoneDoor({ rendererFolder: join(at.folder, 'renderer'), now: Date.now, onFault: (fault) => void at.faults.push(fault), ...more })(desk)
const wanted = (address?: string) => ({ surveyId: at.surveyId, minutes: 5, isSecure: false, ...(address !== undefined && { address }) })

it('a machine on no local network is told so, and an address of the Internet is none', async () => {
  // 203.0.113.0/24 and 2001:db8::/32 stand for addresses of the Internet. Source: RFC 5737, section 3; RFC 3849, section 2.
  for (const away of [networks(), networks('127.0.0.1'), networks('203.0.113.9', '2001:db8::9'), networks('169.254.10.1', 'fe80::1')])
    await expect(doorWith({ networks: away }).open(wanted())).rejects.toMatchObject({ data: { code: 'phone.no-network' } })
})

it('an address that cannot be had is said by name: one that has just gone, and one with no port', async () => {
  for (const gone of ['192.168.255.253', 'fd00:dead::1'])
    await expect(doorWith({ networks: networks(gone) }).open(wanted())).rejects.toMatchObject({ data: { code: 'phone.cannot-listen', values: { address: gone } } })
})

it('the network chosen in the window goes before the one chosen at the start, and one that is not there closes no open door', async () => {
  const doors = doorWith({ standsAt: '127.0.0.1', networks: networks('127.0.0.1', '192.168.255.253', '10.255.255.253') })
  const state = await doors.open(wanted())
  expect(new URL(state.address).hostname).toBe('127.0.0.1')
  expect(state.otherAddresses.map(({ address }) => address)).toEqual(['192.168.255.253', '10.255.255.253'])
  await expect(doors.open(wanted('192.168.1.1'))).rejects.toMatchObject({ data: { code: 'phone.no-such-address' } })
  expect(doors.state(at.surveyId)?.pairingAddress).toBe(state.pairingAddress)
  await expect(doors.open(wanted('10.255.255.253'))).rejects.toMatchObject({ data: { code: 'phone.cannot-listen', values: { address: '10.255.255.253' } } })
  await doors.closeAll()
})

it('the window is told of the machine’s networks as they are, not as they were', async () => {
  let now = networks('192.168.1.20')
  const doors = doorWith({ standsAt: '127.0.0.1', networks: () => now() })
  await doors.open(wanted())
  now = networks('10.0.0.7')
  expect(doors.state(at.surveyId)?.otherAddresses).toEqual([{ name: 'network-0', address: '10.0.0.7' }])
  await doors.closeAll()
})

it('the window sees the door shut when the clock has passed its time, though the machine slept and no timer ran', async () => {
  let nowMs = Date.now()
  const doors = doorWith({ standsAt: '127.0.0.1', now: () => nowMs })
  const { closesAt } = await doors.open(wanted())
  nowMs = Date.parse(closesAt) - 1
  expect(doors.state(at.surveyId)).toBeDefined()
  nowMs += 1
  expect(doors.state(at.surveyId)).toBeUndefined()
  await doors.closeAll()
})

it('the door shuts by itself when its time is over, and nobody is there a while after', async () => {
  const doors = doorWith({ standsAt: '127.0.0.1' })
  const { address } = await doors.open({ ...wanted(), minutes: 0.01 })
  await expect.poll(() => fetch(address).then(({ status }) => status, () => 0), { timeout: 5_000 }).toBe(410)
  await expect.poll(() => fetch(address).then(({ status }) => status, () => 0), { timeout: 20_000, interval: 500 }).toBe(0)
  expect(doors.state(at.surveyId)).toBeUndefined()
}, 30_000)

it('a picture that had come whole is kept before the program ends', async () => {
  const { promise: asked, resolve: ask } = Promise.withResolvers<void>()
  const { promise: mayGoOn, resolve: goOn } = Promise.withResolvers<void>()
  const slow: Desk = {
    ...at.opened.desk,
    'photographs.add': async (...given) => {
      ask()
      await mayGoOn
      return at.opened.desk['photographs.add'](...given)
    },
  }
  const doors = doorWith({ standsAt: '127.0.0.1' }, () => slow)
  const door = speakTo(await doors.open(wanted()))
  const cookie = await door.enter()
  const before = (await at.kept()).length
  const sent = door.send(cookie, pictureId(1), await photograph(1)).then(({ status }) => status, () => 'cut')
  await asked
  let hasEnded = false
  const ending = doors.closeAll().then(() => { hasEnded = true })
  expect(await sent).toBe('cut')
  expect(hasEnded).toBe(false)
  goOn()
  await ending
  expect((await at.kept()).length).toBe(before + 1)
  expect(at.faults).toEqual([])
})
