import { useRef } from 'react'
import { Button } from './button'
import { FileButton } from './file-button'
import style from './hand.module.css'
import type { Handover } from './handover'
import { hasEnded, type HandoverView } from './handover-view'
import type { CheckChosen } from './picture'
import { tallyOf, type Tally } from './tally'
import { Trouble } from './trouble'
import { fill, usePhoneWords, type PhoneWords } from './use-phone-words'

interface HandProps {
  readonly view: HandoverView
  readonly handover: Handover
  readonly chosen: CheckChosen | undefined
  readonly shown: 'checks' | 'pictures'
  readonly onTurn: (next: 'checks' | 'pictures') => void
}

/** '3 of 5 arrived', and what did not go as it should. */
const sayTally = ({ hand: said }: PhoneWords, { arrived, total, notTaken, alreadyThere }: Tally): readonly string[] => {
  if (total + notTaken + alreadyThere === 0) return [said.noneYet]
  return [
    ...(total > 0 ? [fill(said.count, { arrived, total })] : []),
    ...(notTaken > 0 ? [fill(said.notTaken, { count: notTaken })] : []),
    ...(total + notTaken === 0 ? [fill(said.alreadyThere, { count: alreadyThere })] : []),
  ]
}

/** What the thumb reaches: the check the next picture is for, the camera, and the way to the pictures and back. */
export const Hand = ({ view, handover, chosen, shown, onTurn }: HandProps) => {
  const words = usePhoneWords()
  const said = words.hand
  const target = useRef<HTMLParagraphElement>(null)
  const add = (files: readonly File[]): void => void handover.add(files, chosen)
  return (
    <section className={style.hand} aria-label={said.title}>
      <Trouble
        pictures={view.pictures} handover={handover} isOver={hasEnded(view.link)} onLook={shown === 'pictures' ? undefined : () => onTurn('pictures')}
        onSettled={() => target.current?.focus()}
      />
      <p ref={target} tabIndex={-1} className={style.target}><span className={style.soft}>{said.takeFor}</span> <strong>{chosen?.title ?? words.checks.none}</strong></p>
      <div className={style.buttons}>
        {shown === 'checks'
          ? <Button onPress={() => onTurn('pictures')}><span>{said.pictures}</span>{sayTally(words, tallyOf(view.pictures)).map((line) => <span key={line} className={style.small}>{' '}{line}</span>)}</Button>
          : <Button onPress={() => onTurn('checks')}>{said.checks}</Button>}
        <FileButton kind="main" isCamera onFiles={add}>{said.take}</FileButton>
        <FileButton label={said.chooseLong} onFiles={add}>{said.choose}</FileButton>
      </div>
    </section>
  )
}
