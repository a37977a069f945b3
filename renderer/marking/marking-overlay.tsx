import { boundsOf, type Bounds } from '../../shared-logic/marking/mark-geometry'
import type { Plate } from '../../shared-logic/marking/plates'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import { CrosshairMark } from '../picture-board/crosshair-mark'
import base from '../picture-board/stage.module.css'
import { toFrame, type FrameSize, type View } from '../picture-board/view'
import style from './marking.module.css'
import { chosenMark, type Chosen, type Sketch } from './sketch'

interface MarkingOverlayProps {
  readonly sketch: Sketch
  readonly chosen: Chosen | undefined
  readonly plates: ReadonlyMap<Chosen, Plate>
  /** The first of two points, while the second is waited for; or where words will stand. */
  readonly start: PixelPoint | undefined
  readonly crosshair: PixelPoint | undefined
  readonly view: View
  readonly frame: FrameSize
}

/** Round what is chosen, px of the frame. */
const aroundPx = 8

/** What has no ends to take hold of is shown to be chosen by a frame round it. */
const shownBounds = (sketch: Sketch, chosen: Chosen | undefined, plates: ReadonlyMap<Chosen, Plate>): Bounds | undefined => {
  const mark = chosenMark(sketch, chosen)
  if (mark === undefined || chosen === undefined) return undefined
  if (mark.kind === 'text') return plates.get(chosen)
  return mark.kind === 'freehand' ? boundsOf(mark) : undefined
}

/** What the hand needs to see and nobody keeps: what is chosen, where a drawing begins, the crosshair. */
export const MarkingOverlay = ({ sketch, chosen, plates, start, crosshair, view, frame }: MarkingOverlayProps) => {
  const bounds = shownBounds(sketch, chosen, plates)
  const [x, y] = bounds ? toFrame(view, [bounds.x, bounds.y]) : [0, 0]
  const box = bounds && { x: x - aroundPx, y: y - aroundPx, width: bounds.width * view.scale + 2 * aroundPx, height: bounds.height * view.scale + 2 * aroundPx }
  const [startX, startY] = start ? toFrame(view, start) : [0, 0]
  return (
    <svg className={base.overlay} width={frame.width} height={frame.height} aria-hidden="true">
      {box && <><rect {...box} className={style.chosenDark} /><rect {...box} className={style.chosenLight} /></>}
      {start && <><circle cx={startX} cy={startY} r={7} className={base.casing} /><circle cx={startX} cy={startY} r={7} className={base.cross} /></>}
      {crosshair && <CrosshairMark at={toFrame(view, crosshair)} />}
    </svg>
  )
}
