import { formatQuantity } from '../../shared-logic/units/convert'
import { say } from '../../shared-logic/words/say'
import { LinkButton } from '../parts/link-button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { fieldRoute } from './go-to-field'
import { Inputs } from './input-group'
import { BoundField } from './sums-field'
import style from './sums-inputs.module.css'
import type { SheetFields } from './use-sums-rig'

interface TankRowsProps {
  readonly sheet: SheetFields
  readonly rigId: string
}

/** What is in each registered tank, and where it lies. */
export const TankRows = ({ sheet, rigId }: TankRowsProps) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.sums
  const tanks = sheet.kept.boat?.tanks ?? []
  if (!sheet.kept.boat) return null
  return (
    <Inputs id="tanks">
      {tanks.length === 0 && <><p className={style.soft}>{said.noTanks}</p><div><LinkButton to={fieldRoute(rigId)}>{said.toForm}</LinkButton></div></>}
      {tanks.map(({ contents, capacityM3 }, index) => {
        const path = `loading.tanks.${index}`
        const name = say(said.tank, { number: index + 1, contents: (words.fieldOptions['boat.tanks.contents']?.[contents] ?? contents).toLowerCase(), capacity: formatQuantity('volume', capacityM3, units) }, units)
        return (
          <fieldset key={path} className={style.row}>
            <legend>{name}</legend>
            <div className={style.fields}>
              <BoundField sheet={sheet} input={{ kind: 'quantity', path: `${path}.fill`, quantity: 'ratio' }} />
              <BoundField sheet={sheet} input={{ kind: 'quantity', path: `${path}.aftOfStemM`, quantity: 'length' }} />
              <BoundField sheet={sheet} input={{ kind: 'quantity', path: `${path}.heightM`, quantity: 'length' }} />
            </div>
          </fieldset>
        )
      })}
    </Inputs>
  )
}
