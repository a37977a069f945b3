import { useEffect, useRef } from 'react'
import { say } from '../../shared-logic/words/say'
import { useWords } from '../parts/use-words'
import style from './camera-view.module.css'
import type { Shot } from './roll'

/** The strip shows the last ones; the check itself shows all. */
const mostShown = 12

/** The pictures just taken, the last one first; drawn from the frame itself, before the desk has it. */
export const ShotStrip = ({ shots }: { readonly shots: readonly Shot[] }) => {
  const said = useWords().screens.camera
  return (
    <ul aria-label={said.strip} className={style.strip}>
      {shots.slice(-mostShown).toReversed().map((shot) => (
        <Thumbnail key={shot.number} shot={shot} />
      ))}
    </ul>
  )
}

const Thumbnail = ({ shot: { number, thumbnail, photographId } }: { readonly shot: Shot }) => {
  const said = useWords().screens.camera
  const canvas = useRef<HTMLCanvasElement>(null)
  useEffect(() => {
    canvas.current?.getContext('2d')?.drawImage(thumbnail, 0, 0)
  }, [thumbnail])
  return (
    <li>
      <canvas ref={canvas} width={thumbnail.width} height={thumbnail.height} className={style.thumbnail} data-kept={photographId !== undefined} />
      <span className="visually-hidden">{say(photographId === undefined ? said.shotUnderWay : said.shot, { number }, 'metric')}</span>
    </li>
  )
}
