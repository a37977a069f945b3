import { memo, useMemo } from 'react'
import { lashingPlanDrawing } from '../../shared-logic/drawings/lashing-plan'
import { tieDownPlanOf } from '../../shared-logic/lashing/plan'
import { say } from '../../shared-logic/words/say'
import { sayTieDown } from '../../shared-logic/words/sums/tie-down'
import { DrawingView } from '../drawing/drawing-view'
import { useSettings } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { tieDownInputs } from './fields'
import { InputGroup } from './input-group'
import { Part } from './part'
import { StrapRows } from './strap-rows'
import { HowWorkedOut, SumsLines } from './sums-lines'
import type { Rig } from '../../shared-logic/rig/rig'
import type { SheetFields } from './use-sums-rig'

interface PartProps {
  readonly sheet: SheetFields
  /** May lag behind a drag. */
  readonly rig: Rig
  readonly rigId: string
}

const TieDownInputs = memo(({ sheet }: Pick<PartProps, 'sheet'>) => <><InputGroup group={tieDownInputs} sheet={sheet} /><StrapRows sheet={sheet} /></>)
TieDownInputs.displayName = 'TieDownInputs'

/** Tie-down: the straps drawn, what each direction needs and what holds it. */
export const TieDownPart = memo(({ sheet, rig, rigId }: PartProps) => {
  const words = useWords()
  const { ruleBook, units } = useSettings()
  const said = words.screens.sums
  const plan = useMemo(() => tieDownPlanOf(rig, ruleBook), [rig, ruleBook])
  const drawing = useMemo(() => lashingPlanDrawing(rig, plan, words, units), [rig, plan, words, units])
  const section = useMemo(() => sayTieDown(words, plan, units), [words, plan, units])
  return (
    <Part id="tie-down" inputs={<TieDownInputs sheet={sheet} />}>
      {plan.straps.length > 0 && <DrawingView drawing={drawing} title={say(said.plan, { said: said.planSaid[plan.standing] }, units)} />}
      <SumsLines lines={section.lines} rigId={rigId} />
      <HowWorkedOut section={section} />
    </Part>
  )
})
TieDownPart.displayName = 'TieDownPart'
