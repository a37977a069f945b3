import { useState } from 'react'
import { lashingRoutes, strapPlaces, type Strap } from '../../shared-logic/rig/tie-down'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { ChoiceField } from '../parts/choice-field'
import { NumberField } from '../parts/number-field'
import { SelectField } from '../parts/select-field'
import { useWords } from '../parts/use-words'
import { Inputs } from './input-group'
import { BoundField } from './sums-field'
import style from './sums-inputs.module.css'
import type { SheetFields } from './use-sums-rig'

type Angles = NonNullable<Strap['angles']>
type AnglesDraft = { readonly [Name in keyof Angles]?: Angles[Name] | undefined }

const leadings = ['forward', 'aft'] as const
const sides = ['left', 'right'] as const
const degree = Math.PI / 180
const toDegrees = (rad: number | undefined): number | undefined => (rad === undefined ? undefined : Math.round(rad / degree))
const toRadians = (degrees: number | undefined): number | undefined => (degrees === undefined ? undefined : degrees * degree)
const optionsOf = <Value extends string>(values: readonly Value[], labels: Readonly<Record<Value, string>>) => values.map((value) => ({ value, label: labels[value] }))

const withStraps = ({ kept }: SheetFields, straps: readonly Strap[]): SheetFields['kept'] => ({ ...kept, tieDown: { ...kept.tieDown, straps: [...straps] } })

const isWhole = (draft: AnglesDraft): draft is Angles => draft.downRad !== undefined && draft.offRad !== undefined && draft.leads !== undefined && draft.side !== undefined

/** How the strap leads, where its ends were not measured: kept once all four are told. */
const AngleFields = ({ strap, onChange }: { readonly strap: Strap; readonly onChange: (angles: Angles) => void }) => {
  const { straps: said } = useWords().screens.sums
  const [draft, setDraft] = useState<AnglesDraft>(strap.angles ?? {})
  const set = (change: AnglesDraft): void => {
    const next = { ...draft, ...change }
    setDraft(next)
    if (isWhole(next)) onChange(next)
  }
  return (
    <div className={style.fields}>
      <NumberField label={said.down} min={-90} max={90} value={toDegrees(draft.downRad)} onChange={(value) => set({ downRad: toRadians(value) })} />
      <NumberField label={said.off} min={0} max={90} value={toDegrees(draft.offRad)} onChange={(value) => set({ offRad: toRadians(value) })} />
      <div className={style.wide}><ChoiceField label={said.leads} options={optionsOf(leadings, said.leadings)} value={draft.leads} onChange={(leads) => set({ leads })} /></div>
      <div className={style.wide}><ChoiceField label={said.side} options={optionsOf(sides, said.sides)} value={draft.side} onChange={(side) => set({ side })} /></div>
    </div>
  )
}

interface StrapRowProps {
  readonly strap: Strap
  readonly index: number
  readonly sheet: SheetFields
  readonly straps: readonly Strap[]
}

const StrapRow = ({ strap, index, sheet, straps }: StrapRowProps) => {
  const { sums: said } = useWords().screens
  const put = (change: Partial<Strap>): void => sheet.put(withStraps(sheet, straps.map((each, other) => (other === index ? { ...each, ...change } : each))))
  const path = `tieDown.straps.${index}`
  return (
    <fieldset className={style.row} data-path={path}>
      <legend>{say(said.strapRow, { number: index + 1 }, 'metric')}</legend>
      <div className={style.fields}>
        <SelectField label={said.straps.place} options={optionsOf(strapPlaces, said.straps.places)} value={strap.place} onChange={(place) => put({ place, position: said.straps.places[place].toLowerCase() })} />
        <SelectField label={said.straps.route} options={optionsOf(lashingRoutes, said.straps.routes)} value={strap.route} onChange={(route) => put({ route })} />
        <BoundField sheet={sheet} label={said.straps.rating} input={{ kind: 'quantity', path: `${path}.ratedN`, quantity: 'force' }} />
        {strap.route === 'over the top' && <BoundField sheet={sheet} label={said.straps.tension} input={{ kind: 'quantity', path: `${path}.tensionN`, quantity: 'force' }} />}
      </div>
      {strap.boat && strap.trailer ? <p className={style.soft}>{said.straps.measured}</p> : <AngleFields strap={strap} onChange={(angles) => put({ angles })} />}
      <div><Button kind="quiet" onPress={() => sheet.put(withStraps(sheet, straps.filter((_, other) => other !== index)))}>{say(said.removeStrap, { number: index + 1 }, 'metric')}</Button></div>
    </fieldset>
  )
}

/** The straps as fitted. */
export const StrapRows = ({ sheet }: { readonly sheet: SheetFields }) => {
  const { sums: said } = useWords().screens
  const straps = sheet.kept.tieDown?.straps ?? []
  const add = (): void => sheet.put(withStraps(sheet, [...straps, { position: said.straps.places.transom.toLowerCase(), place: 'transom', route: 'direct' }]))
  return (
    <Inputs id="straps">
      {straps.length === 0 && <p className={style.soft}>{said.straps.none}</p>}
      {straps.map((strap, index) => <StrapRow key={`${index} of ${straps.length}`} strap={strap} index={index} sheet={sheet} straps={straps} />)}
      {straps.length < 20 && <div data-path="tieDown.straps"><Button onPress={add}>{said.addStrap}</Button></div>}
    </Inputs>
  )
}
