import type { ReactNode } from 'react'
import type { Words } from '../../shared-logic/words/en'
import { useWords } from '../parts/use-words'
import style from './sums-page.module.css'

export type PartId = keyof Words['screens']['sums']['sheets']

interface PartProps {
  readonly id: PartId
  /** The fields this part is worked from. */
  readonly inputs: ReactNode
  readonly children: ReactNode
}

/** One part of the sheet: what it comes to, and beside it what it is worked from. */
export const Part = ({ id, inputs, children }: PartProps) => (
  <section className={style.part} aria-labelledby={`part-${id}`}>
    <h2 id={`part-${id}`} tabIndex={-1}>{useWords().screens.sums.sheets[id]}</h2>
    <div className={style.columns}>
      <div className={style.results}>{children}</div>
      <div className={style.inputs}>{inputs}</div>
    </div>
  </section>
)
