import { mkdtemp, mkdir, rm, symlink, writeFile } from 'node:fs/promises'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { openDesk, type OpenedDesk } from '../../../main/desk/open'
import { startHost, type Host } from '../../../main/host/listen'
import type { Rig } from '../../../shared-logic/rig/rig'

/** A host on a yard of its own, with a small window folder, and the means to speak to it in any wrong way. */
export interface RunningHost {
  readonly opened: OpenedDesk
  readonly host: Host
  readonly origin: string
  readonly port: number
  readonly cookie: string
  readonly folder: string
  readonly faults: unknown[]
  /** A call as the window makes it; `headers` in the place of what it would send. */
  readonly call: (name: string, input: unknown, headers?: Record<string, string>) => Promise<Response>
  readonly get: (path: string, headers?: Record<string, string>) => Promise<Response>
  /** Sends bytes as they are and answers all that comes back until the line is cut. */
  readonly raw: (text: string, waitMs?: number) => Promise<string>
  readonly stop: () => Promise<void>
}

const raw = (port: number, text: string, waitMs: number): Promise<string> =>
  new Promise((resolve) => {
    const chunks: Buffer[] = []
    const socket = connect(port, '127.0.0.1', () => socket.write(text))
    const done = (): void => resolve(Buffer.concat(chunks).toString('latin1'))
    socket.on('data', (chunk) => chunks.push(chunk))
    socket.on('close', done)
    socket.on('error', done)
    setTimeout(() => socket.destroy(), waitMs).unref()
  })

export const plainRig = (name: string): Rig => ({ name, trailer: { axleCount: 1, brakes: 'none', frame: 'aluminium' } })

/** A small photograph; another seed, another picture. */
export const photograph = (seed: number): Promise<Buffer> =>
  sharp({ create: { width: 64, height: 48, channels: 3, background: { r: seed % 256, g: 90, b: 160 } } }).jpeg().toBuffer()

const makeWindow = async (folder: string): Promise<string> => {
  const renderer = join(folder, 'renderer')
  await mkdir(join(renderer, 'assets'), { recursive: true })
  await writeFile(join(renderer, 'index.html'), '<!doctype html><title>the window</title>')
  await writeFile(join(renderer, 'assets', 'index-AbCd1234.js'), 'export {}')
  await writeFile(join(renderer, 'notes.secret'), 'of no known type')
  await writeFile(join(folder, 'secret.json'), '{"secret":true}')
  await symlink(join(folder, 'secret.json'), join(renderer, 'link.json'))
  return renderer
}

export const runHost = async (now: () => number = Date.now): Promise<RunningHost> => {
  const folder = await mkdtemp(join(tmpdir(), 'bunkwright-host-'))
  const faults: unknown[] = []
  const opened = await openDesk(join(folder, 'yard'), { onFault: (fault) => faults.push(fault) })
  const host = await startHost({ opened, rendererFolder: await makeWindow(folder), port: 0, now, onFault: (fault) => faults.push(fault) })
  const { origin, port } = new URL(host.address)
  const entered = await fetch(host.address, { redirect: 'manual' })
  const cookie = entered.headers.get('set-cookie')?.split(';')[0] ?? ''
  return {
    opened, host, origin, cookie, folder, faults, port: Number(port),
    call: (name, input, headers = {}) =>
      fetch(`${origin}/api/${name}`, { method: 'POST', body: JSON.stringify(input), headers: { cookie, origin, 'content-type': 'application/json', ...headers } }),
    get: (path, headers = {}) => fetch(`${origin}/${path}`, { headers: { cookie, ...headers }, redirect: 'manual' }),
    raw: (text, waitMs = 3_000) => raw(Number(port), text, waitMs),
    stop: async () => {
      await host.close()
      await opened.close()
      await rm(folder, { recursive: true, force: true })
    },
  }
}
