import { en } from '../../shared-logic/words/en'
import { runCommandLine } from './run-command-line'

/** A reader that closes early (`| head`) is no fault of ours. */
process.stdout.on('error', () => process.exit(0))

runCommandLine(process.argv.slice(2), {
  out: (text) => void process.stdout.write(`${text}\n`),
  error: (text) => void process.stderr.write(`${text}\n`),
  workingFolder: process.cwd(),
  now: () => new Date(),
}).then(
  (code) => (process.exitCode = code),
  (fault: unknown) => {
    console.error(en.commandLine.failed, fault)
    process.exitCode = 1
  },
)
