import { useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import layout from '../picture-board/bench.module.css'
import { HistoryButtons } from '../picture-board/history-buttons'
import { put, type History } from '../picture-board/history'
import { KnownLength } from './known-length'
import { MarkingStage, type MarkedPhotograph, type Writing } from './marking-stage'
import style from './marking.module.css'
import { nameOfMark } from './name-of-mark'
import { chosenMark, layerOf, withMark, withoutMark, type Chosen, type Sketch } from './sketch'
import { sayStep } from './say-step'
import { ToolChoice } from './tool-choice'
import type { Tool } from './tools'
import { useReader } from './use-reader'
import { ChangedWords, NewWords } from './words-field'

interface MarkingBenchProps {
  readonly picture: MarkedPhotograph
  readonly history: History<Sketch>
  /** The same function from one drawing to the next. */
  readonly onHistory: (change: (history: History<Sketch>) => History<Sketch>) => void
}

/** The picture with its tools, and beside it what belongs to the tool in hand and to the mark chosen. */
export const MarkingBench = ({ picture, history, onHistory }: MarkingBenchProps) => {
  const reader = useReader()
  const { marking: said, pictureBoard } = reader.words.screens
  const { size } = picture
  const sketch = history.now
  const [tool, setTool] = useState<Tool>('arrow')
  const [wanted, setWanted] = useState<Chosen>()
  const [writing, setWriting] = useState<Writing>()
  /** The known length just drawn. */
  const [asked, setAsked] = useState<Sketch['known']>()
  const [news, setNews] = useState('')
  const [isMissing, setMissing] = useState(false)
  const bench = useRef<HTMLDivElement>(null)
  // What was undone cannot be chosen any more.
  const chosen = chosenMark(sketch, wanted) === undefined ? undefined : wanted
  const mark = chosenMark(sketch, chosen)
  const change = (next: Sketch, gesture?: string): void => onHistory((before) => put(before, next, gesture))
  const latest = useRef(history)
  useLayoutEffect(() => {
    latest.current = history
  })
  const step = useCallback((how: (before: History<Sketch>) => History<Sketch>): void => {
    const before = latest.current
    const after = how(before)
    if (after === before || after.now === before.now) return
    setAsked(undefined)
    setNews(sayStep(after.future.length > before.future.length ? 'undone' : 'redone', before.now, after.now, size, reader))
    onHistory(how)
  }, [onHistory, size, reader])
  const draw = (next: Sketch, gesture?: string): void => {
    if (tool === 'known') setAsked(next.known)
    change(next, gesture)
  }
  const typeLength = (next: Sketch, gesture?: string): void => {
    setAsked(undefined)
    change(next, gesture)
  }
  const toStage = (): void => bench.current?.querySelector<HTMLElement>('[role="application"]')?.focus()
  const take = (next: Tool): void => {
    setWriting(undefined)
    setTool(next)
  }
  const stopWriting = (): void => {
    setWriting(undefined)
    toStage()
  }
  const putWords = (): void => {
    if (writing === undefined) return
    change({ ...sketch, marks: [...sketch.marks, { kind: 'text', at: writing.at, text: writing.text.trim() }] })
    setWanted(sketch.marks.length)
    stopWriting()
  }
  const remove = (which: Chosen): void => {
    setNews(say(said.removed, { name: nameOfMark(layerOf(sketch, size), which, reader) }, reader.units))
    change(withoutMark(sketch, which))
    toStage()
  }
  useEffect(toStage, [])
  const isMeasuring = tool === 'length' || tool === 'known' || sketch.known !== undefined || sketch.marks.some(({ kind }) => kind === 'length')
  return (
    <div ref={bench} className={layout.bench} data-writing={writing !== undefined}>
      <div className={layout.left}>
        {isMissing ? <p role="alert" className={layout.refused}>{pictureBoard.notShown}</p> : (
          <MarkingStage
            picture={picture} sketch={sketch} tool={tool} chosen={chosen} writing={writing} news={news} onNews={setNews} onTool={take} onChoose={setWanted} onPut={draw}
            onWrite={(at) => setWriting({ at, text: '' })} history={<HistoryButtons history={history} onHistory={step} />} onNoImage={() => setMissing(true)}
          />
        )}
      </div>
      <div className={layout.panel}>
        {writing && <NewWords key={writing.at.join()} text={writing.text} onType={(text) => setWriting({ ...writing, text })} onDone={putWords} onGiveUp={stopWriting} />}
        <ToolChoice tool={tool} onTool={take} />
        <p>{said.tell[tool]}</p>
        {writing === undefined && mark !== undefined && chosen !== undefined && chosen !== 'known' && (
          <section aria-label={said.chosen} className={style.part}>
            <h3>{nameOfMark(layerOf(sketch, size), chosen, reader)}</h3>
            {mark.kind === 'text' && <ChangedWords key={chosen} text={mark.text} onChange={(text) => change(withMark(sketch, chosen, { ...mark, text }), `words ${chosen}`)} />}
            <Button onPress={() => remove(chosen)}>{said.remove}</Button>
          </section>
        )}
        {isMeasuring && <KnownLength sketch={sketch} size={size} isDrawing={tool === 'known'} isAsked={asked !== undefined && sketch.known === asked} onDraw={() => { take('known'); toStage() }} onPut={typeLength} onTyped={toStage} onRemove={() => remove('known')} />}
      </div>
    </div>
  )
}
