import { tiltNote } from '../../shared-logic/measuring/tilt'
import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import { say } from '../../shared-logic/words/say'
import { sayRefusal } from '../../shared-logic/words/say-refusal'
import { Button } from '../parts/button'
import layout from '../picture-board/bench.module.css'
import { KnownLengthField } from '../picture-board/known-length-field'
import style from './marking.module.css'
import { knownProblem, type Sketch } from './sketch'
import { useReader } from './use-reader'

interface KnownLengthProps {
  readonly sketch: Sketch
  readonly size: PictureSize
  readonly isDrawing: boolean
  /** Just drawn: its length is typed next. One that comes back by undo leaves the focus where it is, and with it the keys of undo. */
  readonly isAsked: boolean
  readonly onDraw: () => void
  readonly onPut: (sketch: Sketch, gesture?: string) => void
  readonly onTyped: () => void
  readonly onRemove: () => void
}

const shownTiltDegrees = 20

/** What lengths of this picture are measured by; without it none is told. */
export const KnownLength = ({ sketch, size, isDrawing, isAsked, onDraw, onPut, onTyped, onRemove }: KnownLengthProps) => {
  const { words, units } = useReader()
  const said = words.screens.marking.known
  const { known } = sketch
  const problem = knownProblem(sketch, size)
  const tilt = tiltNote.find(({ degrees }) => degrees === shownTiltDegrees)
  return (
    <section aria-label={said.title} className={style.part}>
      <h3>{said.title}</h3>
      {known === undefined && <><p>{said.why}</p>{!isDrawing && <Button onPress={onDraw}>{said.draw}</Button>}</>}
      {known !== undefined && (
        <>
          <KnownLengthField label={said.length} value={known.lengthM} writtenIn={known.writtenIn} onChange={(lengthM, writtenIn) => onPut({ ...sketch, known: { ...known, lengthM, writtenIn } }, 'known length')} onSubmit={onTyped} isFocused={isAsked} />
          {typeof problem === 'object' && <p role="alert" className={layout.refused}>{sayRefusal(words, problem)}</p>}
          <Button onPress={onRemove}>{words.screens.marking.remove}</Button>
          {tilt && <p className={layout.soft}>{say(said.tilt, { degrees: tilt.degrees, share: `${Math.round(tilt.missingShare * 100)} %` }, units)}</p>}
        </>
      )}
    </section>
  )
}
