import { mkdtemp, mkdir, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import type { ExitCode } from '../../../main/cli/command'
import { runCommandLine } from '../../../main/cli/run-command-line'

/** The day on which these tests stand. */
export const today = new Date('2026-06-15T12:00:00Z')

export interface Ran {
  readonly code: ExitCode
  readonly out: string
  readonly error: string
}

/** A folder to work in, and the command line in it. */
export interface Workplace {
  readonly folder: string
  readonly run: (...args: string[]) => Promise<Ran>
  readonly put: (name: string, content: unknown) => Promise<string>
  readonly clear: () => Promise<void>
}

export const openWorkplace = async (): Promise<Workplace> => {
  const folder = await mkdtemp(join(tmpdir(), 'bunkwright-cli-'))
  return {
    folder,
    run: async (...args) => {
      const out: string[] = []
      const error: string[] = []
      const code = await runCommandLine(args, { out: (text) => out.push(text), error: (text) => error.push(text), workingFolder: folder, now: () => today })
      return { code, out: out.join('\n'), error: error.join('\n') }
    },
    put: async (name, content) => {
      const path = join(folder, name)
      await mkdir(dirname(path), { recursive: true })
      await writeFile(path, content instanceof Uint8Array || typeof content === 'string' ? content : JSON.stringify(content))
      return path
    },
    clear: () => rm(folder, { recursive: true, force: true }),
  }
}

/** A tandem with oil-bath hubs: one hub low, one milky but overruled, one not seen. */
export const tandem = {
  rig: { name: 'Tern', trailer: { frame: 'galvanized steel', axleCount: 2, hubLubrication: 'oil bath', brakes: 'none' } },
  purpose: 'yearly',
  surveyDate: '2026-06-01',
  surveyor: { name: 'A. Surveyor' },
  ruleBook: 'us',
  answers: [
    { check: 'hubs.oil-level', position: 'axle 1 left', values: { level: 0.75 } },
    { check: 'hubs.oil-level', position: 'axle 1 right', values: { level: 0.25 } },
    { check: 'hubs.oil-condition', position: 'axle 1 left', values: { condition: 'milky' }, overrule: { verdict: 'advisory', reason: 'wash water under the cap, oil below it clear' } },
    { check: 'hubs.oil-level', position: 'axle 2 left', aside: { as: 'not seen', reason: 'cap painted over' } },
  ],
}
