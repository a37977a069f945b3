import { spawn, type ChildProcess } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { request as ask } from 'node:http'
import { request as askSecurely } from 'node:https'
import { connect, type Socket } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import sharp from 'sharp'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { OutputOf, ProcedureName } from '../../shared-logic/contract/contract'
import { photograph, plainRig } from '../main/host/running-host'
import { pictureId, speakTo, type Door } from '../main/phone/running-door'

/** The built program in a process of its own, with both its doors: what is done to the one for a phone is measured from outside. */
const bundle = fileURLToPath(new URL('../../out/main/host.js', import.meta.url))
let folder: string
let child: ChildProcess
let said = ''
let address = ''
let cookie = ''
let surveyId = ''

/** On SIGUSR2 it writes what its heap holds after the rubbish is out. */
const tellsHeap = 'data:text/javascript,process.on("SIGUSR2",()=>{globalThis.gc();process.stderr.write("heap:"+process.memoryUsage().heapUsed+";")})'

const call = async <Name extends ProcedureName>(name: Name, input: unknown): Promise<OutputOf<Name>> => {
  const { origin } = new URL(address)
  const answer = await fetch(`${origin}/api/${name}`, { method: 'POST', body: JSON.stringify(input), headers: { cookie, origin, 'content-type': 'application/json' } })
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the desk's own answer, by the contract
  return ((await answer.json()) as { value: OutputOf<Name> }).value
}

/** `largestFile`: what the system lets it write into one file, in the blocks of 512 bytes of POSIX's ulimit. */
const start = async (largestFile = 'unlimited'): Promise<void> => {
  const program = ['--expose-gc', '--import', tellsHeap, bundle, '--no-open', '--folder', join(folder, 'yard'), '--phone-on', '127.0.0.1']
  child = spawn('sh', ['-c', `ulimit -f ${largestFile}; exec "$0" "$@"`, process.execPath, ...program], { stdio: ['ignore', 'pipe', 'pipe'] })
  const { promise, resolve, reject } = Promise.withResolvers<string>()
  let out = ''
  child.stdout?.on('data', (chunk: Buffer) => {
    out += chunk.toString()
    if (out.includes('\n')) resolve(out.trim())
  })
  child.stderr?.on('data', (chunk: Buffer) => { said += chunk.toString() })
  child.once('exit', () => reject(new Error(`it left before it printed an address: ${said}`)))
  address = await promise
  child.stdout?.on('data', (chunk: Buffer) => { said += chunk.toString() })
  cookie = (await fetch(address, { redirect: 'manual' })).headers.get('set-cookie')?.split(';')[0] ?? ''
  const { today } = await call('yard.about', {})
  const { id: rigId } = await call('rigs.save', { rig: plainRig('A rig') })
  surveyId = (await call('surveys.start', { rigId, purpose: 'sale', surveyDate: today, ruleBook: 'us' })).id
}

const openDoor = async (isSecure = false): Promise<Door> => speakTo(await call('phone.open', { surveyId, minutes: 60, isSecure }))
const kept = async () => (await call('surveys.get', { surveyId })).photographs
const residentBytes = (): number => Number(/VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${child.pid ?? 0}/status`, 'utf8'))?.[1]) * 1_024
const heapBytes = async (): Promise<number> => {
  const before = said.length
  child.kill('SIGUSR2')
  await expect.poll(() => said.slice(before)).toMatch(/heap:\d+;/)
  return Number(/heap:(\d+);/.exec(said.slice(before))?.[1])
}
const end = async (): Promise<number> => {
  const begun = performance.now()
  const left = new Promise((resolve) => { child.once('exit', resolve) })
  child.kill('SIGTERM')
  await left
  return performance.now() - begun
}

// 127.0.0.0/8 is all this machine. Source: RFC 1122, section 3.2.1.3.
const line = (port: number, from: string, text: string): Promise<Socket> =>
  new Promise((resolve) => {
    const socket = connect({ host: '127.0.0.1', port, localAddress: from }, () => socket.write(text))
    socket.on('error', () => undefined)
    socket.on('connect', () => resolve(socket))
    socket.on('close', () => resolve(socket))
  })

/** Lines the system holds open at the program's side: a sender that does not read does not see that its own was cut. State 01 is ESTABLISHED. Source: proc_pid_net(5). */
const openLines = (port: number): number => {
  const local = `:${port.toString(16).toUpperCase().padStart(4, '0')}`
  return readFileSync('/proc/net/tcp', 'utf8').split('\n').filter((row) => {
    const [, ours, , state] = row.trim().split(/\s+/)
    return ours?.endsWith(local) === true && state === '01'
  }).length
}

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'bunkwright-phone-door-'))
  said = ''
})
afterEach(async () => {
  if (child.exitCode === null) await end()
  rmSync(folder, { recursive: true, force: true })
})

describe.runIf(process.platform === 'linux')('the phone’s door of the built program', () => {
  it.each([false, true])('a thousand lines from a hundred addresses, some silent, some slow, some greedy: few are held, memory stays, the desktop answers, and the phone is heard again after (HTTPS: %s)', async (isSecure) => {
    await start()
    const door = await openDoor(isSecure)
    const host = `Host: 127.0.0.1:${door.port}\r\n`
    const texts = ['', `GET / HTTP/1.1\r\n${host}X-Slow: `, `POST /pair HTTP/1.1\r\n${host}Origin: ${door.origin}\r\nContent-Type: application/json\r\nContent-Length: 3000\r\n\r\n{`, `GET / HTTP/1.1\r\n${host}\r\n`.repeat(500), '\u0016\u0003\u0001'.repeat(2_000)]
    await call('yard.about', {})
    const [resident, heap] = [residentBytes(), await heapBytes()]
    const sockets = Promise.all(Array.from({ length: 1_000 }, (_, index) => line(door.port, `127.0.1.${1 + (index % 100)}`, texts[index % texts.length] ?? '')))
    const took: number[] = []
    let most = resident
    for (let look = 0; look < 30; look += 1) {
      const begun = performance.now()
      await call('yard.about', {})
      took.push(performance.now() - begun)
      most = Math.max(most, residentBytes())
      await new Promise((resolve) => { setTimeout(resolve, 100) })
    }
    await sockets
    const held = openLines(door.port)
    const grown = { held, worstAnswerMs: Math.round(Math.max(...took)), residentMegabytes: Math.round((most - resident) / 1e6), heapMegabytes: Math.round(((await heapBytes()) - heap) / 1e5) / 10 }
    console.info(`1,000 lines, HTTPS ${isSecure}:`, JSON.stringify(grown))
    expect(grown.held).toBeLessThanOrEqual(64)
    expect(grown.residentMegabytes).toBeLessThan(150)
    expect(grown.heapMegabytes).toBeLessThan(20)
    expect(grown.worstAnswerMs).toBeLessThan(5_000)
    // They are cut without a word from their side, and a phone comes in.
    const asked = isSecure ? askSecurely : ask
    const page = (): Promise<number> => new Promise((resolve) => {
      const asking = asked(`${door.origin}/`, { agent: false, localAddress: '127.0.2.1', rejectUnauthorized: false }, (answer) => {
        answer.resume()
        resolve(answer.statusCode ?? 0)
      })
      asking.on('error', () => resolve(0))
      asking.end()
    })
    await expect.poll(page, { timeout: 30_000, interval: 500 }).toBe(200)
    for (const socket of await sockets) socket.destroy()
  }, 90_000)

  it('a disk that takes no more is said in a sentence, leaves nothing half-stored, and a smaller picture goes in after', async () => {
    await start('40960')
    const door = await openDoor()
    const session = await door.enter()
    const large = await sharp({ create: { width: 3_000, height: 2_600, channels: 3, background: '#607080' } }).png({ compressionLevel: 0 }).toBuffer()
    expect(large.byteLength).toBeGreaterThan(40_960 * 512)
    const refused = await door.send(session, pictureId(1), large)
    expect(refused.status).toBe(422)
    expect(await refused.json()).toMatchObject({ refusal: { code: 'photograph.disk-full' }, sentence: expect.stringMatching(/disk/) })
    expect(await kept()).toEqual([])
    const files = readdirSync(join(folder, 'yard', 'photographs'), { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile())
    expect(files.map(({ name }) => name)).toEqual([])
    expect((await door.send(session, pictureId(2), await photograph(2))).status).toBe(200)
    expect(await kept()).toHaveLength(1)
  }, 60_000)

  it('the program ends at once though lines are held, and has written neither secret nor session', async () => {
    await start()
    const door = await openDoor(true)
    const held = await Promise.all(['127.0.3.1', '127.0.3.2'].map((from) => line(door.port, from, '')))
    const next = await openDoor()
    const session = await next.enter()
    held.push(await line(next.port, '127.0.3.3', 'GET / HTTP/1.1\r\n'))
    await (await next.ask(next.secret, { headers: { cookie: session } })).text()
    expect(await end()).toBeLessThan(3_000)
    expect(child.exitCode).toBe(0)
    expect(existsSync(join(folder, 'yard', 'yard.open'))).toBe(false)
    for (const secret of [door.secret, next.secret, session.split('=')[1] ?? '']) {
      expect(secret).toHaveLength(43)
      expect(said).not.toContain(secret)
    }
    for (const socket of held) socket.destroy()
  }, 30_000)
})
