import type { ReactNode } from 'react'
import type { MeasuredArea } from '../../shared-logic/measuring/measurement'
import { tiltNote } from '../../shared-logic/measuring/tilt'
import { formatQuantity } from '../../shared-logic/units/convert'
import { measured } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import { sayRefusal } from '../../shared-logic/words/say-refusal'
import { Button } from '../parts/button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import bench from '../picture-board/bench.module.css'
import type { Waiting } from './board'
import style from './panel.module.css'
import type { Computed } from './use-computing'

interface ResultProps {
  readonly computed: Computed
  readonly waits: Waiting | undefined
  /** A known length alone gives the scale. */
  readonly isByLength: boolean
  readonly gradeOf: (result: MeasuredArea) => ReactNode
}

const shownTiltDegrees = 20

/** Area with its uncertainty, share and grade, as they stand; or what they wait for, or why there are none. */
export const Result = ({ computed, waits, isByLength, gradeOf }: ResultProps) => {
  const words = useWords()
  const said = words.screens.measuring.result
  const units = useUnits()
  const { state, result, refusal } = computed
  const tilt = tiltNote.find(({ degrees }) => degrees === shownTiltDegrees)
  return (
    <section aria-label={said.title} className={style.result} aria-busy={state === 'working' || state === 'looking'}>
      <h3>{said.title}</h3>
      {state === 'looking' && <div className={style.working}><label>{said.looking}<progress /></label><Button onPress={computed.stop}>{said.stop}</Button></div>}
      {state === 'stopped' && <div className={style.working}><p>{said.stopped}</p><Button onPress={computed.restart}>{said.goOn}</Button></div>}
      {state === 'broken' && <div className={style.working} role="alert"><p>{words.screens.measuring.broken}</p><Button onPress={computed.restart}>{words.screens.measuring.again}</Button></div>}
      {refusal !== undefined && <p role="alert" className={bench.refused}>{sayRefusal(words, refusal)}</p>}
      {waits !== undefined && refusal === undefined && <p className={bench.soft}>{said.waits[waits]}</p>}
      {result !== undefined && (
        <>
          <dl className={style.figures}>
            <div><dt>{said.area}</dt><dd className={style.main}>{say(said.areaWithin, { area: measured('area', result.areaM2), uncertainty: measured('area', result.uncertaintyM2) }, units)}</dd></div>
            {result.faceAreaM2 !== undefined && <div><dt>{said.face}</dt><dd>{formatQuantity('area', result.faceAreaM2, units)}</dd></div>}
            {result.share !== undefined && (
              <div><dt>{said.share}</dt><dd>{say(said.shareWithin, { share: formatQuantity('ratio', result.share, units), low: formatQuantity('ratio', result.shareLow ?? result.share, units), high: formatQuantity('ratio', result.shareHigh ?? result.share, units) }, units)}</dd></div>
            )}
          </dl>
          <p className={bench.soft}>{said.about}</p>
          {isByLength && tilt && <p className={bench.soft}>{say(said.tilt, { degrees: tilt.degrees, missing: `${Math.round(tilt.missingShare * 100)} %` }, units)}</p>}
          {gradeOf(result)}
        </>
      )}
    </section>
  )
}
