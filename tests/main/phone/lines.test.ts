import { writeFile } from 'node:fs/promises'
import { connect, type Socket } from 'node:net'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { runDoor, type RunningDoor } from './running-door'

let at: RunningDoor
let sockets: Socket[] = []
beforeEach(async () => {
  at = await runDoor()
})
afterEach(async () => {
  for (const socket of sockets) socket.destroy()
  sockets = []
  await at.stop()
})

const line = (port: number, text = ''): Promise<Socket> =>
  new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1', () => {
      socket.write(text)
      resolve(socket)
    })
    socket.on('error', () => undefined)
    sockets.push(socket)
  })
const waited = (ms: number): Promise<'waited'> => new Promise((resolve) => setTimeout(() => resolve('waited'), ms))

it('a thousand questions in one breath, whose answers nobody fetches, are not answered into memory', async () => {
  const door = await at.openDoor()
  await writeFile(join(at.folder, 'renderer', 'assets', 'shared-AbCd1234.js'), 'a'.repeat(500_000))
  const question = `GET /assets/shared-AbCd1234.js HTTP/1.1\r\nHost: 127.0.0.1:${door.port}\r\n\r\n`
  const before = process.memoryUsage().rss
  for (const socket of await Promise.all(Array.from({ length: 10 }, () => line(door.port, question.repeat(1_000))))) socket.pause()
  let most = before
  for (let look = 0; look < 20; look += 1) {
    await waited(100)
    most = Math.max(most, process.memoryUsage().rss)
  }
  expect(most - before).toBeLessThan(200_000_000)
  expect((await door.ask('')).status).toBe(200)
}, 30_000)

it('questions one after the other on one line are all answered', async () => {
  const door = await at.openDoor()
  const socket = await line(door.port)
  for (let question = 0; question < 50; question += 1) {
    const answer = new Promise<string>((resolve) => socket.once('data', (chunk: Buffer) => resolve(chunk.toString('latin1'))))
    socket.write(`GET /phone.html HTTP/1.1\r\nHost: 127.0.0.1:${door.port}\r\n\r\n`)
    expect(await answer).toMatch(/^HTTP\/1\.1 200 /)
  }
})

it('a line on which nothing is ever said does not hold up the next door, nor the end of the program', async () => {
  const door = await at.openDoor({ isSecure: true })
  await line(door.port)
  await waited(200)
  expect(await Promise.race([at.openDoor({ isSecure: true }).then(() => 'opened'), waited(5_000)])).toBe('opened')
  await line(door.port)
  await waited(200)
  expect(await Promise.race([at.opened.desk['phone.close']({ surveyId: at.surveyId }).then(() => at.opened.close()).then(() => 'ended'), waited(5_000)])).toBe('ended')
}, 30_000)
