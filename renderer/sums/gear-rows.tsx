import { useState } from 'react'
import { gearSchema } from '../../shared-logic/rig/loading'
import type { Rig } from '../../shared-logic/rig/rig'
import { faultsOf } from '../../shared-logic/sums/check-input'
import { formatQuantity } from '../../shared-logic/units/convert'
import type { Quantity } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import { sayRefusal } from '../../shared-logic/words/say-refusal'
import { Button } from '../parts/button'
import { QuantityField } from '../parts/quantity-field'
import { TextField } from '../parts/text-field'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { openBelow } from './fold'
import { Inputs } from './input-group'
import { sayIssue } from './say-issue'
import { BoundField } from './sums-field'
import style from './sums-inputs.module.css'
import type { SheetFields } from './use-sums-rig'

type Gear = NonNullable<NonNullable<Rig['loading']>['gear']>[number]
type GearFigure = Exclude<keyof Gear, 'name'>
type GearDraft = { readonly [Name in keyof Gear]?: Gear[Name] | undefined }

const withGear = ({ kept }: SheetFields, gear: readonly Gear[]): SheetFields['kept'] => ({ ...kept, loading: { ...kept.loading, gear: [...gear] } })

const figures = (hasBoat: boolean): readonly (readonly [GearFigure, Quantity])[] =>
  [['massKg', 'mass'], ['aftOfBallM', 'length'], ...(hasBoat ? [['aftOfStemM', 'length'] as const] : []), ['heightM', 'length']]

/** Why one figure of the draft cannot be right; nothing while it is not entered. */
const useProblems = (sheet: SheetFields, draft: GearDraft) => {
  const words = useWords()
  const units = useUnits()
  const parsed = gearSchema.safeParse(draft)
  const gear = sheet.kept.loading?.gear ?? []
  const fault = parsed.success ? faultsOf(withGear(sheet, [...gear, parsed.data])).find(({ field }) => field?.startsWith(`loading.gear.${gear.length}.`)) : undefined
  const problemOf = (name: GearFigure, quantity: Quantity): string | undefined => {
    if (fault?.field?.endsWith(name)) return sayRefusal(words, fault)
    const issue = draft[name] === undefined ? undefined : parsed.error?.issues.find(({ path }) => path[0] === name)
    return issue && sayIssue(words, issue, { label: words.screens.sums.gearFields[name], quantity }, units)
  }
  return { whole: parsed.success && fault === undefined ? parsed.data : undefined, problemOf }
}

/** A piece of gear while it is described; it joins the sheet once it has a name and a mass. */
const NewGear = ({ sheet }: { readonly sheet: SheetFields }) => {
  const { sums: said } = useWords().screens
  const [draft, setDraft] = useState<GearDraft>({})
  const [unread, setUnread] = useState<readonly GearFigure[]>([])
  const { whole, problemOf } = useProblems(sheet, draft)
  const isReady = whole !== undefined && unread.length === 0
  const set = (name: GearFigure, value: number | undefined, problem: string | undefined): void => {
    setDraft({ ...draft, [name]: value })
    setUnread([...unread.filter((each) => each !== name), ...(problem === undefined ? [] : [name])])
  }
  const add = (): void => {
    if (!isReady) return
    sheet.put(withGear(sheet, [...(sheet.kept.loading?.gear ?? []), whole]))
    setDraft({})
  }
  return (
    <fieldset className={style.row} data-path="loading.gear">
      <legend>{said.newGear}</legend>
      <div className={style.fields}>
        <TextField label={said.gearName} value={draft.name ?? ''} maxLength={80} onChange={(name) => setDraft({ ...draft, name: name === '' ? undefined : name })} />
        {figures(sheet.kept.boat !== undefined).map(([name, quantity]) => (
          <QuantityField
            key={name} label={said.gearFields[name]} quantity={quantity} value={draft[name]} hint={name === 'aftOfBallM' ? said.gearHint : undefined} error={problemOf(name, quantity)}
            onChange={(value, problem) => set(name, value, problem)}
          />
        ))}
      </div>
      <div><Button onPress={add} isDisabled={!isReady}>{said.addGear}</Button></div>
    </fieldset>
  )
}

/** A kept piece shows the place it is measured by: behind the ball, or behind the stem. */
const GearRow = ({ sheet, index, gear }: { readonly sheet: SheetFields; readonly index: number; readonly gear: readonly Gear[] }) => {
  const { sums: said } = useWords().screens
  const piece = gear[index]
  const path = `loading.gear.${index}`
  if (!piece) return null
  const other: GearFigure = piece.aftOfBallM === undefined ? 'aftOfBallM' : 'aftOfStemM'
  return (
    <fieldset className={style.row} data-path={path}>
      <legend>{piece.name}</legend>
      <div className={style.fields}>
        {figures(sheet.kept.boat !== undefined).filter(([name]) => name !== other || sheet.kept.boat === undefined).map(([name, quantity]) => (
          <BoundField key={name} sheet={sheet} label={said.gearFields[name]} input={{ kind: 'quantity', path: `${path}.${name}`, quantity }} />
        ))}
      </div>
      <div><Button kind="quiet" onPress={() => sheet.put(withGear(sheet, gear.filter((_, each) => each !== index)), 'loading.gear')}>{say(said.removeGear, { name: piece.name }, 'metric')}</Button></div>
    </fieldset>
  )
}

/** What else is carried, and where it lies. */
export const GearRows = ({ sheet }: { readonly sheet: SheetFields }) => {
  const { sums: said } = useWords().screens
  const units = useUnits()
  const gear = sheet.kept.loading?.gear ?? []
  return (
    <Inputs
      id="gear" openCount={openBelow(sheet, ['loading.gear'])} count={say(gear.length === 1 ? said.pieces.one : said.pieces.many, { count: gear.length }, units)}
      line={gear.map(({ name, massKg }) => `${name} ${formatQuantity('mass', massKg, units)}`).join('; ')}
    >
      {gear.map((piece, index) => <GearRow key={`${index} of ${gear.length} ${piece.name}`} sheet={sheet} index={index} gear={gear} />)}
      <NewGear sheet={sheet} />
    </Inputs>
  )
}
