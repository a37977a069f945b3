import { useState, type KeyboardEvent } from 'react'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { arrowWays } from './moving-keys'
import { keyStep, onPicture, wherePx } from './on-picture'
import type { ViewControl } from './use-view'
import { toFrame } from './view'

export const zoomStep = 1.5

export interface Crosshair {
  readonly at: PixelPoint
  readonly isShown: boolean
  readonly news: string
  /** Puts what the tool puts at the crosshair. */
  readonly act: () => void
  /** A pointer took over: it stands there now, and shows again when a key is struck. */
  readonly follow: (point: PixelPoint) => void
  readonly strike: (event: KeyboardEvent<HTMLElement>) => void
}

/** What a pointer does, by keys: arrows move a crosshair over the picture, Enter puts a point there, + − 0 come closer and go back. */
export const useCrosshair = (size: PictureSize, viewed: ViewControl, onUse: (point: PixelPoint) => void, onMove?: (point: PixelPoint) => void): Crosshair => {
  const { crosshair } = useWords().screens.pictureBoard
  const units = useUnits()
  const [at, setAt] = useState<PixelPoint>([size.widthPx / 2, size.heightPx / 2])
  const [isShown, setShown] = useState(false)
  const [news, setNews] = useState('')
  const move = ([x, y]: PixelPoint, isLarge: boolean): void => {
    const step = keyStep(size, isLarge)
    const next = onPicture([at[0] + x * step, at[1] + y * step], size)
    setAt(next)
    setShown(true)
    viewed.bring(next)
    onMove?.(next)
    setNews(say(crosshair, wherePx(next), units))
  }
  const zoom = (by: number): void => viewed.zoom(by, isShown ? toFrame(viewed.view, at) : undefined)
  const act = (): void => {
    setShown(true)
    onUse(at)
  }
  return {
    at, isShown, news, act,
    follow: (point) => {
      setAt(point)
      setShown(false)
    },
    strike: (event) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return
      const isOnPicture = event.target === event.currentTarget
      const way = isOnPicture ? arrowWays[event.key] : undefined
      if (way !== undefined) move(way, event.shiftKey)
      else if (event.key === '+' || event.key === '=') zoom(zoomStep)
      else if (event.key === '-') zoom(1 / zoomStep)
      else if (event.key === '0') viewed.fit()
      else if (isOnPicture && (event.key === 'Enter' || event.key === ' ')) act()
      else return
      event.preventDefault()
    },
  }
}
