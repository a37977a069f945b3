import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import style from './contact-sheet.module.css'
import type { Done } from './use-sheet-acts'

interface SheetNewsProps {
  readonly done: Done | undefined
  readonly onUndo: (done: Done) => void
  readonly onForget: () => void
  /** 'Oil level, left front', as a place is called. */
  readonly whereIs: (place: { readonly checkId: string; readonly position: string }) => string
}

type Said = ReturnType<typeof useWords>['screens']['contactSheet']

const sentences = (done: Done, said: Said, whereIs: SheetNewsProps['whereIs']): string[] => {
  const { photographs } = done
  const [first] = photographs
  const name = first === undefined || first.caption === '' ? (first?.fileName ?? '') : first.caption
  const tell = (one: string, many: string, count: number, where = ''): string => (count === 1 ? say(one, { name, where }, 'metric') : say(many, { count, where }, 'metric'))
  if (done.kind === 'removed') return [tell(said.removedOne, said.removed, photographs.length)]
  const moved = photographs.length - done.stayed
  const [one, many] = done.place === undefined ? [said.movedAwayOne, said.movedAway] : [said.movedOne, said.moved]
  return [
    ...(moved > 0 ? [tell(one, many, moved, done.place && whereIs(done.place))] : []),
    ...(done.stayed > 0 ? [tell(said.stayedOne, said.stayed, done.stayed)] : []),
  ]
}

/** What was done last, and the way back. */
export const SheetNews = ({ done, whereIs, onUndo, onForget }: SheetNewsProps) => {
  const said = useWords().screens.contactSheet
  return (
    <output className={style.news} data-empty={done === undefined}>
      {done !== undefined && <><span>{sentences(done, said, whereIs).join(' ')}</span><Button onPress={() => onUndo(done)}>{said.undo}</Button><Button kind="quiet" onPress={onForget} aria-label={said.forget}>×</Button></>}
    </output>
  )
}
