import { useEffect, useRef, type RefObject } from 'react'

/** The list is drawn a little later than the sheet around it: so many frames are waited for what had the focus to go. */
const frames = 20

/** Nowhere, or at a button that means nothing any more. */
const isLost = (): boolean => document.activeElement === null || document.activeElement === document.body || document.activeElement.matches(':disabled')

/** After an act, what had the focus may be gone: the photograph of that id takes it up, or else the one that had it last; with none on the sheet, the first button. Nothing happens while the focus is kept. */
export const useKeptFocus = (board: RefObject<HTMLElement | null>): ((id?: string) => void) => {
  const waiting = useRef<number>(undefined)
  useEffect(() => () => { if (waiting.current !== undefined) cancelAnimationFrame(waiting.current) }, [])
  return (id) => {
    if (waiting.current !== undefined) cancelAnimationFrame(waiting.current)
    const look = (left: number): void => {
      const grid = board.current?.querySelector<HTMLElement>('[role=grid]')
      const row = id === undefined ? null : grid?.querySelector<HTMLElement>(`[data-key="${id}"]`)
      const last = grid?.querySelector<HTMLElement>('[role=row][tabindex="0"]') ?? grid?.querySelector<HTMLElement>('[role=row]')
      const there = row ?? last
      if (left > 0 && (!isLost() || there == null)) waiting.current = requestAnimationFrame(() => look(left - 1))
      else if (isLost()) (there ?? board.current?.querySelector<HTMLElement>('button'))?.focus({ preventScroll: true })
    }
    waiting.current = requestAnimationFrame(() => look(frames))
  }
}
