import { useEffect, useRef } from 'react'
import { say } from '../../shared-logic/words/say'
import { callPhotograph } from '../../shared-logic/words/say-photograph'
import { sentenceOf } from '../client/sentence-of'
import { Button } from '../parts/button'
import { classNames } from '../parts/class-names'
import { Progress } from '../parts/progress'
import { RefusalNotice } from '../parts/refusal-notice'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './photographs.module.css'
import { isForNow } from './photograph-intake'
import type { Photographs } from './use-photographs'

type Said = ReturnType<typeof useWords>['screens']['survey']['photographs']

interface PhotographNewsProps {
  readonly photographs: Photographs
  /** How it is said that the latest was removed, where it is not by its name. */
  readonly removedSays?: string | undefined
}

/** How a batch of photographs goes, what was refused and why, and the way back from a removal. */
export const PhotographNews = ({ photographs, removedSays }: PhotographNewsProps) => {
  const said = useWords().screens.survey.photographs
  const latest = photographs.removed.at(-1)
  const others = photographs.removed.length - 1
  return (
    <>
      <BatchNews photographs={photographs} />
      {latest !== undefined && (
        <output className={classNames(style.news, style.removed)}>
          <span>{sayRemoved(said, removedSays, callPhotograph(latest), others)}</span>
          <div className={style.back}>
            <Button onPress={photographs.restore}>{said.undo}</Button>
            {others > 0 && <Button onPress={photographs.restoreAll}>{said.undoAll}</Button>}
            <Button kind="quiet" onPress={photographs.forgetRemoved} aria-label={said.putAway}>×</Button>
          </div>
        </output>
      )}
      <RefusalNotice error={photographs.problem} />
    </>
  )
}

/** 'two.jpg and 1 more removed.', of them all; Undo means the one that is named. */
const sayRemoved = (said: Said, says: string | undefined, name: string, others: number): string => {
  if (others === 0) return says ?? say(said.removed, { name }, 'metric')
  return says === undefined ? say(said.removedWithOthers, { name, count: others }, 'metric') : `${says} ${say(said.othersRemoved, { count: others }, 'metric')}`
}

/** A batch that went in whole needs no answer: its line goes by itself. */
const goneAfterMs = 6000

const BatchNews = ({ photographs: { batch, cancel, dismiss, tryAgain } }: PhotographNewsProps) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.survey.photographs
  const isQuiet = batch?.state === 'finished' && batch.refused.length === 0
  const latest = useRef(dismiss)
  useEffect(() => {
    latest.current = dismiss
  })
  useEffect(() => {
    if (!isQuiet) return undefined
    const timer = setTimeout(() => latest.current(), goneAfterMs)
    return () => clearTimeout(timer)
  }, [isQuiet])
  if (batch === undefined) return null
  const { done, taken, total } = batch
  const takenInAll = batch.takenBefore + taken
  if (batch.state === 'running')
    return (
      <div className={style.news}>
        <div className={style.bar}><Progress label={said.title} done={done} total={total} says={say(said.taking, { done, total }, units)} /></div>
        <Button onPress={cancel}>{said.cancel}</Button>
      </div>
    )
  const summary = batch.state === 'cancelled' ? say(said.cancelled, { taken, total }, units) : takenInAll === 1 ? said.takenOne : say(said.taken, { taken: takenInAll }, units)
  return (
    <output className={style.news}>
      <div className={style.told}>
        {(takenInAll > 0 || batch.state === 'cancelled') && <p>{summary}</p>}
        {batch.refused.length > 0 && (
          // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- a long list is scrolled by the arrow keys
          <ul className={style.refusals} {...(batch.refused.length > 2 && { tabIndex: 0 })}>{batch.refused.map((each, index) => <li key={`${index} ${each.fileName}`} className={style.refused}>{sentenceWithName(each.fileName, sentenceOf(words, each.problem), said.refused)}</li>)}</ul>
        )}
      </div>
      {batch.refused.some(({ problem }) => isForNow(problem)) && <Button onPress={tryAgain}>{words.screens.shell.tryAgain}</Button>}
      {!isQuiet && <Button onPress={dismiss}>{said.dismiss}</Button>}
    </output>
  )
}

/** Most refusals name the file themselves, without folders before it; the others are told of which file they speak. */
const sentenceWithName = (file: string, sentence: string, template: string): string => {
  const bare = file.split(/[/\\]/).at(-1) ?? ''
  return sentence.includes(file) || sentence.includes(`“${bare}”`) ? sentence : say(template, { file, sentence }, 'metric')
}
