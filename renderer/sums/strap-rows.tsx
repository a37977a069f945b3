import { useState } from 'react'
import { leadOf } from '../../shared-logic/lashing/geometry'
import { lashingRoutes, strapPlaces, type Strap } from '../../shared-logic/rig/tie-down'
import { measured, type UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { SelectField } from '../parts/select-field'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { Fold, openBelow } from './fold'
import foldStyle from './fold.module.css'
import { Inputs } from './input-group'
import { StrapLeadFields } from './strap-lead'
import { BoundField } from './sums-field'
import style from './sums-inputs.module.css'
import type { SheetFields } from './use-sums-rig'

const optionsOf = <Value extends string>(values: readonly Value[], labels: Readonly<Record<Value, string>>) => values.map((value) => ({ value, label: labels[value] }))

const withStraps = ({ kept }: SheetFields, straps: readonly Strap[]): SheetFields['kept'] => ({ ...kept, tieDown: { ...kept.tieDown, straps: [...straps] } })

/** Where it is, how it runs, what it bears and how it leads; what is not known is said too. */
const sayStrap = ({ screens: { sums: { straps: said } } }: Words, strap: Strap, units: UnitSystem): string => {
  const lead = leadOf(strap)
  return [
    said.routes[strap.route].toLowerCase(),
    strap.ratedN === undefined ? said.ratingUnknown : say(said.ratedAt, { rating: measured('force', strap.ratedN) }, units),
    lead ? say(said.leadsAt, { down: measured('angle', lead.downRad), off: measured('angle', lead.offRad) }, units) : said.leadUnknown,
  ].join('; ')
}

/** The survey calls its positions 'strap transom left'; here it is said to be a strap already. */
const nameOf = ({ position }: Strap): string => position.replace(/^strap /, '')

const forces = ['ratedN', 'breakingN', 'fittingRatedN', 'anchorRatedN', 'tensionN'] as const

interface StrapRowProps {
  readonly index: number
  readonly sheet: SheetFields
  readonly straps: readonly Strap[]
  readonly isOpen: boolean
}

const StrapRow = ({ index, sheet, straps, isOpen }: StrapRowProps) => {
  const words = useWords()
  const units = useUnits()
  const { sums: said } = words.screens
  const strap = straps[index]
  if (!strap) return null
  const path = `tieDown.straps.${index}`
  const putWhole = (next: Strap): void => sheet.put(withStraps(sheet, straps.map((each, other) => (other === index ? next : each))), path)
  const hasOwnName = strap.position !== said.straps.places[strap.place].toLowerCase()
  return (
    <Fold
      title={<span className={foldStyle.name}>{say(said.strapRow, { number: index + 1, position: nameOf(strap) }, units)}</span>} line={sayStrap(words, strap, units)}
      openCount={openBelow(sheet, [path])} isOpen={isOpen} path={path}
    >
      <div className={style.fields}>
        <SelectField label={said.straps.place} options={optionsOf(strapPlaces, said.straps.places)} value={strap.place} onChange={(place) => putWhole({ ...strap, place, ...(!hasOwnName && { position: said.straps.places[place].toLowerCase() }) })} />
        <SelectField label={said.straps.route} options={optionsOf(lashingRoutes, said.straps.routes)} value={strap.route} onChange={(route) => putWhole({ ...strap, route })} />
        {forces.filter((name) => name !== 'tensionN' || strap.route === 'over the top' || strap.tensionN !== undefined).map((name) => (
          <BoundField key={name} sheet={sheet} label={said.straps.forces[name]} input={{ kind: 'quantity', path: `${path}.${name}`, quantity: 'force' }} hint={said.straps.forceHints[name]} />
        ))}
      </div>
      <StrapLeadFields sheet={sheet} strap={strap} path={path} onChange={putWhole} />
      <div><Button kind="quiet" onPress={() => sheet.put(withStraps(sheet, straps.filter((_, other) => other !== index)), 'tieDown.straps')}>{say(said.removeStrap, { number: index + 1 }, units)}</Button></div>
    </Fold>
  )
}

/** The straps as fitted, each folded under what it is. */
export const StrapRows = ({ sheet }: { readonly sheet: SheetFields }) => {
  const { sums: said } = useWords().screens
  const straps = sheet.kept.tieDown?.straps ?? []
  const [added, setAdded] = useState<number>()
  const add = (): void => {
    setAdded(straps.length)
    sheet.put(withStraps(sheet, [...straps, { position: said.straps.places.transom.toLowerCase(), place: 'transom', route: 'direct' }]))
  }
  return (
    <Inputs id="straps" count={say(straps.length === 1 ? said.strapCount.one : said.strapCount.many, { count: straps.length }, 'metric')} line={straps.map(nameOf).join('; ')} openCount={openBelow(sheet, ['tieDown.straps'])}>
      {straps.length === 0 && <p className={style.soft}>{said.straps.none}</p>}
      {straps.length > 0 && <div className={style.folds}>{straps.map((_, index) => <StrapRow key={`${index} of ${straps.length}`} index={index} sheet={sheet} straps={straps} isOpen={index === added} />)}</div>}
      {straps.length < 20 && <div data-path="tieDown.straps"><Button onPress={add}>{said.addStrap}</Button></div>}
    </Inputs>
  )
}
