import { catalogue } from '../../shared-logic/checks/catalogue'
import { moreOnceRecorded } from '../../shared-logic/survey/assess'
import { say } from '../../shared-logic/words/say'
import { LinkButton } from '../parts/link-button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { wantField } from '../rig/wanted-field'
import style from './record-offer.module.css'
import type { Walk } from './use-walk'

/** Where a check asks what the rig's record should say: the way to that field and back, and how many checks hang on it. */
export const RecordOffer = ({ walk: { current, survey } }: { readonly walk: Walk }) => {
  const { check: said } = useWords().screens.survey
  const units = useUnits()
  const { record } = current.check
  if (record === undefined) return null
  const count = moreOnceRecorded(catalogue, current, survey)
  return (
    <div className={style.offer}>
      <LinkButton to={`/rigs/${survey.rigId}/edit`} state={wantField(record, `/surveys/${survey.id}`)}>{said.toRecord}</LinkButton>
      {count > 0 && <p>{say(said.moreOnceRecorded, { count }, units)}</p>}
    </div>
  )
}
