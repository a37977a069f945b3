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

/** Undo and redo, by button and by key. */
export const HistoryButtons = <State,>({ history, onHistory }: HistoryButtonsProps<State>) => {
  const said = useWords().screens.pictureBoard
  useUndoKeys(onHistory)
  return (
    <div className={style.history}>
      <Button isDisabled={history.past.length === 0} onPress={() => onHistory(undone)} aria-keyshortcuts="Control+Z">{said.undo}</Button>
      <Button isDisabled={history.future.length === 0} onPress={() => onHistory(redone)} aria-keyshortcuts="Control+Shift+Z">{said.redo}</Button>
    </div>
  )
}
