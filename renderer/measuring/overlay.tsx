import { useId } from 'react'
import type { PixelPoint, Stroke } from '../../shared-logic/measuring/measurement'
import { CrosshairMark } from '../picture-board/crosshair-mark'
import base from '../picture-board/stage.module.css'
import { toFrame, type FrameSize, type View } from '../picture-board/view'
import type { Board, PointList } from './board'
import style from './overlay.module.css'

const pathOf = (points: readonly PixelPoint[], isClosed: boolean): string => (points.length === 0 ? '' : `M${points.map(([x, y]) => `${x} ${y}`).join('L')}${isClosed ? 'Z' : ''}`)

/** Two lines one upon the other, dark and light, so that one of them shows on rust and on zinc alike. */
const Line = ({ d, look }: { readonly d: string; readonly look: PointList | 'mask' }) => (d === '' ? null : <><path d={d} className={base.casing} /><path d={d} className={style[look]} /></>)

interface OverlayProps {
  readonly board: Board
  readonly outline: string
  readonly stroke: Stroke | undefined
  readonly view: View
  readonly frame: FrameSize
  readonly crosshair: PixelPoint | undefined
}

const strokePath = ({ points }: Stroke): string => (points.length === 1 ? `${pathOf(points, false)}l0.01 0` : pathOf(points, false))

/** What was put on the picture: outline hatched, scale and face as lines, the stroke under the hand, the crosshair. */
export const Overlay = ({ board, outline, stroke, view, frame, crosshair }: OverlayProps) => {
  const hatch = useId()
  const { points, scaleBy, outlineBy } = board
  const d = outlineBy === 'polygon' ? pathOf(points.polygon, points.polygon.length > 2) : outline
  return (
    <svg className={style.overlay} width={frame.width} height={frame.height} aria-hidden="true">
      <defs>
        <pattern id={hatch} patternUnits="userSpaceOnUse" width="9" height="9" patternTransform={`scale(${1 / view.scale}) rotate(45)`}>
          <path d="M0 0V9" className={style.hatchDark} /><path d="M4.5 0V9" className={style.hatchLight} />
        </pattern>
      </defs>
      <g transform={`translate(${view.left} ${view.top}) scale(${view.scale})`}>
        <path d={d} fill={`url(#${hatch})`} fillRule="evenodd" stroke="none" />
        <Line d={d} look="mask" />
        <Line d={pathOf(points.face, points.face.length > 2)} look="face" />
        {scaleBy === 'length' ? <Line d={pathOf(points.length, false)} look="length" /> : <Line d={pathOf(points.corners, points.corners.length > 2)} look="corners" />}
        {stroke && <path d={strokePath(stroke)} className={style.stroke} data-does={stroke.does} strokeWidth={stroke.radiusPx * 2} />}
      </g>
      {crosshair && <CrosshairMark at={toFrame(view, crosshair)} />}
    </svg>
  )
}
