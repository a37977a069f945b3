import { useState, type ReactNode } from 'react'
import { say } from '../../shared-logic/words/say'
import { useWords } from '../parts/use-words'
import { classNames } from '../parts/class-names'
import style from './fold.module.css'
import type { SheetFields } from './use-sums-rig'

interface FoldProps {
  readonly title: ReactNode
  /** At the right: how much is known. */
  readonly count?: string | undefined
  /** While it is shut: what is entered, on one line. */
  readonly line?: string | undefined
  /** Fields of this fold that are not kept yet. */
  readonly openCount?: number
  /** As it is first shown; afterwards it is the reader's. */
  readonly isOpen?: boolean
  /** Where a sentence that waits for it leads. */
  readonly path?: string
  readonly children: ReactNode
}

/** Fields under their name, shut until wanted; what is entered stays readable on one line. */
export const Fold = ({ title, count, line, openCount = 0, isOpen = false, path, children }: FoldProps) => {
  const { toPutRight } = useWords().screens.sums
  const [opensAtFirst] = useState(isOpen)
  return (
    <details className={style.fold} open={opensAtFirst} data-path={path}>
      <summary className={style.summary}>
        {title}
        <span className={classNames(style.count, openCount > 0 && style.open)}>{openCount > 0 ? say(toPutRight, { count: openCount }, 'metric') : count}</span>
        {line !== undefined && line !== '' && <span className={style.line}>{line}</span>}
      </summary>
      <div className={style.body}>{children}</div>
    </details>
  )
}

/** How many fields below these paths are not kept yet. */
export const openBelow = ({ held }: SheetFields, paths: readonly string[]): number => [...held.keys()].filter((key) => paths.some((path) => key === path || key.startsWith(`${path}.`))).length
