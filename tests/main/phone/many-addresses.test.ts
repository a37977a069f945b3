import { connect, type Socket } from 'node:net'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { runDoor, type Door, type RunningDoor } from './running-door'

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
