import { useState } from 'react'
import { sayDate, say } from '../../shared-logic/words/say'
import { useQueryOf } from '../client/use-procedure'
import { Button } from '../parts/button'
import { DateField } from '../parts/date-field'
import { QuantityField } from '../parts/quantity-field'
import { useWords } from '../parts/use-words'
import { Inputs } from './input-group'
import style from './sums-inputs.module.css'
import type { SheetFields } from './use-sums-rig'


/** A weighing with a scale under the coupling and the axles on others. */
const NewWeighing = ({ sheet, onKept }: { readonly sheet: SheetFields; readonly onKept: () => void }) => {
  const { sums: said } = useWords().screens
  const today = useQueryOf('yard.about', {}).data?.today
  const [chosen, setChosen] = useState<string | undefined>()
  const [couplingKg, setCoupling] = useState<number>()
  const [axlesKg, setAxles] = useState<number>()
  const date = chosen ?? today
  const isWhole = date !== undefined && couplingKg !== undefined && axlesKg !== undefined && couplingKg >= 0 && axlesKg > 0
  const keep = (): void => {
    if (!isWhole) return
    sheet.put({ ...sheet.kept, weighings: [...(sheet.kept.weighings ?? []), { method: 'tongue and axles', date, couplingKg, axlesKg }] })
    onKept()
  }
  return (
    <div className={style.row}>
      <div className={style.fields}>
        <DateField label={said.weighing.date} value={date} max={today} onChange={setChosen} />
        <QuantityField label={said.weighing.coupling} quantity="mass" value={couplingKg} onChange={setCoupling} />
        <QuantityField label={said.weighing.axles} quantity="mass" value={axlesKg} onChange={setAxles} />
      </div>
      <div><Button onPress={keep} isDisabled={!isWhole}>{said.weighing.keep}</Button></div>
    </div>
  )
}

/** Weighings kept with the rig; what they come to stands among the results. */
export const WeighingRows = ({ sheet }: { readonly sheet: SheetFields }) => {
  const words = useWords()
  const { weighing } = words.screens.sums
  const [isAdding, setAdding] = useState(false)
  const weighings = sheet.kept.weighings ?? []
  return (
    <Inputs id="weighings">
      {weighings.map(({ date, method }, index) => (
        <div key={`${date} ${method}`} className={style.rowHead}>
          <span>{say(weighing.row, { date: sayDate(date), method: words.sums.methods[method] }, 'metric')}</span>
          <Button kind="quiet" onPress={() => sheet.put({ ...sheet.kept, weighings: weighings.filter((_, other) => other !== index) })}>{say(weighing.remove, { date: sayDate(date) }, 'metric')}</Button>
        </div>
      ))}
      {isAdding ? <NewWeighing sheet={sheet} onKept={() => setAdding(false)} /> : <div><Button onPress={() => setAdding(true)}>{weighing.add}</Button></div>}
    </Inputs>
  )
}
