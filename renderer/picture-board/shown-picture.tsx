import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import style from './stage.module.css'
import type { View } from './view'

interface ShownPictureProps {
  readonly src: string
  /** Of the picture as it is turned. */
  readonly size: PictureSize
  readonly view: View
  /** Clockwise. */
  readonly quarterTurns?: number
  readonly onLoad?: (image: HTMLImageElement) => void
  readonly onError?: () => void
}

/** Where the upper left corner comes to lie, in shares of the turned picture. */
const corners = [[0, 0], [1, 0], [1, 1], [0, 1]] as const

/** The photograph as it lies in a frame, turned as the surveyor turned it. */
export const ShownPicture = ({ src, size, view: { scale, left, top }, quarterTurns = 0, onLoad, onError }: ShownPictureProps) => {
  const [width, height] = [size.widthPx * scale, size.heightPx * scale]
  const [right, down] = corners[quarterTurns] ?? corners[0]
  const lying = quarterTurns % 2 === 1 ? { width: height, height: width } : { width, height }
  return (
    <img
      src={src} alt="" className={style.picture} draggable={false} onLoad={(event) => onLoad?.(event.currentTarget)} onError={onError}
      style={{ ...lying, left: left + right * width, top: top + down * height, ...(quarterTurns !== 0 && { rotate: `${quarterTurns * 90}deg` }) }}
    />
  )
}
