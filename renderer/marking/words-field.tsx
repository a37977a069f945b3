import { useState } from 'react'
import { Button } from '../parts/button'
import { TextField } from '../parts/text-field'
import { useWords } from '../parts/use-words'
import style from './marking.module.css'
import { mostLetters } from './sketch'

interface NewWordsProps {
  readonly text: string
  readonly onType: (text: string) => void
  readonly onDone: () => void
  readonly onGiveUp: () => void
}

const canStand = (text: string): boolean => text.trim() !== '' && text.trim().length <= mostLetters

/** Words being written for a place on the picture; Enter puts them there, Escape gives them up. */
export const NewWords = ({ text, onType, onDone, onGiveUp }: NewWordsProps) => {
  const said = useWords().screens.marking.words
  return (
    <form className={style.part} onSubmit={(event) => { event.preventDefault(); if (canStand(text)) onDone() }}>
      <TextField label={said.label} hint={said.hint} value={text} onChange={onType} maxLength={mostLetters} isFocused onEscape={onGiveUp} />
      <div className={style.row}><Button type="submit" kind="primary" isDisabled={!canStand(text)}>{said.put}</Button><Button onPress={onGiveUp}>{said.giveUp}</Button></div>
    </form>
  )
}

/** Words that stand on the picture, written again; while the field is empty they stay as they were. */
export const ChangedWords = ({ text, onChange }: { readonly text: string; readonly onChange: (text: string) => void }) => {
  const said = useWords().screens.marking.words
  const [typed, setTyped] = useState(text)
  const change = (next: string): void => {
    setTyped(next)
    if (canStand(next)) onChange(next.trim())
  }
  return <TextField label={said.label} value={canStand(typed) && typed.trim() !== text ? text : typed} onChange={change} maxLength={mostLetters} error={typed.trim() === '' ? said.empty : undefined} />
}
