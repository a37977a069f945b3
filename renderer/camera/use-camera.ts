import { useEffect, useState, useSyncExternalStore } from 'react'
import { Camera, type CameraNow } from './camera'

/** A page out of sight this long shows nobody a live picture. */
const hiddenForLongMs = 60_000

/** Switched off while the page is out of sight for long, and on again when it is back. */
const sleepWhileHidden = (camera: Camera): (() => void) => {
  let timer: ReturnType<typeof setTimeout> | undefined
  let isAsleep = false
  const look = (): void => {
    clearTimeout(timer)
    if (document.visibilityState === 'hidden') {
      timer = setTimeout(() => {
        if (camera.now().state.is !== 'live') return
        isAsleep = true
        camera.close()
      }, hiddenForLongMs)
    } else if (isAsleep) {
      isAsleep = false
      void camera.reopen()
    }
  }
  document.addEventListener('visibilitychange', look)
  return () => {
    clearTimeout(timer)
    document.removeEventListener('visibilitychange', look)
  }
}

const followDevices = (camera: Camera): (() => void) => {
  // Absent where the window offers no camera, whatever the types say.
  const devices: MediaDevices | undefined = navigator.mediaDevices
  const changed = (): void => void camera.devicesChanged()
  devices?.addEventListener?.('devicechange', changed)
  return () => devices?.removeEventListener?.('devicechange', changed)
}

/** A camera for as long as this is on the screen: permission is asked for now, and it is switched off when the screen goes. */
export const useCamera = (rememberedLabel: string): { readonly camera: Camera; readonly now: CameraNow } => {
  const [camera] = useState(() => new Camera())
  const [label] = useState(rememberedLabel)
  const now = useSyncExternalStore(camera.subscribe, camera.now)
  useEffect(() => {
    void camera.open({ label })
    const wake = sleepWhileHidden(camera)
    const unfollow = followDevices(camera)
    return () => {
      wake()
      unfollow()
      camera.close()
    }
  }, [camera, label])
  return { camera, now }
}
