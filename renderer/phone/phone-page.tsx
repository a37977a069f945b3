import { useState, useSyncExternalStore } from 'react'
import { CheckList } from './check-list'
import { DoorLine } from './door-line'
import { EarlierPictures } from './earlier-pictures'
import { Hand } from './hand'
import type { Handover } from './handover'
import { Notices } from './notices'
import style from './phone-page.module.css'
import { PictureList } from './picture-list'
import { tallyOf } from './tally'
import { useChosen } from './use-chosen'
import { useKeepOpen } from './use-keep-open'
import { fill, usePhoneWords } from './use-phone-words'

interface PhonePageProps {
  readonly handover: Handover
}

/** What the phone shows: how it stands with the desktop, the checks, the pictures, and the camera at the thumb. */
export const PhonePage = ({ handover }: PhonePageProps) => {
  const words = usePhoneWords()
  const view = useSyncExternalStore(handover.subscribe, handover.view)
  const [chosen, choose] = useChosen(view.stations)
  const [shown, setShown] = useState<'checks' | 'pictures'>('checks')
  const [hasTurned, setTurned] = useState(false)
  useKeepOpen(view)
  const turnTo = (next: 'checks' | 'pictures'): void => {
    setTurned(true)
    setShown(next)
  }
  const hasPictures = view.pictures.length + view.earlier.length > 0
  const { arrived, total } = tallyOf(view.pictures)
  return (
    <div className={style.page}>
      <DoorLine view={view} />
      <main className={style.main}>
        <title>{words.title}</title>
        <Notices view={view} />
        <EarlierPictures view={view} handover={handover} onLook={() => turnTo('pictures')} />
        {view.isPaired && shown === 'checks' && <CheckList isArrival={hasTurned} view={view} chosen={chosen} onChoose={choose} />}
        {(view.isPaired ? shown === 'pictures' : hasPictures) && <PictureList isArrival={hasTurned} view={view} handover={handover} />}
      </main>
      {view.isPaired && <Hand view={view} handover={handover} chosen={chosen} shown={shown} onTurn={turnTo} />}
      <output className="visually-hidden">{arrived > 0 ? fill(words.pictures.arrivedOf, { arrived, total }) : ''}</output>
    </div>
  )
}
