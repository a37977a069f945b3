import { existsSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { Refusal } from '../../shared-logic/contract/refusal'
import { en } from '../../shared-logic/words/en'
import { sayRefusal } from '../../shared-logic/words/say-refusal'
import { dataFolder } from '../data-folder'
import { openDesk } from '../desk/open'
import { makePhoneDoor } from '../phone/phone-door'
import { readArguments, type HostArguments } from './arguments'
import { startHost } from './listen'
import { openBrowser } from './open-browser'

const words = en.doors.host
const rendererFolder = fileURLToPath(new URL('../renderer', import.meta.url))

const tell = (line: string): void => void process.stderr.write(`${line}\n`)

const leave = (line: string, code: number): never => {
  tell(line)
  process.exit(code)
}

/** Opens the yard, serves it and prints the address, alone on standard output. */
const run = async (wanted: HostArguments): Promise<void> => {
  if (!existsSync(join(rendererFolder, 'index.html'))) leave(words.notBuilt, 1)
  const onFault = (fault: unknown): void => console.error(words.failed, fault)
  const phoneDoor = makePhoneDoor({ rendererFolder, now: Date.now, onFault, standsAt: wanted.phoneOn })
  const opened = await openDesk(resolve(wanted.folder ?? dataFolder()), { phoneDoor })
  const host = await startHost({ opened, rendererFolder, port: wanted.port, now: Date.now, onFault })
  let closing = false
  const close = (): void => {
    if (closing) return
    closing = true
    tell(words.closing)
    void host.close().then(() => opened.close()).then(() => process.exit(0))
  }
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, close)
  process.stdout.write(`${host.address}\n`)
  if (wanted.open) openBrowser(host.addressForOnce(), () => tell(words.noBrowser))
}

const wanted = readArguments(process.argv.slice(2))
if (!wanted) leave(words.usage, 2)
else
  run(wanted).catch((fault: unknown) => {
    if (fault instanceof Refusal) leave(sayRefusal(en, fault.data), 1)
    if (fault instanceof Error && 'code' in fault && fault.code === 'EADDRINUSE') leave(words.portTaken, 1)
    console.error(words.failed, fault)
    process.exit(1)
  })
