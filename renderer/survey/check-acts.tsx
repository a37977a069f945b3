import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import style from './open-check.module.css'

/** What can be said of a check besides its answer. */
export type CheckAct = 'note' | 'instrument' | 'not seen' | 'not applicable' | 'overrule' | 'clear'

interface CheckActsProps {
  readonly acts: readonly CheckAct[]
  readonly onAct: (act: CheckAct) => void
}

const keyOfAct: Readonly<Record<CheckAct, string | undefined>> = { note: 'N', instrument: undefined, 'not seen': 'S', 'not applicable': 'A', overrule: 'O', clear: 'C' }

/** The quiet row of further acts under the answer. */
export const CheckActs = ({ acts, onAct }: CheckActsProps) => {
  const { more } = useWords().screens.survey
  const labels: Readonly<Record<CheckAct, string>> = {
    note: more.note, instrument: more.instrument, 'not seen': more.notSeen, 'not applicable': more.notApplicable, overrule: more.overrule, clear: more.clear,
  }
  return (
    <fieldset aria-label={more.title} className={style.acts}>
      {acts.map((act) => (
        <Button key={act} kind="quiet" onPress={() => onAct(act)} {...(keyOfAct[act] !== undefined && { 'aria-keyshortcuts': keyOfAct[act] })}>{labels[act]}</Button>
      ))}
    </fieldset>
  )
}
