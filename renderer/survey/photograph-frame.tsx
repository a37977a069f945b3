import { useEffect, useRef, useState, type RefObject } from 'react'
import { turnedSize } from '../../shared-logic/marking/turned'
import { workingSize, type PictureSize } from '../../shared-logic/measuring/picture-size'
import type { Photograph } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { MarkedPicture } from '../marking/marked-picture'
import { useWords } from '../parts/use-words'
import style from './photographs.module.css'
import { useHeldPlace } from './use-held-place'

interface PhotographFrameProps {
  readonly photograph: Photograph
  readonly name: string
  /** How many times larger than the whole of it. */
  readonly closer: number
}

/** What every browser shows as it came: where one of these fails to load, it is not for its format. */
const shownAsTheyCame: ReadonlySet<Photograph['format']> = new Set(['jpeg', 'png', 'webp', 'avif'])

/** Px of the screen that the picture is wide. */
const useShownWidth = (frame: RefObject<HTMLElement | null>, isThere: boolean): number => {
  const [widthPx, setWidth] = useState(0)
  useEffect(() => {
    const picture = frame.current?.firstElementChild
    if (!isThere || !picture || typeof ResizeObserver === 'undefined') return undefined
    const observer = new ResizeObserver(() => setWidth(picture.getBoundingClientRect().width * window.devicePixelRatio))
    observer.observe(picture)
    return () => observer.disconnect()
  }, [frame, isThere])
  return widthPx
}

/**
 * A photograph in its frame: the whole of it, or closer and scrolled. Where the copy that is shown would only be
 * enlarged the original takes its place; where it cannot, it is said why. Nothing is vouched for that was not read.
 */
export const PhotographFrame = ({ photograph, name, closer }: PhotographFrameProps) => {
  const said = useWords().screens.survey.photographs
  const frame = useRef<HTMLElement>(null)
  const { id, sha256, format, quarterTurns } = photograph
  const { widthPx, heightPx } = turnedSize(photograph, quarterTurns)
  const held = useHeldPlace(frame, closer, id, quarterTurns)
  const copy = workingSize({ widthPx, heightPx })
  const [missing, setMissing] = useState<string>()
  const isThere = missing !== sha256
  const shownWidthPx = useShownWidth(frame, isThere)
  const isBeyondCopy = isThere && copy.width < widthPx && shownWidthPx > copy.width
  const [found, setFound] = useState<{ readonly sha256: string; readonly is: 'shown' | 'askew' | 'unreadable' }>()
  const original = found?.sha256 === sha256 ? found.is : undefined
  // One that the browser lays another way than the desk did would stand askew to its marks.
  const show = (size: PictureSize): void => setFound({ sha256, is: size.widthPx === photograph.widthPx && size.heightPx === photograph.heightPx ? 'shown' : 'askew' })
  const whyCopy = shownAsTheyCame.has(format) ? (original === 'shown' ? undefined : original) : 'format'
  return (
    <>
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- an enlarged picture is scrolled by the arrow keys */}
      <section ref={frame} className={style.frame} aria-label={name} tabIndex={0} {...held}>
        {isThere ? (
          <MarkedPicture
            photograph={photograph} size="large" alt={name} fit="contain" className={style.large} closer={closer} style={{ width: `calc(${closer} * min(100%, 58dvh * ${widthPx} / ${heightPx}))` }}
            onMissing={() => setMissing(sha256)}
            {...(isBeyondCopy && whyCopy === undefined && { original: { onShown: show, onMissing: () => setFound({ sha256, is: 'unreadable' }) } })}
          />
        ) : <p role="alert" className={style.unreadable}>{said.unreadable}</p>}
      </section>
      <output className={style.copy}>
        {isBeyondCopy && (whyCopy !== undefined ? say(said.showsCopy[whyCopy], copy, 'metric') : original === 'shown' && say(said.showsOriginal, { width: widthPx, height: heightPx }, 'metric'))}
      </output>
    </>
  )
}
