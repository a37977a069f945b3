import { useState } from 'react'
import type { Alike } from '../../shared-logic/photographs/alike'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { sayCameraTime } from '../../shared-logic/words/say-camera'
import { callPhotograph, sayPlaceOf } from '../../shared-logic/words/say-photograph'
import { MarkedPicture } from '../marking/marked-picture'
import { Button } from '../parts/button'
import { Dialog } from '../parts/dialog'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './side-by-side.module.css'

interface SideBySideProps {
  readonly photograph: Photograph
  readonly alike: readonly Alike[]
  readonly survey: Pick<Survey, 'rig' | 'photographs'>
}

/** The way from a photograph to those that look like it: all of them in one look, each with its name and its place. */
export const SideBySide = ({ photograph, alike, survey }: SideBySideProps) => {
  const said = useWords().screens.photographs
  const [isOpen, setOpen] = useState(false)
  const ids = new Set(alike.map(({ id }) => id))
  const others = survey.photographs.filter(({ id }) => ids.has(id))
  if (others.length === 0) return null
  return (
    <>
      <Button onPress={() => setOpen(true)} aria-label={say(said.sideBySideOf, { name: callPhotograph(photograph) }, 'metric')}>{said.sideBySide}</Button>
      <Dialog title={said.sideBySideTitle} isOpen={isOpen} isWide onClose={() => setOpen(false)} actions={<Button kind="primary" onPress={() => setOpen(false)}>{said.sideBySideClose}</Button>}>
        <ul className={style.pictures}>
          <li><Shown photograph={photograph} survey={survey} isOwn /></li>
          {others.map((other) => <li key={other.id}><Shown photograph={other} survey={survey} /></li>)}
        </ul>
      </Dialog>
    </>
  )
}

const Shown = ({ photograph, survey, isOwn = false }: { readonly photograph: Photograph; readonly survey: SideBySideProps['survey']; readonly isOwn?: boolean }) => {
  const words = useWords()
  const units = useUnits()
  const { photographs: said, survey: { photographs: facts } } = words.screens
  const name = callPhotograph(photograph)
  const about = [
    ...(photograph.takenAt === undefined ? [] : [say(facts.takenAt, { time: sayCameraTime(photograph.takenAt) }, units)]),
    say(facts.size, { width: photograph.widthPx, height: photograph.heightPx }, units),
  ]
  return (
    <figure className={style.figure}>
      <MarkedPicture photograph={photograph} size="large" alt={name} fit="contain" className={style.picture} />
      <figcaption className={style.caption}>
        {isOwn && <span className={style.own}>{said.thisOne}</span>}
        <span className={style.name}>{name}</span>
        <span>{sayPlaceOf(words, photograph, survey) ?? said.noCheck}</span>
        <span className={style.about}>{about.join(' · ')}</span>
      </figcaption>
    </figure>
  )
}
