import { useState } from 'react'
import type { Weighing } from '../../shared-logic/rig/weighings'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { ChoiceField } from '../parts/choice-field'
import { DateField } from '../parts/date-field'
import { QuantityField } from '../parts/quantity-field'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './sums-inputs.module.css'
import type { SheetFields } from './use-sums-rig'
import { draftOf, labelOfFigure, readDraft, weighingInputs, weighingMethods, type ReadDraft, type WeighingDraft } from './weighing-fields'

interface FiguresProps {
  readonly draft: WeighingDraft
  readonly read: ReadDraft
  readonly today: string
  readonly onChange: (change: Partial<WeighingDraft>) => void
}

const axleCounts = ['1', '2', '3'] as const

/** How an axle stood on its scales; how many there are is asked only where the register does not say. */
const AxleChoices = ({ draft, isCountKnown, onChange }: Pick<FiguresProps, 'draft' | 'onChange'> & { readonly isCountKnown: boolean }) => {
  const { weighing: said } = useWords().screens.sums
  const whole = (['sides', 'whole'] as const).map((value) => ({ value, label: said.axleWays[value] }))
  return (
    <>
      {!isCountKnown && <ChoiceField label={said.axleCount} options={axleCounts.map((value) => ({ value, label: value }))} value={axleCounts.find((each) => Number(each) === draft.axleCount)} onChange={(next) => onChange({ axleCount: Number(next) })} />}
      <ChoiceField label={said.axleWay} options={whole} value={draft.bySide ? 'sides' : 'whole'} onChange={(next) => onChange({ bySide: next === 'sides' })} />
    </>
  )
}

const Figures = ({ draft, read, today, onChange }: FiguresProps) => {
  const words = useWords()
  const { weighing: said } = words.screens.sums
  return (
    <>
      <DateField label={said.date} value={draft.date} max={today} error={read.problems['date']} onChange={(date) => onChange({ date })} />
      <div className={style.fields}>
        {weighingInputs(draft).map(({ path, quantity, isOptional }) => (
          <QuantityField
            key={`${draft.method} ${path}`} label={labelOfFigure(words, path)} quantity={quantity} value={draft.figures[path]} hint={isOptional ? said.optional : undefined} error={read.problems[path]}
            onChange={(value, problem) => onChange({ figures: { ...draft.figures, [path]: value }, unread: [...draft.unread.filter((each) => each !== path), ...(problem === undefined ? [] : [path])] })}
          />
        ))}
      </div>
    </>
  )
}

/** What stands below the figures: a fault of a whole axle, or what is still missing. */
const State = ({ read: { missing, problems, weighing } }: { readonly read: ReadDraft }) => {
  const words = useWords()
  const { weighing: said } = words.screens.sums
  if (weighing) return null
  if (missing.length > 0) return <output className={style.soft}>{say(said.missing, { fields: missing.map((path) => labelOfFigure(words, path)).join(', ') }, 'metric')}</output>
  return <output className={style.note}>{problems['axles'] ?? said.putRight}</output>
}

interface WeighingFormProps {
  readonly sheet: SheetFields
  /** Which one is put right; a new one without. */
  readonly index?: number | undefined
  readonly onKept: () => void
  readonly onCancel: () => void
}

/** A weighing while it is entered: the method first, then what its scales showed. It is kept as a whole. */
export const WeighingForm = ({ sheet, index, onKept, onCancel }: WeighingFormProps) => {
  const words = useWords()
  const units = useUnits()
  const { weighing: said } = words.screens.sums
  const { kept, today } = sheet
  const weighings = kept.weighings ?? []
  const [draft, setDraft] = useState<WeighingDraft | undefined>(() => { const of = index === undefined ? undefined : weighings[index]; return of && draftOf(of, kept.trailer.axleCount ?? 1) })
  const at = index ?? weighings.length
  const read = draft && readDraft(draft, kept, at, { words, units, today })
  const choose = (method: Weighing['method']): void => setDraft({ date: today, figures: {}, unread: [], axleCount: kept.trailer.axleCount ?? 1, bySide: true, ...draft, method })
  const keep = (): void => {
    if (!read?.weighing) return
    const { weighing } = read
    sheet.put({ ...kept, weighings: index === undefined ? [...weighings, weighing] : weighings.map((each, other) => (other === index ? weighing : each)) })
    onKept()
  }
  return (
    <fieldset className={style.row}>
      <legend>{index === undefined ? said.newOne : said.changed}</legend>
      <ChoiceField label={said.method} options={weighingMethods.map((value) => ({ value, label: said.methods[value] }))} value={draft?.method} onChange={choose} isStacked />
      {draft && read && (
        <>
          <p className={style.soft}>{said.needs[draft.method]}</p>
          {draft.method === 'each axle' && <AxleChoices draft={draft} isCountKnown={kept.trailer.axleCount !== undefined} onChange={(change) => setDraft({ ...draft, ...change })} />}
          <Figures draft={draft} read={read} today={today} onChange={(change) => setDraft({ ...draft, ...change })} />
          <State read={read} />
        </>
      )}
      <div className={style.actions}>
        <Button onPress={keep} isDisabled={!read?.weighing}>{said.keep}</Button>
        <Button kind="quiet" onPress={onCancel}>{said.cancel}</Button>
      </div>
    </fieldset>
  )
}
