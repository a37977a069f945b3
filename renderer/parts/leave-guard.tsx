import { memo, useEffect, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import { holdLocation } from '../client/hash-location'
import { ConfirmDialog } from './dialog'
import { holdWindow } from './hold-window'
import { useWords } from './use-words'

/** Asks before the window or the screen is left while `isHeld`. Links, the back button and closing the window alike. */
export const LeaveGuard = memo(({ isHeld }: { readonly isHeld: boolean }) => {
  const { shell } = useWords().screens
  const [wanted, setWanted] = useState<string>()
  const [, navigate] = useLocation()
  const release = useRef<() => void>(undefined)
  useEffect(() => {
    if (!isHeld) return undefined
    const letGo = holdLocation(setWanted)
    release.current = letGo
    const letWindowGo = holdWindow()
    return () => {
      letGo()
      letWindowGo()
    }
  }, [isHeld])
  const leave = (): void => {
    if (wanted === undefined) return
    release.current?.()
    setWanted(undefined)
    navigate(wanted)
  }
  return (
    <ConfirmDialog title={shell.leaveTitle} isOpen={wanted !== undefined} confirmLabel={shell.leaveGo} cancelLabel={shell.leaveStay} onConfirm={leave} onCancel={() => setWanted(undefined)}>
      <p>{shell.leaveText}</p>
    </ConfirmDialog>
  )
})
LeaveGuard.displayName = 'LeaveGuard'
