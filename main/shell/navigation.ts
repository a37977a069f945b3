import { app, type Session, type WebContents } from 'electron'
import { isOurAddress, isRecordedAddress } from './address'

const stay = (event: { readonly preventDefault: () => void }): void => event.preventDefault()

/**
 * The window stays where it is: no other page, no frame, no second window. There are no links to elsewhere. A photograph
 * or report that is asked for in a new window is handed over as a file instead.
 */
const keepContents = (contents: WebContents): void => {
  contents.on('will-navigate', stay)
  contents.on('will-frame-navigate', stay)
  contents.on('will-redirect', stay)
  contents.on('will-attach-webview', stay)
  contents.setWindowOpenHandler(({ url }) => {
    if (isRecordedAddress(url)) contents.downloadURL(url)
    return { action: 'deny' }
  })
}

export const denyNavigation = (): void => void app.on('web-contents-created', (_event, contents) => keepContents(contents))

/** Only what is ours is saved; the system's dialog asks where. */
export const denyDownloads = (session: Session): void =>
  void session.on('will-download', (event, item) => {
    const address = item.getURL().replace(/^blob:/, '')
    if (!isOurAddress(address)) event.preventDefault()
  })
