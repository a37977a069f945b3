import type { Check } from '../../shared-logic/checks/check'
import type { RuleBook } from '../../shared-logic/rules/rule-book'
import { criterionOf, saySource, sourcesOf } from '../../shared-logic/words/check-sentences'
import { useWords } from '../parts/use-words'
import style from './open-check.module.css'

interface CriterionNoteProps {
  readonly check: Check
  readonly ruleBook: RuleBook
}

/** What a pass rests on, and where that comes from. */
export const CriterionNote = ({ check, ruleBook }: CriterionNoteProps) => {
  const words = useWords()
  const said = words.screens.survey.check
  return (
    <dl className={style.criterion}>
      <div>
        <dt>{said.criterion}</dt>
        <dd>{criterionOf(words, check, ruleBook)}</dd>
      </div>
      <div>
        <dt>{said.source}</dt>
        <dd>{sourcesOf(check, ruleBook).map(saySource).join('; ')}</dd>
      </div>
    </dl>
  )
}
