import { ToggleButton, ToggleButtonGroup } from 'react-aria-components'
import { useId } from 'react'
import { classNames } from '../parts/class-names'
import { VerdictShape } from '../parts/verdict-mark'
import type { Verdict } from '../../shared-logic/survey/verdict'
import style from './answer-fields.module.css'

interface AnswerChoiceProps {
  readonly label: string
  readonly isLabelHidden: boolean
  readonly options: readonly { readonly value: string; readonly label: string; readonly verdict: Verdict | undefined }[]
  readonly value: string | undefined
  readonly onPick: (value: string) => void
  /** Number keys answer this field. */
  readonly isNumbered: boolean
}

/**
 * One answer of few, as large targets. Arrow keys only move here: an answer is given by Enter, Space, its number or a tap,
 * since an answer is kept at once and may move the walk on.
 */
export const AnswerChoice = ({ label, isLabelHidden, options, value, onPick, isNumbered }: AnswerChoiceProps) => {
  const id = useId()
  return (
    <div className={style.choice}>
      <span id={id} className={isLabelHidden ? 'visually-hidden' : style.label}>{label}</span>
      <ToggleButtonGroup
        aria-labelledby={id} className={classNames(style.options, options.length > 5 && style.many)} selectionMode="single" disallowEmptySelection
        selectedKeys={value === undefined ? [] : [value]} onSelectionChange={(keys) => { for (const key of keys) onPick(String(key)) }}
      >
        {options.map((option, index) => (
          <ToggleButton key={option.value} id={option.value} className={style.option ?? ''} {...(isNumbered && index < 9 && { 'aria-keyshortcuts': String(index + 1) })}>
            <span className={style.key} aria-hidden="true">{isNumbered && index < 9 ? index + 1 : ''}</span>
            <span className={style.word}>{option.label}</span>
            {option.verdict !== undefined && <VerdictShape verdict={option.verdict} size={14} />}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
    </div>
  )
}
