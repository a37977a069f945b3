import { memo, useMemo } from 'react'
import { shareCurve } from '../../shared-logic/drawings/share-curve'
import type { Sums } from '../../shared-logic/sums/sums'
import { say } from '../../shared-logic/words/say'
import { sayBalance } from '../../shared-logic/words/sums/balance'
import { useQueryOf } from '../client/use-procedure'
import { DrawingView } from '../drawing/drawing-view'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './balance-part.module.css'
import { heightsOf, placesOf } from './fields'
import { InputGroup } from './input-group'
import { Part } from './part'
import { shownShare } from './shown-share'
import { Solver } from './solver'
import { HowWorkedOut, SumsLines } from './sums-lines'
import { useIsNarrow } from './use-is-narrow'
import type { SheetFields } from './use-sums-rig'
import { WeighingRows } from './weighing-rows'

const Curve = ({ sums: { balance, load } }: { readonly sums: Sums }) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.sums
  const isSmall = useIsNarrow()
  const drawing = useMemo(() => shareCurve(balance, load.items, words, units, isSmall), [balance, load.items, words, units, isSmall])
  if (!drawing || !balance.tanks) return null
  const { least, most } = balance.tanks.worst
  return (
    <figure className={style.curve}>
      <figcaption><h3>{said.curveTitle}</h3></figcaption>
      <DrawingView drawing={drawing} title={say(said.curveLabel, { least: shownShare(least.share), most: shownShare(most.share) }, units)} />
    </figure>
  )
}

interface PartProps {
  readonly sheet: SheetFields
  readonly sums: Sums
  readonly rigId: string
}

const BalanceInputs = memo(({ sheet }: Pick<PartProps, 'sheet'>) => <><InputGroup group={placesOf(sheet.kept)} sheet={sheet} isOpen /><InputGroup group={heightsOf(sheet.kept)} sheet={sheet} /><WeighingRows sheet={sheet} /></>)
BalanceInputs.displayName = 'BalanceInputs'

/** Balance: what rests where, what the tanks do to it, and what to move. */
export const BalancePart = memo(({ sheet, sums, rigId }: PartProps) => {
  const words = useWords()
  const units = useUnits()
  const today = useQueryOf('yard.about', {}).data?.today
  const section = useMemo(() => {
    // The ways to the target stand in the solver, each with its button.
    const { goal, ...rest } = sums.balance
    const whole = sayBalance(words, rest, sums.load.items, units, today)
    return { ...whole, cautions: goal ? [...whole.cautions, words.sums.balance.moveCaution] : whole.cautions }
  }, [sums, words, units, today])
  return (
    <Part
      id="balance" inputs={<BalanceInputs sheet={sheet} />}
    >
      <Solver sheet={sheet} sums={sums} />
      <SumsLines lines={section.lines} rigId={rigId} />
      <Curve sums={sums} />
      <HowWorkedOut section={section} />
    </Part>
  )
})
BalancePart.displayName = 'BalancePart'
