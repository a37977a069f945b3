import type { ReactElement } from 'react'
import type { Verdict } from '../../shared-logic/survey/verdict'
import { classNames } from './class-names'
import { useWords } from './use-words'
import style from './verdict-mark.module.css'

/** Drawn on a field of 16 by 16. */
const shapes: Readonly<Record<Verdict, ReactElement>> = {
  pass: <circle cx="8" cy="8" r="6.5" className={style.pass} />,
  advisory: (
    <>
      <path d="M8 0.75L15.25 8L8 15.25L0.75 8Z" className={style.open} />
      <path d="M8 0.75L8 15.25L0.75 8Z" className={style.advisory} />
    </>
  ),
  fail: (
    <>
      <rect x="1.5" y="1.5" width="13" height="13" className={style.fail} />
      <path d="M4.75 4.75L11.25 11.25M11.25 4.75L4.75 11.25" className={style.cross} />
    </>
  ),
  'not seen': <circle cx="8" cy="8" r="6.5" className={style.ring} />,
  'not applicable': <path d="M3 8H13" className={style.rule} />,
}

interface VerdictShapeProps {
  readonly verdict: Verdict
  readonly size?: number
}

/** The shape alone, where the word stands beside it already; the screen reader does not hear it. */
export const VerdictShape = ({ verdict, size = 16 }: VerdictShapeProps) => (
  <svg viewBox="0 0 16 16" width={size} height={size} className={style.shape} aria-hidden="true" data-verdict={verdict}>{shapes[verdict]}</svg>
)

interface VerdictMarkProps extends VerdictShapeProps {
  /** For the verdict of a whole rig. */
  readonly isLarge?: boolean
  /** Keeps the word for the screen reader alone, where the column's head or a legend says it. */
  readonly isWordHidden?: boolean
}

/** A verdict: shape, colour and word together, never the colour alone. */
export const VerdictMark = ({ verdict, size, isLarge = false, isWordHidden = false }: VerdictMarkProps) => (
  <span className={classNames(style.mark, isLarge && style.large)}>
    <VerdictShape verdict={verdict} size={size ?? (isLarge ? 22 : 16)} />
    <span className={isWordHidden ? 'visually-hidden' : undefined}>{useWords().verdicts[verdict]}</span>
  </span>
)
