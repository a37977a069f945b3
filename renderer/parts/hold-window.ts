let holders = 0
const hold = (event: BeforeUnloadEvent): void => event.preventDefault()

/** Until it is let go the window asks before it is closed or loaded anew. Answers how to let it go. */
export const holdWindow = (): (() => void) => {
  holders += 1
  if (holders === 1) window.addEventListener('beforeunload', hold)
  let isHeld = true
  return () => {
    if (!isHeld) return
    isHeld = false
    holders -= 1
    if (holders === 0) window.removeEventListener('beforeunload', hold)
  }
}
