import { fillOf } from '../../shared-logic/load/load-items'
import type { Rig } from '../../shared-logic/rig/rig'
import { formatQuantity } from '../../shared-logic/units/convert'
import type { UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { LinkButton } from '../parts/link-button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { fieldRoute } from './go-to-field'
import { openBelow } from './fold'
import { Inputs } from './input-group'
import { shownShare } from './shown-share'
import { BoundField } from './sums-field'
import style from './sums-inputs.module.css'
import type { SheetFields } from './use-sums-rig'

interface TankRowsProps {
  readonly sheet: SheetFields
  readonly rigId: string
}

const sayTanks = (words: Words, { boat, loading }: Rig, units: UnitSystem): { readonly count: string; readonly line: string } => {
  const said = words.screens.sums
  const tanks = boat?.tanks ?? []
  const fillOfTank = (index: number): number | undefined => fillOf(tanks[index]?.capacityM3 ?? 0, loading?.tanks?.[index])
  const known = tanks.filter((_, index) => fillOfTank(index) !== undefined)
  const line = tanks.map(({ contents }, index) => {
    const fill = fillOfTank(index)
    return `${words.fieldOptions['boat.tanks.contents']?.[contents] ?? contents} ${fill === undefined ? said.unknown : say('{fill}', { fill: shownShare(fill) }, units)}`
  })
  return { count: say(said.known, { known: known.length, all: tanks.length }, units), line: line.join('; ') }
}

/** What is in each registered tank, and where it lies. */
export const TankRows = ({ sheet, rigId }: TankRowsProps) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.sums
  const tanks = sheet.kept.boat?.tanks ?? []
  if (!sheet.kept.boat) return null
  return (
    <Inputs id="tanks" {...sayTanks(words, sheet.kept, units)} openCount={openBelow(sheet, ['loading.tanks'])}>
      {tanks.length === 0 && <><p className={style.soft}>{said.noTanks}</p><div><LinkButton to={fieldRoute(rigId)}>{said.toForm}</LinkButton></div></>}
      {tanks.map(({ contents, capacityM3 }, index) => {
        const path = `loading.tanks.${index}`
        const name = say(said.tank, { number: index + 1, contents: (words.fieldOptions['boat.tanks.contents']?.[contents] ?? contents).toLowerCase(), capacity: formatQuantity('volume', capacityM3, units) }, units)
        return (
          <fieldset key={path} className={style.row} data-path={path}>
            <legend>{name}</legend>
            <div className={style.fields}>
              <BoundField sheet={sheet} input={{ kind: 'quantity', path: `${path}.fill`, quantity: 'ratio' }} />
              <BoundField sheet={sheet} input={{ kind: 'quantity', path: `${path}.contentsM3`, quantity: 'volume' }} hint={said.tankHint} />
              <BoundField sheet={sheet} input={{ kind: 'quantity', path: `${path}.aftOfStemM`, quantity: 'length' }} />
              <BoundField sheet={sheet} input={{ kind: 'quantity', path: `${path}.heightM`, quantity: 'length' }} />
            </div>
          </fieldset>
        )
      })}
    </Inputs>
  )
}
