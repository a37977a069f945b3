import { spawn } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { atShare, type BenchLine } from './bench-line'

/** Built by `npm run bench`, which runs in the checkout's folder. */
const bundle = join(process.cwd(), 'out', 'main', 'host.js')
const budgetMs = 500
const runs = 7

/** From the start of the process to the first answer of the desk over HTTP, ms; the process is ended again. */
const startOnce = async (folder: string): Promise<number> => {
  const began = performance.now()
  const child = spawn(process.execPath, [bundle, '--no-open', '--folder', folder], { stdio: ['ignore', 'pipe', 'ignore'] })
  const left = new Promise((resolve) => child.once('exit', resolve))
  try {
    const address = await new Promise<string>((resolve, reject) => {
      child.stdout.once('data', (chunk: Buffer) => resolve(chunk.toString().trim()))
      child.once('exit', () => reject(new Error('the host left before it printed an address')))
    })
    const { origin } = new URL(address)
    const entered = await fetch(address, { redirect: 'manual' })
    const cookie = entered.headers.get('set-cookie')?.split(';')[0] ?? ''
    const answer = await fetch(`${origin}/api/rigs.list`, { method: 'POST', body: '{}', headers: { origin, cookie, 'content-type': 'application/json' } })
    const ms = performance.now() - began
    if (!answer.ok) throw new Error(`the desk answered ${answer.status}`)
    return ms
  } finally {
    child.kill('SIGTERM')
    await left
  }
}

/** Start of the built host on a yard that is there, to its first answer: the middle one of seven, after one to warm the disk. */
export const benchStart = async (): Promise<BenchLine[]> => {
  const folder = await mkdtemp(join(tmpdir(), 'bunkwright-start-'))
  try {
    await startOnce(folder)
    const times: number[] = []
    for (let run = 0; run < runs; run += 1) times.push(await startOnce(folder))
    const value = atShare(times, 0.5)
    return [{ name: 'start to first answered request', value: Math.round(value), unit: 'ms', budget: `under ${budgetMs} ms`, ok: value < budgetMs }]
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}
