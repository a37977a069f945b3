import type { ReactNode } from 'react'
import { useWords } from '../parts/use-words'
import type { GroupId, SumsGroup } from './fields'
import { BoundField } from './sums-field'
import style from './sums-inputs.module.css'
import type { SheetFields } from './use-sums-rig'


/** Inputs that belong together, under their name. */
export const Inputs = ({ id, children }: { readonly id: GroupId; readonly children: ReactNode }) => (
  <section className={style.group} aria-label={useWords().screens.sums.groups[id]}>
    <h3>{useWords().screens.sums.groups[id]}</h3>
    {children}
  </section>
)

export const InputGroup = ({ group, sheet }: { readonly group: SumsGroup; readonly sheet: SheetFields }) => (
  <Inputs id={group.id}>
    <div className={style.fields}>{group.inputs.map((input) => <BoundField key={input.path} input={input} sheet={sheet} />)}</div>
  </Inputs>
)
