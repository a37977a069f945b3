import { Refusal } from '../../shared-logic/contract/refusal'
import { LinkButton } from './link-button'
import style from './load-problem.module.css'
import { RefusalNotice } from './refusal-notice'
import { useWords } from './use-words'

/** Whether what was asked for is not in the yard: trying again does not bring it. */
export const isGone = (error: unknown): boolean => error instanceof Refusal && error.data.code.endsWith('.not-found')

interface LoadProblemProps {
  readonly error: unknown
  readonly onRetry: () => void
}

/** In place of a screen that has nothing to show: why, and the way back to the yard. */
export const LoadProblem = ({ error, onRetry }: LoadProblemProps) => (
  <div className={style.problem}>
    <RefusalNotice error={error} {...(!isGone(error) && { onRetry })} />
    <LinkButton to="/" kind={isGone(error) ? 'primary' : 'plain'}>{useWords().screens.shell.toYard}</LinkButton>
  </div>
)
