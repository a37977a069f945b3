import { useUnits } from '../parts/use-settings'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import style from './walk-screen.module.css'
import type { Walk } from './use-walk'

interface SavedStateProps {
  readonly walk: Walk
}

/** Says quietly that what was answered is kept, and plainly where it is not. */
export const SavedState = ({ walk }: SavedStateProps) => {
  const { check, walk: said } = useWords().screens.survey
  const units = useUnits()
  const changes = [...walk.changes]
  const failed = changes.filter(([key, change]) => change.state === 'failed' && key !== walk.current.key)
  const [firstFailed] = failed
  if (firstFailed !== undefined) return <Button kind="danger" onPress={() => walk.goTo(firstFailed[0])}>{say(said.notSavedCount, { count: failed.length }, units)}</Button>
  if (walk.change?.state === 'failed') return <span className={style.saved}>{check.notSaved}</span>
  if (changes.some(([, change]) => change.state === 'saving')) return <span className={style.saved}>{check.saving}</span>
  return <span className={style.saved}>{changes.length > 0 ? check.saved : ''}</span>
}
