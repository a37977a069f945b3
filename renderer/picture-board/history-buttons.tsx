import { useLayoutEffect, useRef } from 'react'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import { redone, undone, type History } from './history'
import style from './stage.module.css'
import { useUndoKeys } from './use-undo-keys'

interface HistoryButtonsProps<State> {
  readonly history: History<State>
  /** The same function from one drawing to the next. */
  readonly onHistory: (change: (history: History<State>) => History<State>) => void
}

/** Undo and redo, by button and by key. The one that was used up hands the focus to the other: on neither it would be lost. */
export const HistoryButtons = <State,>({ history, onHistory }: HistoryButtonsProps<State>) => {
  const said = useWords().screens.pictureBoard
  useUndoKeys(onHistory)
  const both = useRef<HTMLDivElement>(null)
  const focused = useRef<Element>(undefined)
  useLayoutEffect(() => {
    if (focused.current?.matches(':disabled') === true) both.current?.querySelector<HTMLElement>('button:enabled')?.focus()
  })
  return (
    <div ref={both} className={style.history} onFocus={({ target }) => { focused.current = target }} onBlur={({ target }) => { if (!target.matches(':disabled')) focused.current = undefined }}>
      <Button isDisabled={history.past.length === 0} onPress={() => onHistory(undone)} aria-keyshortcuts="Control+Z">{said.undo}</Button>
      <Button isDisabled={history.future.length === 0} onPress={() => onHistory(redone)} aria-keyshortcuts="Control+Shift+Z">{said.redo}</Button>
    </div>
  )
}
