import { sentenceOf } from '../client/sentence-of'
import { Button } from './button'
import style from './refusal-notice.module.css'
import { useWords } from './use-words'

interface RefusalNoticeProps {
  /** What was thrown; nothing is shown for null and undefined. */
  readonly error: unknown
  readonly onRetry?: () => void
}

/** Why something could not be done, in a sentence, and how to go on. */
export const RefusalNotice = ({ error, onRetry }: RefusalNoticeProps) => {
  const words = useWords()
  if (error === null || error === undefined) return null
  return (
    <div role="alert" className={style.notice}>
      <p>{sentenceOf(words, error)}</p>
      {onRetry && <Button onPress={onRetry}>{words.screens.shell.tryAgain}</Button>}
    </div>
  )
}
