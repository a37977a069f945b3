import { CameraNotOffered, nameOfError } from './camera-problem'

/** More than any camera has: the browser gives the largest there is. */
const largest: MediaTrackConstraints = { width: { ideal: 16_384 }, height: { ideal: 16_384 } }

const mediaDevices = (): MediaDevices => {
  // Absent where the page's address is not safe, whatever the types say.
  const devices: MediaDevices | undefined = navigator.mediaDevices
  if (devices?.getUserMedia === undefined) throw new CameraNotOffered()
  return devices
}

/**
 * Zoom is a permission of its own (W3C Image Capture, pan-tilt-zoom): asked together with the camera where it may be
 * asked for. Where it is denied, asking for both would lose the camera too.
 */
const zoomIfAllowed = async (): Promise<MediaTrackConstraints> => {
  const asked: PermissionDescriptor & { readonly panTiltZoom: boolean } = { name: 'camera', panTiltZoom: true }
  const state = await navigator.permissions?.query(asked).then((status) => status.state, () => undefined)
  return state === 'granted' || state === 'prompt' ? { zoom: true } : {}
}

const isGone = (error: unknown): boolean => nameOfError(error) === 'OverconstrainedError' || nameOfError(error) === 'NotFoundError'

/**
 * A live picture at the largest size, of the camera wanted while it is there, else of one that looks away from the
 * person. Asks for permission where none was given. Rejects as getUserMedia does.
 */
export const openStream = async (deviceId: string | undefined): Promise<MediaStream> => {
  const devices = mediaDevices()
  const wanted = { ...largest, ...(await zoomIfAllowed()) }
  const whichever = (): Promise<MediaStream> => devices.getUserMedia({ video: { ...wanted, facingMode: { ideal: 'environment' } }, audio: false })
  if (deviceId === undefined) return whichever()
  return devices.getUserMedia({ video: { ...wanted, deviceId: { exact: deviceId } }, audio: false }).catch((error: unknown) => {
    if (isGone(error)) return whichever()
    throw error
  })
}

export interface CameraDevice {
  readonly id: string
  /** Empty until permission is given. */
  readonly label: string
}

/** The cameras there are; none where the window offers no camera. */
export const listCameras = async (): Promise<CameraDevice[]> => {
  try {
    const all = await mediaDevices().enumerateDevices()
    return all.filter(({ kind, deviceId }) => kind === 'videoinput' && deviceId !== '').map(({ deviceId, label }) => ({ id: deviceId, label }))
  } catch {
    return []
  }
}
