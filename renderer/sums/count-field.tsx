import { useState } from 'react'
import { say } from '../../shared-logic/words/say'
import { TextField } from '../parts/text-field'
import { useWords } from '../parts/use-words'

interface CountFieldProps {
  readonly label: string
  readonly value: number | undefined
  /** Told on each keystroke; undefined with a sentence when what stands there is no whole number. */
  readonly onChange: (value: number | undefined, problem?: string) => void
  readonly name?: string
  readonly error?: string | undefined
}

const read = (text: string): number | undefined => (/^\d{1,9}$/.test(text.trim()) ? Number(text.trim()) : undefined)

/** A count or an index, as typed: nothing is rounded or pushed into a range without a word. What is wrong is said when the field is left. */
export const CountField = ({ label, value, onChange, name, error }: CountFieldProps) => {
  const { problems } = useWords().screens.sums
  const [typed, setTyped] = useState({ text: value?.toString() ?? '', value })
  const [isLeft, setLeft] = useState(true)
  const text = Object.is(typed.value, value) ? typed.text : (value?.toString() ?? '')
  const isUnread = text.trim() !== '' && read(text) === undefined
  const problem = isUnread ? say(problems.whole, { field: label, written: text.trim() }, 'metric') : undefined
  const change = (next: string): void => {
    setTyped({ text: next, value: read(next) })
    setLeft(false)
    onChange(read(next), next.trim() !== '' && read(next) === undefined ? say(problems.whole, { field: label, written: next.trim() }, 'metric') : undefined)
  }
  return <TextField label={label} value={text} error={isLeft ? (problem ?? error) : undefined} onChange={change} onBlur={() => setLeft(true)} {...(name !== undefined && { name })} />
}
