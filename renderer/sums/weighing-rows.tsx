import { useState } from 'react'
import { sayDate, say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import { Inputs } from './input-group'
import style from './sums-inputs.module.css'
import type { SheetFields } from './use-sums-rig'
import { WeighingForm } from './weighing-form'

/** Weighings kept with the rig, by whichever method; what they come to stands among the results. */
export const WeighingRows = ({ sheet }: { readonly sheet: SheetFields }) => {
  const words = useWords()
  const { weighing: said } = words.screens.sums
  /** The weighing that is put right, or one past the last for a new one. */
  const [entering, setEntering] = useState<number>()
  const weighings = sheet.kept.weighings ?? []
  const rows = weighings.map(({ date, method }) => say(said.row, { date: sayDate(date), method: words.sums.methods[method] }, 'metric'))
  const leave = (): void => setEntering(undefined)
  const remove = (index: number): void => {
    leave()
    sheet.put({ ...sheet.kept, weighings: weighings.filter((_, other) => other !== index) })
  }
  return (
    <Inputs id="weighings" count={say(rows.length === 1 ? said.count.one : said.count.many, { count: rows.length }, 'metric')} line={rows.join('; ')}>
      {rows.length === 0 && <p className={style.soft}>{said.none}</p>}
      {rows.map((row, index) => (entering === index ? (
        <WeighingForm key={`${index} of ${rows.length}`} sheet={sheet} index={index} onKept={leave} onCancel={leave} />
      ) : (
        <div key={`${index} of ${rows.length}`} className={style.rowHead} data-path={`weighings.${index}`}>
          <span>{row}</span>
          <span className={style.actions}>
            <Button kind="quiet" aria-label={say(said.changeLabel, { row }, 'metric')} onPress={() => setEntering(index)}>{said.change}</Button>
            <Button kind="quiet" aria-label={say(said.removeLabel, { row }, 'metric')} onPress={() => remove(index)}>{said.remove}</Button>
          </span>
        </div>
      )))}
      {entering === rows.length ? <WeighingForm sheet={sheet} onKept={leave} onCancel={leave} /> : <div data-path="weighings"><Button onPress={() => setEntering(rows.length)}>{said.add}</Button></div>}
    </Inputs>
  )
}
