import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import { ShownPicture } from './shown-picture'
import style from './stage.module.css'
import { toFrame, type View } from './view'

const widthPx = 120
const times = 2.5
const aboveFinger = 100

interface MagnifierProps {
  readonly src: string
  readonly size: PictureSize
  readonly view: View
  readonly point: PixelPoint
  readonly quarterTurns?: number
}

/** What lies under the finger, larger and above it; below it at the upper border. */
export const Magnifier = ({ src, size, view, point, quarterTurns = 0 }: MagnifierProps) => {
  const [x, y] = toFrame(view, point)
  const scale = view.scale * times
  const top = y < aboveFinger + widthPx / 2 ? y + aboveFinger : y - aboveFinger
  return (
    <div className={style.magnifier} style={{ left: x, top, width: widthPx, height: widthPx }} aria-hidden="true">
      <ShownPicture src={src} size={size} quarterTurns={quarterTurns} view={{ scale, left: widthPx / 2 - point[0] * scale, top: widthPx / 2 - point[1] * scale }} />
      <svg viewBox="-60 -60 120 120"><path d="M-60 0H-6M6 0H60M0 -60V-6M0 6V60" className={style.casing} /><path d="M-60 0H-6M6 0H60M0 -60V-6M0 6V60" className={style.cross} /></svg>
    </div>
  )
}
