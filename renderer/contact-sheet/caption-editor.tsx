import { useRef, useState, type KeyboardEvent } from 'react'
import { useWords } from '../parts/use-words'
import style from './picture-cell.module.css'
import { useFocusAtOnce } from './use-focus-at-once'

interface CaptionEditorProps {
  readonly caption: string
  /** Undefined when it is left as it was. */
  readonly onWritten: (caption: string | undefined) => void
}

/** As many characters as the desk keeps. */
const longest = 400

/** The caption written in its place: Enter or leaving the field keeps it, Escape leaves it as it was. */
export const CaptionEditor = ({ caption, onWritten }: CaptionEditorProps) => {
  const said = useWords().screens.contactSheet
  const [text, setText] = useState(caption)
  const field = useFocusAtOnce<HTMLTextAreaElement>()
  const isDone = useRef(false)
  const end = (written: string | undefined): void => {
    if (isDone.current) return
    isDone.current = true
    onWritten(written === caption ? undefined : written)
  }
  const key = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') end(text.trim())
    if (event.key === 'Escape') end(undefined)
    // The sheet's own keys are not meant while one writes.
    if (event.key !== 'Tab') event.stopPropagation()
  }
  return (
    <textarea
      ref={field}
      className={style.editor} aria-label={said.caption} value={text} rows={3} maxLength={longest}
      onChange={(event) => setText(event.target.value.replaceAll('\n', ' '))} onKeyDown={key} onBlur={() => end(text.trim())}
      onPointerDown={(event) => event.stopPropagation()} onMouseDown={(event) => event.stopPropagation()} onFocus={(event) => event.target.select()}
    />
  )
}
