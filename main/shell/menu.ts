import { Menu, shell, type MenuItemConstructorOptions } from 'electron'
import { en } from '../../shared-logic/words/en'

const words = en.doors.shell

const view = (unpackaged: boolean): MenuItemConstructorOptions[] => [
  { role: 'resetZoom' },
  { role: 'zoomIn' },
  { role: 'zoomOut' },
  { type: 'separator' },
  { role: 'togglefullscreen' },
  ...(unpackaged ? ([{ type: 'separator' }, { role: 'reload' }, { role: 'toggleDevTools' }] as const) : []),
]

/** The system's own menus, and where the yard is kept. */
export const setMenu = (folder: string, platform: NodeJS.Platform, unpackaged: boolean): void => {
  const showFolder: MenuItemConstructorOptions = { label: words.showFolder, click: () => void shell.openPath(folder) }
  const template: MenuItemConstructorOptions[] = [
    ...(platform === 'darwin' ? [{ role: 'appMenu' } as const] : []),
    { label: words.yardMenu, submenu: [showFolder, { type: 'separator' }, { role: platform === 'darwin' ? 'close' : 'quit' }] },
    { role: 'editMenu', label: words.editMenu },
    { label: words.viewMenu, submenu: view(unpackaged) },
    { role: 'windowMenu', label: words.windowMenu },
  ]
  Menu.setApplicationMenu(Menu.buildFromTemplate(template))
}
