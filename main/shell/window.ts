import { BrowserWindow, dialog, nativeTheme } from 'electron'
import { en } from '../../shared-logic/words/en'
import { startAddress } from './address'

/** Paper by day and slate by night, so that the window does not flash before its page is there. */
const ground = (): string => (nativeTheme.shouldUseDarkColors ? '#1b2226' : '#faf8f3')

const mostRestarts = 3

/** A page that died is shown again, where the surveyor stood; one that keeps dying is left alone. */
const showAgainWhenGone = (window: BrowserWindow): void => {
  let restarts = 0
  window.webContents.on('render-process-gone', (_event, details) => {
    if (details.reason === 'clean-exit' || restarts >= mostRestarts || window.isDestroyed()) return
    restarts += 1
    void window.loadURL(startAddress)
  })
}

/** A page that holds its window would keep it open without a word: here it is asked. */
const askBeforeHeldIsLeft = (window: BrowserWindow): void => {
  const words = en.doors.shell
  window.webContents.on('will-prevent-unload', (event) => {
    const pressed = dialog.showMessageBoxSync(window, { type: 'question', title: words.title, message: words.leaveTitle, detail: words.leaveText, buttons: [words.leaveStay, words.leaveGo], defaultId: 0, cancelId: 0, noLink: true })
    // To prevent the preventing: the window goes.
    if (pressed === 1) event.preventDefault()
  })
}

/** The one window: isolated, sandboxed, without Node. `preload` is the file's path. */
export const openWindow = async (preload: string): Promise<BrowserWindow> => {
  const window = new BrowserWindow({
    title: en.doors.shell.title,
    width: 1280,
    height: 860,
    minWidth: 360,
    minHeight: 480,
    show: false,
    backgroundColor: ground(),
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      safeDialogs: true,
      /** The spelling checker fetches dictionaries from elsewhere. */
      spellcheck: false,
    },
  })
  window.once('ready-to-show', () => window.show())
  showAgainWhenGone(window)
  askBeforeHeldIsLeft(window)
  await window.loadURL(startAddress)
  return window
}
