import { useEffect, useRef, useState } from 'react'
import { ConfirmDialog } from './dialog'
import { useWords } from './use-words'

/** Asks before the window or the screen is left while `isHeld`. Links, the back button and closing the window alike. */
export const LeaveGuard = ({ isHeld }: { readonly isHeld: boolean }) => {
  const { shell } = useWords().screens
  const [wanted, setWanted] = useState<string>()
  const isLetThrough = useRef(false)
  useEffect(() => {
    if (!isHeld) return undefined
    const holdHash = (event: HashChangeEvent): void => {
      if (isLetThrough.current || event.newURL === event.oldURL) return
      event.stopImmediatePropagation()
      history.pushState(null, '', event.oldURL)
      setWanted(event.newURL)
    }
    const holdWindow = (event: BeforeUnloadEvent): void => event.preventDefault()
    window.addEventListener('hashchange', holdHash, { capture: true })
    window.addEventListener('beforeunload', holdWindow)
    return () => {
      window.removeEventListener('hashchange', holdHash, { capture: true })
      window.removeEventListener('beforeunload', holdWindow)
    }
  }, [isHeld])
  const leave = (): void => {
    if (wanted === undefined) return
    isLetThrough.current = true
    setWanted(undefined)
    window.location.hash = new URL(wanted).hash
  }
  return (
    <ConfirmDialog title={shell.leaveTitle} isOpen={wanted !== undefined} confirmLabel={shell.leaveGo} cancelLabel={shell.leaveStay} onConfirm={leave} onCancel={() => setWanted(undefined)}>
      <p>{shell.leaveText}</p>
    </ConfirmDialog>
  )
}
