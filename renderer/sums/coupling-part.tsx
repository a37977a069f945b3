import { memo, useMemo } from 'react'
import type { Sums } from '../../shared-logic/sums/sums'
import { sayBrakes } from '../../shared-logic/words/sums/brakes'
import { sayCoupling } from '../../shared-logic/words/sums/coupling'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { BrakeTestRows } from './brake-test-rows'
import { couplingInputs } from './fields'
import { InputGroup } from './input-group'
import { Part } from './part'
import { HowWorkedOut, SumsLines } from './sums-lines'
import type { SheetFields } from './use-sums-rig'

interface PartProps {
  readonly sheet: SheetFields
  readonly sums: Sums
  readonly rigId: string
}

const CouplingInputs = memo(({ sheet }: Pick<PartProps, 'sheet'>) => <>{couplingInputs.map((group) => <InputGroup key={group.id} group={group} sheet={sheet} />)}<BrakeTestRows sheet={sheet} /></>)
CouplingInputs.displayName = 'CouplingInputs'

/** Coupling strength, chains and brakes. */
export const CouplingPart = memo(({ sheet, sums, rigId }: PartProps) => {
  const words = useWords()
  const units = useUnits()
  const sections = useMemo(() => [sayCoupling(words, sums.coupling, units), sayBrakes(words, sums.brakes, units)], [words, sums, units])
  return (
    <Part id="coupling" inputs={<CouplingInputs sheet={sheet} />}>
      {sections.map((section) => (
        <div key={section.id}>
          <h3>{section.title}</h3>
          <SumsLines lines={section.lines} rigId={rigId} />
          <HowWorkedOut section={section} />
        </div>
      ))}
    </Part>
  )
})
CouplingPart.displayName = 'CouplingPart'
