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

/** What every browser shows as it came. */
const shownAsTheyCame: ReadonlySet<Photograph['format']> = new Set(['jpeg', 'png', 'webp', 'avif'])

/** Px of the screen that the picture is wide. */
const useShownWidth = (frame: RefObject<HTMLElement | null>): number => {
  const [widthPx, setWidth] = useState(0)
  useEffect(() => {
    const picture = frame.current?.firstElementChild
    if (!picture || typeof ResizeObserver === 'undefined') return undefined
    const observer = new ResizeObserver(() => setWidth(picture.getBoundingClientRect().width * window.devicePixelRatio))
    observer.observe(picture)
    return () => observer.disconnect()
  }, [frame])
  return widthPx
}

/**
 * A photograph in its frame: the whole of it, or closer and scrolled. Where the copy that is shown would only be
 * enlarged the original takes its place; where the window cannot show that one, it is said.
 */
export const PhotographFrame = ({ photograph, name, closer }: PhotographFrameProps) => {
  const said = useWords().screens.survey.photographs
  const frame = useRef<HTMLElement>(null)
  const { id, sha256, format, quarterTurns } = photograph
  const { widthPx, heightPx } = turnedSize(photograph, quarterTurns)
  const held = useHeldPlace(frame, closer, id)
  const copy = workingSize({ widthPx, heightPx })
  const shownWidthPx = useShownWidth(frame)
  const isBeyondCopy = copy.width < widthPx && shownWidthPx > copy.width
  const [found, setFound] = useState<{ readonly sha256: string; readonly is: 'shown' | 'missing' }>()
  const original = found?.sha256 === sha256 ? found.is : undefined
  // One that the browser lays another way than the desk did would stand askew to its marks.
  const show = (size: PictureSize): void => setFound({ sha256, is: size.widthPx === photograph.widthPx && size.heightPx === photograph.heightPx ? 'shown' : 'missing' })
  const canShow = shownAsTheyCame.has(format) && original !== 'missing'
  return (
    <>
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- an enlarged picture is scrolled by the arrow keys */}
      <section ref={frame} className={style.frame} aria-label={name} tabIndex={0} {...held}>
        <MarkedPicture
          photograph={photograph} size="large" alt={name} fit="contain" className={style.large} closer={closer} style={{ width: `calc(${closer} * min(100%, 58dvh * ${widthPx} / ${heightPx}))` }}
          {...(isBeyondCopy && canShow && { original: { onShown: show, onMissing: () => setFound({ sha256, is: 'missing' }) } })}
        />
      </section>
      <output className={style.copy}>
        {isBeyondCopy && (original === 'shown' ? say(said.showsOriginal, { width: widthPx, height: heightPx }, 'metric') : canShow ? '' : say(said.showsCopy, copy, 'metric'))}
      </output>
    </>
  )
}
