import { connect } from 'node:net'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { runDoor, type Door, type RunningDoor } from './running-door'

let at: RunningDoor
let door: Door
beforeEach(async () => {
  at = await runDoor()
  door = await at.openDoor()
})
afterEach(() => at.stop())

/** Asks from `localAddress` (127.0.0.0/8 is all this machine; RFC 1122, 3.2.1.3) over and over, on a new line whenever one is cut, and answers the statuses. */
const flood = async (localAddress: string, question: string, untilMs: number): Promise<number[]> => {
  const answers: number[] = []
  const one = (): Promise<void> =>
    new Promise((resolve) => {
      const socket = connect({ host: '127.0.0.1', port: door.port, localAddress }, () => socket.write(question))
      socket.on('data', (chunk: Buffer) => {
        const status = /^HTTP\/1\.1 (\d{3})/.exec(chunk.toString('latin1'))?.[1]
        if (status !== undefined) answers.push(Number(status))
        if (performance.now() < untilMs) socket.write(question)
        else socket.destroy()
      })
      socket.on('error', () => undefined)
      socket.on('close', () => resolve())
    })
  const lines = Array.from({ length: 8 }, async () => {
    while (performance.now() < untilMs) await one()
  })
  await Promise.all(lines)
  return answers
}

const waited = (ms: number): Promise<void> => new Promise((resolve) => { setTimeout(resolve, ms) })
const asking = (path: string, ...headers: string[]): string => [`GET ${path} HTTP/1.1`, `Host: 127.0.0.1:${door.port}`, ...headers, '', ''].join('\r\n')

it.each(['/checks', '/', '/no-such'])('who asks “%s” without end and without a session is soon not answered at all, and the phone is heard meanwhile', async (path) => {
  const cookie = await door.enter()
  const begun = performance.now()
  const answers = flood('127.0.0.2', asking(path), begun + 3_000)
  while (performance.now() < begun + 2_500) {
    expect((await door.ask('arrived', { headers: { cookie } })).status).toBe(200)
    await waited(200)
  }
  const { length } = await answers
  const goneSeconds = (performance.now() - begun) / 1_000
  expect(length).toBeGreaterThan(50)
  expect(length).toBeLessThanOrEqual(100 + 10 * goneSeconds)
})

it('another phone is let in from elsewhere meanwhile', async () => {
  const answers = flood('127.0.0.3', asking('/checks'), performance.now() + 2_000)
  await waited(1_000)
  expect(await door.pairFrom('127.0.0.4', door.secret)).toBe(200)
  await answers
})

it('a paired phone that asks without end is told to wait, and is heard again after', async () => {
  const cookie = await door.enter()
  const answers = await flood('127.0.0.1', asking('/arrived', `Cookie: ${cookie}`), performance.now() + 2_000)
  expect(new Set(answers)).toEqual(new Set([200, 429]))
  expect(answers.filter((status) => status === 200).length).toBeLessThanOrEqual(200 + 20 * 3)
  await expect.poll(() => door.ask('arrived', { headers: { cookie } }).then(({ status }) => status, () => 0), { timeout: 5_000 }).toBe(200)
  expect(at.faults).toEqual([])
})
