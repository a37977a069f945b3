import { connect } from 'node:net'
import { Worker } from 'node:worker_threads'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { inputHeader } from '../../../shared-logic/contract/input-header'
import { pictureId, runDoor, type RunningDoor } from './running-door'

let at: RunningDoor
beforeEach(async () => {
  at = await runDoor()
})
afterEach(() => at.stop())

/**
 * A sender with a thread to itself, as a phone is apart from the desktop: in the door's own thread it would take turns
 * with it, and always hear the answer before it sends on. Its line is asked to be kept, as a browser's is.
 */
const sender = `
  const { request, Agent } = require('node:http')
  const { parentPort, workerData: { url, headers, byteCount } } = require('node:worker_threads')
  const tell = (heard) => { parentPort.postMessage(heard); process.exit() }
  const sending = request(url, { method: 'POST', agent: new Agent({ keepAlive: true }), headers: { ...headers, 'content-length': byteCount } }, (answer) => {
    let text = ''
    answer.on('data', (chunk) => { text += chunk })
    answer.on('error', (error) => tell('nothing: ' + error.code))
    answer.on('end', () => tell(answer.statusCode + ' ' + text))
  })
  sending.on('error', (error) => tell('nothing: ' + error.code))
  const chunk = Buffer.alloc(1_000_000)
  let sent = 0
  const go = () => {
    while (sent < byteCount) {
      sent += chunk.byteLength
      if (!sending.write(chunk)) return sending.once('drain', go)
    }
    sending.end()
  }
  go()`

/** Really sends so many bytes, as fast as they are taken, and answers what was heard; 'nothing' when the line broke first. */
const sendAll = (origin: string, headers: Record<string, string>, byteCount: number): Promise<string> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(sender, { eval: true, workerData: { url: `${origin}/photographs`, headers: { origin, 'content-type': 'application/octet-stream', ...headers }, byteCount } })
    worker.on('message', resolve)
    worker.on('error', reject)
  })

const about = { [inputHeader]: encodeURIComponent(JSON.stringify({ pictureId: pictureId(1), fileName: 'a.jpg' })) }

it('300 MB that are really sent hear why they are not taken, each time, and nothing of it is kept', async () => {
  const door = await at.openDoor()
  const cookie = await door.enter()
  for (let time = 0; time < 8; time += 1) expect(await sendAll(door.origin, { cookie, ...about }, 300_000_000)).toMatch(/^413 .*larger than 110 MB/)
  expect(await at.halves()).toEqual([])
}, 120_000)

it('a picture sent with no session, or by a phone whose door has closed, hears so, each time', async () => {
  const door = await at.openDoor()
  for (let time = 0; time < 8; time += 1) expect(await sendAll(door.origin, about, 20_000_000)).toMatch(/^401 .*not let in/)
  const cookie = await door.enter()
  await at.opened.desk['phone.close']({ surveyId: at.surveyId })
  for (let time = 0; time < 4; time += 1) expect(await sendAll(door.origin, { cookie, ...about }, 20_000_000)).toMatch(/^410 .*closed this door/)
}, 60_000)

it('who never stops sending is cut off all the same', async () => {
  const door = await at.openDoor()
  const socket = connect(door.port, '127.0.0.1')
  socket.on('error', () => undefined)
  let heard = ''
  socket.on('data', (chunk: Buffer) => { heard += chunk.toString() })
  socket.write(`POST /photographs HTTP/1.1\r\nHost: 127.0.0.1:${door.port}\r\nOrigin: ${door.origin}\r\nContent-Type: application/octet-stream\r\nContent-Length: 100000000\r\n\r\n`)
  const drip = setInterval(() => socket.write('x'.repeat(10_000)), 200)
  const begun = performance.now()
  await new Promise((resolve) => { socket.on('close', resolve) })
  clearInterval(drip)
  expect(heard).toMatch(/^HTTP\/1\.1 401 /)
  expect(performance.now() - begun).toBeLessThan(30_000)
}, 40_000)
