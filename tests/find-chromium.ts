import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'

const onThePath = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome', 'microsoft-edge', 'brave-browser']

const usualPlaces: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  darwin: ['/Applications/Google Chrome.app/Contents/MacOS/Google Chrome', '/Applications/Chromium.app/Contents/MacOS/Chromium', '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge'],
  win32: ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((name) => {
    const folder = process.env[name]
    return folder === undefined ? [] : [join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'), join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe')]
  }),
}

const canRun = (path: string): boolean => {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

/**
 * A Chromium or a browser built on it, by the name in `BUNKWRIGHT_CHROMIUM`, on the path, or in the system's usual
 * places; undefined where none is there.
 */
export const findChromium = (): string | undefined => {
  const named = process.env['BUNKWRIGHT_CHROMIUM']
  if (named !== undefined && named !== '') return canRun(named) ? named : undefined
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '')
  return [...folders.flatMap((folder) => onThePath.map((name) => join(folder, name))), ...(usualPlaces[process.platform] ?? [])].find(canRun)
}

/** Flags with which a browser runs without a screen, as root too, and asks nothing of any network. */
export const chromiumFlags: readonly string[] = [
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
  '--disable-gpu', '--disable-background-networking', '--disable-component-update', '--disable-sync', '--no-first-run',
]
