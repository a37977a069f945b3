import { spawn, spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'

const bundle = fileURLToPath(new URL('../../out/main/host.js', import.meta.url))
let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'bunkwright-built-host-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

interface Running {
  readonly address: string
  /** Ends it by a signal and answers its code and all it wrote. */
  readonly end: (signal: NodeJS.Signals) => Promise<{ readonly code: number | null; readonly out: string }>
}

const start = async (yard: string): Promise<Running> => {
  const child = spawn(process.execPath, [bundle, '--no-open', '--folder', join(folder, yard)], { stdio: ['ignore', 'pipe', 'pipe'] })
  let out = ''
  const left = new Promise<number | null>((resolve) => child.once('exit', resolve))
  const address = await new Promise<string>((resolve, reject) => {
    child.stdout.on('data', (chunk: Buffer) => {
      out += chunk.toString()
      if (out.includes('\n')) resolve(out.trim())
    })
    child.once('exit', () => reject(new Error('it left before it printed an address')))
  })
  return { address, end: async (signal) => (child.kill(signal), { code: await left, out }) }
}

const runToEnd = (...args: string[]) => spawnSync(process.execPath, [bundle, '--no-open', ...args], { encoding: 'utf8', timeout: 20_000 })

describe('the built host', () => {
  it.each(['SIGTERM', 'SIGINT'] as const)('prints its address alone, answers there, and closes the yard on %s', async (signal) => {
    const yard = `yard-${signal}`
    const host = await start(yard)
    expect(host.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/\?token=[\w-]{43}$/)
    const entered = await fetch(host.address, { redirect: 'manual' })
    const cookie = entered.headers.get('set-cookie')?.split(';')[0] ?? ''
    const page = await fetch(new URL('/', host.address), { headers: { cookie } })
    expect(await page.text()).toContain('<div id="root">')
    expect(existsSync(join(folder, yard, 'yard.open'))).toBe(true)
    const { code, out } = await host.end(signal)
    expect(code).toBe(0)
    expect(out.split('\n')).toEqual([host.address, ''])
    expect(existsSync(join(folder, yard, 'yard.open'))).toBe(false)
  })

  it('refuses a yard that another copy has open, in one sentence, exit code 1', async () => {
    const host = await start('shared')
    const second = runToEnd('--folder', join(folder, 'shared'))
    expect([second.status, second.stdout]).toEqual([1, ''])
    expect(second.stderr.trim().split('\n')).toHaveLength(1)
    await host.end('SIGTERM')
  })

  it('refuses a port that is taken, exit code 1, and leaves the yard free', async () => {
    const host = await start('first')
    const second = runToEnd('--folder', join(folder, 'second'), '--port', new URL(host.address).port)
    expect(second.status).toBe(1)
    expect(second.stderr).toContain('Another program uses that port')
    await host.end('SIGTERM')
    await (await start('second')).end('SIGTERM')
  })

  it.each([['--port', '70000'], ['--port', 'x'], ['--colour'], ['stray']])('called wrongly (%s %s) says how, exit code 2', (...args) => {
    const { status, stderr } = runToEnd(...args)
    expect(status).toBe(2)
    expect(stderr).toContain('Usage: npm start')
  })
})
