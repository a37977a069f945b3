import type { ReactNode } from 'react'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import type { GroupId, SumsGroup } from './fields'
import { Fold, openBelow } from './fold'
import foldStyle from './fold.module.css'
import { sayGroup } from './said-input'
import { BoundField } from './sums-field'
import style from './sums-inputs.module.css'
import type { SheetFields } from './use-sums-rig'

interface InputsProps {
  readonly id: GroupId
  readonly count?: string | undefined
  readonly line?: string | undefined
  readonly openCount?: number
  readonly isOpen?: boolean
  readonly children: ReactNode
}

/** Inputs that belong together, folded under their name. */
export const Inputs = ({ id, children, ...fold }: InputsProps) => {
  const name = useWords().screens.sums.groups[id]
  return <section aria-label={name}><Fold title={<h3 className={foldStyle.name}>{name}</h3>} {...fold}>{children}</Fold></section>
}

interface InputGroupProps {
  readonly group: SumsGroup
  readonly sheet: SheetFields
  readonly isOpen?: boolean
}

export const InputGroup = ({ group, sheet, isOpen = false }: InputGroupProps) => {
  const words = useWords()
  const said = sayGroup(words, group, sheet.kept, useUnits())
  return (
    <Inputs id={group.id} {...said} isOpen={isOpen} openCount={openBelow(sheet, group.inputs.map(({ path }) => path))}>
      <div className={style.fields}>{group.inputs.map((input) => <BoundField key={input.path} input={input} sheet={sheet} />)}</div>
    </Inputs>
  )
}
