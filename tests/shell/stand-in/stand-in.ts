import { EventEmitter } from 'node:events'

/**
 * Stands in for the `electron` module, so that the built main bundle runs under plain Node. It records what main asks
 * of Electron and lets a test play Electron's part. It proves our side only: nothing of Electron's own sandbox,
 * privileges, menus and dialogs.
 */

type Handler = (event: unknown, ...args: unknown[]) => unknown

interface Preventable {
  prevented: boolean
  readonly preventDefault: () => void
}

export const preventable = (): Preventable => {
  const event = { prevented: false, preventDefault: () => void (event.prevented = true) }
  return event
}

export const record = {
  invoked: [] as string[],
  windows: [] as BrowserWindow[],
  handlers: new Map<string, Handler>(),
  protocols: new Map<string, (request: Request) => Promise<Response>>(),
  privileged: [] as unknown[],
  menu: undefined as MenuItem[] | undefined,
  opened: [] as string[],
  dialogs: [] as Record<string, unknown>[],
  /** What a person presses, dialog by dialog; the cancelling button when none is left. */
  presses: [] as number[],
  exits: [] as number[],
  userData: '',
  lockIsFree: true,
  /** What the system was asked for on a person's behalf, and what it answers. */
  askedOfSystem: [] as string[],
  systemAllows: async (): Promise<boolean> => true,
}

interface MenuItem {
  readonly label?: string
  readonly role?: string
  readonly click?: () => void
  readonly submenu?: MenuItem[]
}

class App extends EventEmitter {
  readonly isPackaged = true
  isReady = false
  whenReady = async (): Promise<void> => {
    this.isReady = true
    record.invoked.push('ready')
  }
  requestSingleInstanceLock = (): boolean => record.lockIsFree
  setPath = (_name: string, path: string): void => void (record.userData = path)
  exit = (code = 0): void => void record.exits.push(code)
  quit = (): void => {
    const event = preventable()
    this.emit('will-quit', event)
    if (!event.prevented) record.exits.push(0)
  }
}
export const app = new App()

export class WebContents extends EventEmitter {
  openHandler: ((details: { url: string }) => { action: string }) | undefined
  readonly downloads: string[] = []
  setWindowOpenHandler = (handler: (details: { url: string }) => { action: string }): void => void (this.openHandler = handler)
  downloadURL = (url: string): void => void this.downloads.push(url)
}

export class BrowserWindow extends EventEmitter {
  readonly webContents = new WebContents()
  readonly loaded: string[] = []
  shown = false
  focused = 0
  constructor(readonly options: Record<string, unknown> & { readonly webPreferences: Record<string, unknown> }) {
    super()
    record.windows.push(this)
    app.emit('web-contents-created', {}, this.webContents)
  }
  loadURL = async (url: string): Promise<void> => void this.loaded.push(url)
  show = (): void => void (this.shown = true)
  focus = (): void => void (this.focused += 1)
  isDestroyed = (): boolean => false
  isMinimized = (): boolean => false
  restore = (): void => undefined
}

export const ipcMain = {
  handle: (channel: string, handler: Handler): void => {
    if (record.handlers.has(channel)) throw new Error(`a second handler for ${channel}`)
    record.handlers.set(channel, handler)
  },
}

export const protocol = {
  registerSchemesAsPrivileged: (schemes: unknown[]): void => {
    if (app.isReady) throw new Error('schemes are declared before the program is ready')
    record.privileged.push(...schemes)
  },
  handle: (scheme: string, handler: (request: Request) => Promise<Response>): void => void record.protocols.set(scheme, handler),
}

type Answer<Value> = (value: Value) => void
class Session extends EventEmitter {
  permissionRequest: ((contents: unknown, permission: string, answer: Answer<boolean>, details: unknown) => void) | undefined
  permissionCheck: ((contents: unknown, permission: string, origin: string, details: unknown) => boolean) | undefined
  devicePermission: (() => boolean) | undefined
  beforeRequest: ((request: { url: string }, answer: Answer<{ cancel: boolean }>) => void) | undefined
  setPermissionRequestHandler = (handler: NonNullable<Session['permissionRequest']>): void => void (this.permissionRequest = handler)
  setPermissionCheckHandler = (handler: () => boolean): void => void (this.permissionCheck = handler)
  setDevicePermissionHandler = (handler: () => boolean): void => void (this.devicePermission = handler)
  webRequest = { onBeforeRequest: (handler: NonNullable<Session['beforeRequest']>): void => void (this.beforeRequest = handler) }
}
export const session = { defaultSession: new Session() }

export const systemPreferences = {
  askForMediaAccess: (what: string): Promise<boolean> => {
    record.askedOfSystem.push(what)
    return record.systemAllows()
  },
}

export const dialog = {
  showMessageBox: async (options: Record<string, unknown>): Promise<{ response: number }> => {
    record.dialogs.push(options)
    return { response: record.presses.shift() ?? Number(options['cancelId']) }
  },
  showMessageBoxSync: (_window: unknown, options: Record<string, unknown>): number => {
    record.dialogs.push(options)
    return record.presses.shift() ?? Number(options['cancelId'])
  },
}

export const Menu = {
  buildFromTemplate: (template: MenuItem[]): MenuItem[] => template,
  setApplicationMenu: (menu: MenuItem[]): void => void (record.menu = menu),
}

export const shell = { openPath: async (path: string): Promise<string> => (record.opened.push(path), '') }
export const nativeTheme = { shouldUseDarkColors: false }
