import { connect, type Socket } from 'node:net'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { inputHeader } from '../../../shared-logic/contract/input-header'
import { photograph } from '../host/running-host'
import { pictureId, runDoor, type Door, type RunningDoor } from './running-door'

let at: RunningDoor
let door: Door
let held: Socket[] = []
beforeEach(async () => {
  at = await runDoor()
  door = await at.openDoor()
})
afterEach(async () => {
  for (const socket of held) socket.destroy()
  held = []
  await at.stop()
})

/** Four lines from each of sixty addresses of this machine (127.0.0.0/8; RFC 1122, 3.2.1.3), on which a question is begun and not ended. */
const hoard = (): Promise<void[]> =>
  Promise.all(Array.from({ length: 240 }, (_, index) =>
    new Promise<void>((resolve) => {
      const socket = connect({ host: '127.0.0.1', port: door.port, localAddress: `127.0.1.${1 + (index % 60)}` }, () => {
        socket.write(`GET /checks HTTP/1.1\r\nHost: 127.0.0.1:${door.port}\r\nX-Slow: `)
        resolve()
      })
      socket.on('error', () => undefined)
      held.push(socket)
    })))

const areOpen = (): number => held.filter((socket) => !socket.destroyed && socket.readyState === 'open').length

it('sixty machines that hold every line they get hold sixty-four together, and the paired phone is heard all the while', async () => {
  const cookie = await door.enter()
  await hoard()
  await expect.poll(areOpen).toBeLessThanOrEqual(64)
  expect(areOpen()).toBeGreaterThan(50)
  for (let times = 0; times < 10; times += 1) expect((await door.ask('arrived', { headers: { cookie } })).status).toBe(200)
  await hoard()
  expect((await door.send(cookie, 'picture-0000000000000001', new Uint8Array(10))).status).toBe(422)
  expect((await door.ask('arrived', { headers: { cookie } })).status).toBe(200)
})

it('nor do they keep a phone out that has yet to be let in', async () => {
  await hoard()
  expect(await door.pairFrom('127.0.0.4', door.secret)).toBe(200)
})

/** Lines of somebody behind the phone's own address, as behind one router, on which nothing is ever asked. */
const besideThePhone = (count: number): Promise<unknown[]> =>
  Promise.all(Array.from({ length: count }, () =>
    new Promise<void>((resolve) => {
      const socket = connect({ host: '127.0.0.1', port: door.port }, resolve)
      socket.on('error', () => undefined)
      held.push(socket)
    })))

it('somebody behind the phone’s own address who holds every line it may have does not keep it out', async () => {
  const cookie = await door.enter()
  await besideThePhone(40)
  await expect.poll(areOpen).toBeLessThanOrEqual(12)
  expect((await door.ask('arrived', { headers: { cookie } })).status).toBe(200)
})

const lastHeard = async (): Promise<number> => Date.parse((await at.opened.desk['phone.state']({ surveyId: at.surveyId })).door?.phone?.lastHeardAt ?? '')

it('nor is the phone’s picture cut off on its way, from there or from elsewhere', async () => {
  const cookie = await door.enter()
  const entered = await lastHeard()
  await expect.poll(Date.now).toBeGreaterThan(entered)
  const bytes = await photograph(1)
  const sending = connect({ host: '127.0.0.1', port: door.port })
  held.push(sending)
  let heard = ''
  sending.on('data', (chunk: Buffer) => { heard += chunk.toString('latin1') })
  const about = encodeURIComponent(JSON.stringify({ pictureId: pictureId(1), fileName: 'slow.jpg' }))
  sending.write(['POST /photographs HTTP/1.1', `Host: 127.0.0.1:${door.port}`, `Origin: ${door.origin}`, `Cookie: ${cookie}`, 'Content-Type: application/octet-stream', `Content-Length: ${bytes.byteLength}`, `${inputHeader}: ${about}`, '', ''].join('\r\n'))
  sending.write(bytes.subarray(0, 100))
  await expect.poll(lastHeard).toBeGreaterThan(entered)
  await besideThePhone(40)
  await hoard()
  sending.write(bytes.subarray(100))
  await expect.poll(() => heard).toMatch(/^HTTP\/1\.1 200 /)
  expect(await at.kept()).toHaveLength(1)
})
