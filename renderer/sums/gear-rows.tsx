import { useState } from 'react'
import { gearSchema } from '../../shared-logic/rig/loading'
import type { Rig } from '../../shared-logic/rig/rig'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { QuantityField } from '../parts/quantity-field'
import { TextField } from '../parts/text-field'
import { useWords } from '../parts/use-words'
import { Inputs } from './input-group'
import { BoundField } from './sums-field'
import style from './sums-inputs.module.css'
import type { SheetFields } from './use-sums-rig'

type Gear = NonNullable<NonNullable<Rig['loading']>['gear']>[number]
type GearDraft = { readonly [Name in 'name' | 'massKg' | 'aftOfBallM' | 'aftOfStemM']?: Gear[Name] | undefined }

const withGear = ({ kept }: SheetFields, gear: readonly Gear[]): SheetFields['kept'] => ({ ...kept, loading: { ...kept.loading, gear: [...gear] } })

/** A piece of gear while it is described; it joins the sheet once it has a name and a mass. */
const NewGear = ({ sheet }: { readonly sheet: SheetFields }) => {
  const { sums: said } = useWords().screens
  const [draft, setDraft] = useState<GearDraft>({})
  const parsed = gearSchema.safeParse(draft)
  const add = (): void => {
    if (!parsed.success) return
    sheet.put(withGear(sheet, [...(sheet.kept.loading?.gear ?? []), parsed.data]))
    setDraft({})
  }
  return (
    <fieldset className={style.row} data-path="loading.gear">
      <legend>{said.newGear}</legend>
      <div className={style.fields}>
        <TextField label={said.gearName} value={draft.name ?? ''} maxLength={80} onChange={(name) => setDraft({ ...draft, name: name === '' ? undefined : name })} />
        <QuantityField label={said.gearMass} quantity="mass" value={draft.massKg} onChange={(massKg) => setDraft({ ...draft, massKg })} />
        <QuantityField label={said.gearBall} quantity="length" value={draft.aftOfBallM} hint={said.gearHint} onChange={(aftOfBallM) => setDraft({ ...draft, aftOfBallM })} />
        {sheet.kept.boat && <QuantityField label={said.gearStem} quantity="length" value={draft.aftOfStemM} onChange={(aftOfStemM) => setDraft({ ...draft, aftOfStemM })} />}
      </div>
      <div><Button onPress={add} isDisabled={!parsed.success}>{said.addGear}</Button></div>
    </fieldset>
  )
}

/** What else is carried, and where it lies. */
export const GearRows = ({ sheet }: { readonly sheet: SheetFields }) => {
  const { sums: said } = useWords().screens
  const gear = sheet.kept.loading?.gear ?? []
  return (
    <Inputs id="gear">
      {gear.map((piece, index) => {
        const path = `loading.gear.${index}`
        return (
          <fieldset key={`${path} of ${gear.length}`} className={style.row}>
            <legend className={style.rowHead}>{piece.name}</legend>
            <div className={style.fields}>
              <BoundField sheet={sheet} label={said.gearMass} input={{ kind: 'quantity', path: `${path}.massKg`, quantity: 'mass' }} />
              <BoundField sheet={sheet} label={piece.aftOfBallM === undefined ? said.gearStem : said.gearBall} input={{ kind: 'quantity', path: `${path}.${piece.aftOfBallM === undefined ? 'aftOfStemM' : 'aftOfBallM'}`, quantity: 'length' }} />
            </div>
            <div><Button kind="quiet" onPress={() => sheet.put(withGear(sheet, gear.filter((_, other) => other !== index)))}>{say(said.removeGear, { name: piece.name }, 'metric')}</Button></div>
          </fieldset>
        )
      })}
      <NewGear sheet={sheet} />
    </Inputs>
  )
}
