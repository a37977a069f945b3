import { mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises'
import { request } from 'node:http'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openDesk, type OpenedDesk } from '../../../main/desk/open'
import { makePhoneDoor } from '../../../main/phone/phone-door'
import { inputHeader } from '../../../shared-logic/contract/input-header'
import type { PhoneState } from '../../../shared-logic/phone/phone-state'
import type { Photograph } from '../../../shared-logic/survey/records'
import { plainRig } from '../host/running-host'

/** A yard with one survey, a door for a phone before it, and the means to speak to that door in any way. */
export interface RunningDoor {
  readonly opened: OpenedDesk
  readonly surveyId: string
  readonly folder: string
  readonly faults: unknown[]
  readonly openDoor: (more?: { readonly minutes?: number; readonly isSecure?: boolean; readonly surveyId?: string }) => Promise<Door>
  readonly kept: () => Promise<Photograph[]>
  /** Files on the shelf that stand under no name of an original. */
  readonly halves: () => Promise<string[]>
  readonly newSurvey: () => Promise<string>
  readonly stop: () => Promise<void>
}

export interface Door {
  readonly state: PhoneState
  readonly origin: string
  readonly port: number
  readonly secret: string
  readonly ask: (path: string, init?: Omit<RequestInit, 'headers'> & { readonly headers?: Record<string, string> }) => Promise<Response>
  readonly pair: (secret: string, headers?: Record<string, string>) => Promise<Response>
  /** Pairs as a machine at another address of this one would (127.0.0.0/8, RFC 1122, 3.2.1.3), and answers the status. */
  readonly pairFrom: (localAddress: string, secret: string) => Promise<number>
  /** Pairs and answers the cookie. */
  readonly enter: () => Promise<string>
  readonly send: (cookie: string, pictureId: string, bytes: Uint8Array, more?: { readonly about?: object; readonly headers?: Record<string, string> }) => Promise<Response>
  readonly raw: (text: string | Uint8Array, waitMs?: number) => Promise<string>
}

export const pictureId = (number: number): string => `picture-${String(number).padStart(16, '0')}`

/** Speaks to the door that state describes. */
export const speakTo = (state: PhoneState): Door => {
  const { origin, port } = new URL(state.address)
  const secret = new URL(state.pairingAddress ?? state.address).hash.slice(1)
  // A line of its own each time: the next door stands at the same address, and a line kept from the last would be dead.
  const ask: Door['ask'] = (path, { headers = {}, ...init } = {}) => fetch(`${origin}/${path}`, { redirect: 'manual', ...init, headers: { connection: 'close', ...headers } })
  const pair: Door['pair'] = (given, headers = {}) => ask('pair', { method: 'POST', headers: { origin, 'content-type': 'application/json', ...headers }, body: JSON.stringify({ secret: given, phoneName: 'A phone' }) })
  return {
    state, origin, secret, ask, pair, port: Number(port),
    pairFrom: (localAddress, given) =>
      new Promise((resolve, reject) => {
        const asking = request(`${origin}/pair`, { method: 'POST', localAddress, agent: false, headers: { origin, 'content-type': 'application/json' } }, (answer) => {
          answer.resume()
          resolve(answer.statusCode ?? 0)
        })
        asking.on('error', reject)
        asking.end(JSON.stringify({ secret: given, phoneName: 'Another phone' }))
      }),
    enter: async () => (await pair(secret)).headers.get('set-cookie')?.split(';')[0] ?? '',
    send: (cookie, id, bytes, { about = {}, headers = {} } = {}) =>
      ask('photographs', {
        method: 'POST', body: new Uint8Array(bytes),
        headers: { origin, cookie, 'content-type': 'application/octet-stream', [inputHeader]: encodeURIComponent(JSON.stringify({ pictureId: id, fileName: `${id}.jpg`, ...about })), ...headers },
      }),
    raw: (text, waitMs = 3_000) =>
      new Promise((resolve) => {
        const chunks: Buffer[] = []
        const socket = connect(Number(port), '127.0.0.1', () => socket.write(text))
        const done = (): void => resolve(Buffer.concat(chunks).toString('latin1'))
        socket.on('data', (chunk) => chunks.push(chunk))
        socket.on('close', done)
        socket.on('error', done)
        setTimeout(() => socket.destroy(), waitMs).unref()
      }),
  }
}

const makeWindow = async (folder: string): Promise<string> => {
  const renderer = join(folder, 'renderer')
  await mkdir(join(renderer, 'assets'), { recursive: true })
  await writeFile(join(renderer, 'index.html'), '<!doctype html><title>the window</title><script src="./assets/index-AbCd1234.js"></script>')
  await writeFile(join(renderer, 'phone.html'), '<!doctype html><title>the phone</title><script src="./assets/phone-AbCd1234.js"></script>')
  await writeFile(join(renderer, 'assets', 'index-AbCd1234.js'), 'export {}')
  await writeFile(join(renderer, 'assets', 'phone-AbCd1234.js'), 'import "./shared-AbCd1234.js"')
  await writeFile(join(renderer, 'assets', 'shared-AbCd1234.js'), 'export {}')
  await writeFile(join(folder, 'secret.json'), '{"secret":true}')
  return renderer
}

export const runDoor = async (now: () => number = Date.now): Promise<RunningDoor> => {
  const folder = await mkdtemp(join(tmpdir(), 'bunkwright-phone-'))
  const faults: unknown[] = []
  const onFault = (fault: unknown): void => void faults.push(fault)
  const opened = await openDesk(join(folder, 'yard'), { onFault, phoneDoor: makePhoneDoor({ rendererFolder: await makeWindow(folder), now, onFault, standsAt: '127.0.0.1' }) })
  const { desk } = opened
  const { today } = await desk['yard.about']({})
  const newSurvey = async (): Promise<string> => {
    const { id: rigId } = await desk['rigs.save']({ rig: plainRig(`Rig ${Math.random()}`) })
    return (await desk['surveys.start']({ rigId, purpose: 'sale', surveyDate: today, ruleBook: 'us' })).id
  }
  const surveyId = await newSurvey()
  return {
    opened, surveyId, folder, faults, newSurvey,
    openDoor: async ({ minutes = 60, isSecure = false, surveyId: other = surveyId } = {}) => speakTo(await desk['phone.open']({ surveyId: other, minutes, isSecure })),
    kept: async () => (await desk['surveys.get']({ surveyId })).photographs,
    halves: async () => (await readdir(join(folder, 'yard', 'photographs'), { recursive: true, withFileTypes: true }).catch(() => [])).filter((entry) => entry.isFile() && !/^[0-9a-f]{64}\.\w+$/.test(entry.name)).map(({ name }) => name),
    stop: async () => {
      await opened.close()
      await rm(folder, { recursive: true, force: true })
    },
  }
}
