import type { Session } from 'electron'
import { isOurAddress } from './address'

/** The window needs nothing of the system that has to be asked for: pasting and picking files are a person's own act. */
export const denyPermissions = (session: Session): void => {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false))
  session.setPermissionCheckHandler(() => false)
  session.setDevicePermissionHandler(() => false)
}

const ownSchemes: ReadonlySet<string> = new Set(['blob:', 'data:', 'devtools:'])

/** The window asks nothing of any network, whatever a page of it should try. */
export const denyNetwork = (session: Session): void =>
  session.webRequest.onBeforeRequest((request, answer) => answer({ cancel: !isOurAddress(request.url) && !ownSchemes.has(URL.parse(request.url)?.protocol ?? '') }))
