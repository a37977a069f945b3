import { spawn } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** Tests and bench both run in the checkout's folder; the bench is bundled to another place than this file's. */
const bundle = join(process.cwd(), 'out', 'main', 'host.js')
const running = new Set<number>()
process.once('exit', () => {
  for (const pid of running) process.kill(pid, 'SIGKILL')
})

/** The built program as a process of its own, serving its window. */
export interface Program {
  /** With its token, as printed. */
  readonly address: string
  /** Ends it by a signal and waits until it has left. */
  readonly end: (signal: NodeJS.Signals) => Promise<void>
}

/** A program that left before it had an address; `said` is what it wrote on standard error. */
export class LeftEarly extends Error {
  constructor(readonly code: number | null, readonly said: string) {
    super(`the program left with code ${code}: ${said}`)
  }
}

export const startProgram = async (folder: string, more: readonly string[] = []): Promise<Program> => {
  const child = spawn(process.execPath, [bundle, '--no-open', '--folder', folder, ...more], { stdio: ['ignore', 'pipe', 'pipe'] })
  const { pid } = child
  if (pid !== undefined) running.add(pid)
  let said = ''
  child.stderr.on('data', (chunk: Buffer) => { said += chunk.toString() })
  const left = new Promise<number | null>((resolve) => child.once('close', (code) => {
    if (pid !== undefined) running.delete(pid)
    resolve(code)
  }))
  const address = await new Promise<string>((resolve, reject) => {
    let out = ''
    child.stdout.on('data', (chunk: Buffer) => {
      out += chunk.toString()
      if (out.includes('\n')) resolve(out.trim())
    })
    void left.then((code) => reject(new LeftEarly(code, said.trim())))
  })
  return {
    address,
    end: async (signal) => {
      child.kill(signal)
      await left
    },
  }
}

/** A folder for one yard, and the way to be rid of it. */
export const makeYardFolder = async (): Promise<{ readonly folder: string; readonly yard: string; readonly remove: () => Promise<void> }> => {
  const folder = await mkdtemp(join(tmpdir(), 'bunkwright-walk-'))
  return { folder, yard: join(folder, 'yard'), remove: () => rm(folder, { recursive: true, force: true }) }
}
