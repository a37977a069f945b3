import { app, session, type BrowserWindow } from 'electron'
import { basename, dirname, join, resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { dataFolder } from '../data-folder'
import type { OpenedDesk } from '../desk/open'
import { makePhoneDoor } from '../phone/phone-door'
import { answerWindow } from './ipc'
import { setMenu } from './menu'
import { denyDownloads, denyNavigation } from './navigation'
import { openOrExplain } from './open-or-explain'
import { denyNetwork, denyAllButCamera } from './permissions'
import { declareScheme, serveWindow } from './protocol'
import { openWindow } from './window'

/** Where the built parts lie. */
export interface BuiltParts {
  readonly rendererFolder: string
  readonly preload: string
}

/** The yard's folder as named on the command line; the system's place when none is. Chromium's own switches pass by. */
const wantedFolder = (args: readonly string[]): string => {
  const { values } = parseArgs({ args: [...args], options: { folder: { type: 'string' } }, strict: false, allowPositionals: true })
  return resolve(typeof values.folder === 'string' ? values.folder : dataFolder())
}

const tellFault = (fault: unknown): void => console.error(fault)

const show = (window: BrowserWindow | undefined): void => {
  if (!window || window.isDestroyed()) return
  if (window.isMinimized()) window.restore()
  window.focus()
}

/** Everything the window stands on, before it is there. */
const prepareSession = (opened: OpenedDesk, parts: BuiltParts): void => {
  denyAllButCamera(session.defaultSession)
  denyNetwork(session.defaultSession)
  denyDownloads(session.defaultSession)
  serveWindow(opened, parts.rendererFolder)
  answerWindow(opened, tellFault)
}

const run = async (folder: string, parts: BuiltParts): Promise<void> => {
  await app.whenReady()
  const opened = await openOrExplain(folder, { phoneDoor: makePhoneDoor({ rendererFolder: parts.rendererFolder, now: Date.now, onFault: tellFault }) })
  if (!opened) return app.exit(1)
  let closed = false
  app.on('will-quit', (event) => {
    if (closed) return
    event.preventDefault()
    void opened.close().catch(tellFault).then(() => {
      closed = true
      app.quit()
    })
  })
  prepareSession(opened, parts)
  setMenu(folder, process.platform, !app.isPackaged)
  let window = await openWindow(parts.preload)
  app.on('second-instance', () => show(window))
  app.on('activate', () => {
    if (!window.isDestroyed()) return show(window)
    void openWindow(parts.preload).then((next) => (window = next))
  })
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit()
  })
}

/** The desktop program, from its start to its end. One for each yard: a second start shows the first one's window. */
export const startProgram = (parts: BuiltParts): void => {
  const folder = wantedFolder(process.argv.slice(1))
  app.setPath('userData', join(dirname(folder), `${basename(folder)}-window`))
  if (!app.requestSingleInstanceLock()) return app.exit(0)
  declareScheme()
  denyNavigation()
  run(folder, parts).catch((fault: unknown) => {
    tellFault(fault)
    app.exit(1)
  })
}
