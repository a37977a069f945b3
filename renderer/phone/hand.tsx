import { FileButton } from './file-button'
import { Button } from './button'
import style from './hand.module.css'
import type { Handover } from './handover'
import type { HandoverView } from './handover-view'
import type { CheckChosen } from './picture'
import { fill, usePhoneWords } from './use-phone-words'
import { Warning } from './warning'

interface HandProps {
  readonly view: HandoverView
  readonly handover: Handover
  readonly chosen: CheckChosen | undefined
  readonly shown: 'checks' | 'pictures'
  readonly onTurn: (next: 'checks' | 'pictures') => void
}

/** What the thumb reaches: the check the next picture is for, the camera, and the way to the pictures and back. */
export const Hand = ({ view, handover, chosen, shown, onTurn }: HandProps) => {
  const words = usePhoneWords()
  const said = words.hand
  const total = view.pictures.length
  const arrived = view.pictures.filter(({ state }) => state === 'arrived').length
  const add = (files: readonly File[]): void => void handover.add(files, chosen)
  return (
    <section className={style.hand} aria-label={said.title}>
      <Warning view={view} handover={handover} />
      <p className={style.target}><span className={style.soft}>{said.takeFor}</span> <strong>{chosen?.title ?? words.checks.none}</strong></p>
      <div className={style.buttons}>
        {shown === 'checks'
          ? <Button onPress={() => onTurn('pictures')}><span>{said.pictures}</span>{' '}<span className={style.small}>{total === 0 ? said.noneYet : fill(said.count, { arrived, total })}</span></Button>
          : <Button onPress={() => onTurn('checks')}>{said.checks}</Button>}
        <FileButton kind="main" isCamera onFiles={add}>{said.take}</FileButton>
        <FileButton label={said.chooseLong} onFiles={add}>{said.choose}</FileButton>
      </div>
    </section>
  )
}
