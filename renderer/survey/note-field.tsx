import { useEffect, useRef } from 'react'
import { noteLimit } from '../../shared-logic/survey/answer'
import { TextField } from '../parts/text-field'
import { useWords } from '../parts/use-words'
import { useBufferedText } from './use-buffered-text'
import type { Walk } from './use-walk'

interface CheckTextProps {
  readonly walk: Walk
  /** Opened just now, by a key or a button: the typing begins here. */
  readonly isFresh: boolean
}

/** Puts the focus into the field that was just asked for. */
const useFreshFocus = (isFresh: boolean) => {
  const box = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (isFresh) box.current?.querySelector<HTMLElement>('textarea, input')?.focus()
  }, [isFresh])
  return box
}

/** The surveyor's own words on a check. */
export const NoteField = ({ walk, isFresh }: CheckTextProps) => {
  const { more } = useWords().screens.survey
  const box = useFreshFocus(isFresh)
  const { text, write, keep } = useBufferedText(walk.written.note ?? '', (note) => walk.revise((answer) => ({ ...answer, note: note === '' ? undefined : note })))
  return <div ref={box}><TextField label={more.note} value={text} onChange={write} onBlur={keep} isLong maxLength={noteLimit} /></div>
}

/** What a reading was taken with. */
export const InstrumentField = ({ walk, isFresh }: CheckTextProps) => {
  const { more } = useWords().screens.survey
  const box = useFreshFocus(isFresh)
  const { text, write, keep } = useBufferedText(walk.written.instrument ?? '', (instrument) =>
    walk.revise((answer) => ({ ...answer, instrument: instrument.trim() === '' ? undefined : instrument.trim() })),
  )
  return <div ref={box}><TextField label={more.instrument} value={text} onChange={write} onBlur={keep} maxLength={120} /></div>
}
