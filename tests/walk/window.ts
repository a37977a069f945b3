import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core'
import { contract, type InputOf, type OutputOf, type ProcedureName } from '../../shared-logic/contract/contract'
import { replySchema } from '../../shared-logic/contract/reply'
import { chromiumFlags, findChromium } from '../find-chromium'

/** `flags` beside those that every browser here runs with. */
export const openBrowser = (flags: readonly string[] = []): Promise<Browser> => {
  const executablePath = findChromium()
  if (executablePath === undefined) throw new Error('no Chromium on this machine')
  return chromium.launch({ executablePath, args: [...chromiumFlags, ...flags] })
}

/** One window of the program. `complaints` are what its console and its policy had to say; there should be none. */
export interface ProgramWindow {
  readonly page: Page
  readonly complaints: string[]
  /** Asks the desk from beside the window: what is true there, to compare with what the window says. */
  readonly ask: <Name extends ProcedureName>(name: Name, input: InputOf<Name>) => Promise<OutputOf<Name>>
  readonly close: () => Promise<void>
}

export const openWindow = async (browser: Browser, address: string, options: BrowserContextOptions = {}): Promise<ProgramWindow> => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, permissions: ['clipboard-read', 'clipboard-write'], reducedMotion: 'reduce', ...options })
  context.setDefaultTimeout(30_000)
  const page = await context.newPage()
  const complaints: string[] = []
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text())
  })
  page.on('pageerror', (error) => complaints.push(String(error)))
  await page.goto(address)
  const { origin } = new URL(address)
  const ask = async <Name extends ProcedureName>(name: Name, input: InputOf<Name>): Promise<OutputOf<Name>> => {
    const response = await context.request.post(`${origin}/api/${name}`, { data: input, headers: { origin } })
    const reply = replySchema.parse(await response.json())
    if (!reply.ok) throw new Error(`${name} was refused: ${reply.refusal.code}`)
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- parsed by the procedure's own schema
    return contract[name].output.parse(reply.value) as OutputOf<Name>
  }
  return { page, complaints, ask, close: () => context.close() }
}
