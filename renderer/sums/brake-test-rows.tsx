import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { brakedAxles, brakeForceInputs, brakeInputs } from './fields'
import { openBelow } from './fold'
import { Inputs } from './input-group'
import { sayGroup } from './said-input'
import { BoundField, WaitingNote } from './sums-field'
import style from './sums-inputs.module.css'
import type { SheetFields } from './use-sums-rig'

/** What a roller or plate tester showed at each wheel, and how far the actuator travels. */
export const BrakeTestRows = ({ sheet }: { readonly sheet: SheetFields }) => {
  const words = useWords()
  const units = useUnits()
  const { brake: said } = words.screens.sums
  const { kept } = sheet
  const axles = Array.from({ length: brakedAxles(kept) }, (_, axle) => brakeForceInputs(axle))
  const group = brakeInputs(kept)
  const { brakeTest, ...rest } = kept
  const whole = { ...group, inputs: [...group.inputs, ...axles.flatMap(({ left, right }) => [left, right])] }
  return (
    <Inputs id="brakeTest" {...sayGroup(words, whole, kept, units)} openCount={openBelow(sheet, ['trailer.brakedAxleCount', 'brakeTest'])}>
      <p className={style.soft}>{said.needs}</p>
      <div className={style.fields}>{group.inputs.map((input) => <BoundField key={input.path} input={input} sheet={sheet} />)}</div>
      {axles.map(({ left, right }, axle) => (
        <div key={left.path} className={style.pairs} data-path={axle === 0 ? 'brakeTest.axles' : undefined}>
          <div className={style.pair}>
            <BoundField sheet={sheet} input={left} label={say(said.left, { axle: axle + 1 }, units)} />
            <BoundField sheet={sheet} input={right} label={say(said.right, { axle: axle + 1 }, units)} />
          </div>
          <WaitingNote sheet={sheet} below={`brakeTest.axles.${axle}`} />
        </div>
      ))}
      {brakeTest && <div><Button kind="quiet" onPress={() => sheet.put(rest, 'brakeTest')}>{said.remove}</Button></div>}
    </Inputs>
  )
}
