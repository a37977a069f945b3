import { systemPreferences, type MediaAccessPermissionRequest, type PermissionCheckHandlerHandlerDetails, type Session } from 'electron'
import { isOurAddress } from './address'

/** What the two handlers are told of who asks; a request names the media in a list, a check names one. */
type Asked = Partial<MediaAccessPermissionRequest & PermissionCheckHandlerHandlerDetails>

/** The top frame of a page of ours, by every address that is told; one at least is. */
const isOurTopFrame = ({ isMainFrame, requestingUrl, securityOrigin, embeddingOrigin }: Asked): boolean => {
  const told = [requestingUrl, securityOrigin, embeddingOrigin].filter((address) => address !== undefined && address !== '')
  return isMainFrame === true && told.length > 0 && told.every((address) => isOurAddress(address ?? ''))
}

/** The picture alone: who asks for sound as well is given neither. */
const isPictureAlone = ({ mediaTypes, mediaType }: Asked): boolean => (mediaTypes === undefined ? mediaType === 'video' : mediaTypes.length === 1 && mediaTypes[0] === 'video')

const isForCamera = (permission: string, asked: Asked): boolean => permission === 'media' && isPictureAlone(asked) && isOurTopFrame(asked)

/** macOS keeps a consent of its own, asked for before the camera is opened; elsewhere the system asks nothing or refuses by itself. */
const systemAllowsCamera = async (): Promise<boolean> => process.platform !== 'darwin' || systemPreferences.askForMediaAccess('camera')

/**
 * The window needs nothing of the system that has to be asked for, but the camera in its camera view; pasting and
 * picking files are a person's own act.
 */
export const denyAllButCamera = (session: Session): void => {
  session.setPermissionRequestHandler((_contents, permission, answer, details) => {
    if (!isForCamera(permission, details)) return answer(false)
    return void systemAllowsCamera().then(answer, () => answer(false))
  })
  session.setPermissionCheckHandler((_contents, permission, _origin, details) => isForCamera(permission, details))
  session.setDevicePermissionHandler(() => false)
}

const ownSchemes: ReadonlySet<string> = new Set(['blob:', 'data:', 'devtools:'])

/** The window asks nothing of any network, whatever a page of it should try. */
export const denyNetwork = (session: Session): void =>
  session.webRequest.onBeforeRequest((request, answer) => answer({ cancel: !isOurAddress(request.url) && !ownSchemes.has(URL.parse(request.url)?.protocol ?? '') }))
