import { isAsked } from '../../shared-logic/checks/asked-fields'
import type { Field } from '../../shared-logic/checks/check'
import { Button } from '../parts/button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import { AnswerField } from './answer-field'
import { fieldWords } from './field-words'
import style from './answer-panel.module.css'
import type { Answering } from './use-answering'
import type { Draft } from './use-draft'
import type { Walk } from './use-walk'

interface AnswerPanelProps {
  readonly walk: Walk
  readonly draft: Draft
  readonly answering: Answering
}

/** Few enough answers to rest at the thumb without hiding the question. */
const isCompact = ([first, ...others]: readonly Field[]): boolean => others.length === 0 && first?.kind === 'choice' && first.options.length <= 6

/** The fields of the open check that are asked, and the way on. Rests at the thumb on a narrow window. */
export const AnswerPanel = ({ walk, draft, answering }: AnswerPanelProps) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.survey.check
  const { check } = walk.current
  const asked = check.fields.filter((field) => isAsked(field, draft.values))
  return (
    <fieldset aria-label={said.answer} className={style.panel} data-compact={isCompact(asked)}>
      {asked.map((field) => (
        <AnswerField
          key={field.id} field={field} said={fieldWords(words, check, field, draft.problems, units)} value={draft.values[field.id]}
          isLabelHidden={check.fields.length === 1} isNumbered={field === answering.numbered} surveyDate={walk.survey.surveyDate}
          onType={(value, isReadable) => draft.type(field.id, value, isReadable)} onPick={(value) => answering.pick(field, value)} onLeave={draft.keep} onEnter={answering.goOn}
        />
      ))}
      <div className={style.ways}>
        <Button kind="quiet" onPress={walk.goBack}>{said.goBack}</Button>
        {!draft.assessed.open && <span className={style.glance} aria-hidden="true"><VerdictMark verdict={draft.assessed.verdict} /></span>}
        <Button onPress={answering.goOn} aria-keyshortcuts="Enter">{said.goOn}</Button>
      </div>
    </fieldset>
  )
}
