import { useRef, type ReactNode } from 'react'
import type { PixelPoint, Stroke } from '../../shared-logic/measuring/measurement'
import { originalPxPerWorkingPx, type PictureSize } from '../../shared-logic/measuring/picture-size'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import bench from '../picture-board/bench.module.css'
import { Handle } from '../picture-board/handle'
import { Magnifier } from '../picture-board/magnifier'
import { onPicture } from '../picture-board/on-picture'
import { ShownPicture } from '../picture-board/shown-picture'
import style from '../picture-board/stage.module.css'
import { useCrosshair } from '../picture-board/use-crosshair'
import { useTouches } from '../picture-board/use-touches'
import { useView, type ViewControl } from '../picture-board/use-view'
import { isNearPicture, toFrame, toPicture } from '../picture-board/view'
import { ZoomButtons } from '../picture-board/zoom-buttons'
import { mostPoints, mostStrokes, placeFor, withPointAdded, type Board, type PointList } from './board'
import layout from './measuring.module.css'
import { Overlay } from './overlay'
import { usePoints, type Points } from './use-points'
import { useStroke, type BrushTip } from './use-stroke'

/** What the hand does on the picture: puts points of one list, or paints. */
export type Tool = { readonly puts: PointList } | { readonly paints: 'brush' | 'finder'; readonly tip: BrushTip }

interface StageProps {
  readonly src: string
  readonly size: PictureSize
  readonly board: Board
  readonly outline: string
  readonly tool: Tool
  readonly onPut: (board: Board, gesture?: string) => void
  /** What takes back and does again, near the hand. */
  readonly history: ReactNode
  readonly onImage: (image: HTMLImageElement) => void
  readonly onNoImage: () => void
}

/** A point put this near to an edge belongs on it; px of the frame. */
const edgeReachPx = 9

/** What a point put on the picture makes of the board, or a stroke. */
const putOn = (board: Board, tool: Tool, point: PixelPoint, edgePx: number): Board => {
  if ('paints' in tool) return painted(board, tool.paints, { ...tool.tip, points: [point] })
  const { puts } = tool
  const isPolygon = puts === 'polygon' || puts === 'face'
  return withPointAdded(board, puts, point, isPolygon ? placeFor(board.points[puts], point, edgePx) : undefined)
}

const painted = (board: Board, on: 'brush' | 'finder', stroke: Stroke): Board =>
  board.strokes[on].length >= mostStrokes ? board : { ...board, strokes: { ...board.strokes, [on]: [...board.strokes[on], stroke] } }

/** The photograph with what was put on it: come closer, move it, put and drag points, paint. All of it by keys as well. */
export const Stage = ({ src, size, board, outline, tool, onPut, history, onImage, onNoImage }: StageProps) => {
  const said = useWords().screens.measuring
  const frame = useRef<HTMLDivElement>(null)
  const viewed = useView(frame, size)
  const { view } = viewed
  const tip = 'paints' in tool ? tool.tip : undefined
  const list = 'puts' in tool ? tool.puts : undefined
  const put = (point: PixelPoint): void => onPut(putOn(board, tool, point, edgeReachPx / view.scale))
  const points = usePoints({ board, list, size, viewed, onPut, onRemoved: () => frame.current?.focus() })
  const crosshair = useCrosshair(size, viewed, put)
  const drawn = useStroke(tip, (stroke) => { if ('paints' in tool) onPut(painted(board, tool.paints, stroke)) })
  const at = (place: PixelPoint): PixelPoint => onPicture(toPicture(view, place), size)
  const tap = (place: PixelPoint): void => {
    if (!isNearPicture(view, place, size)) return
    const point = at(place)
    crosshair.follow(point)
    put(point)
  }
  const tapInWindow = (x: number, y: number): void => {
    const box = frame.current?.getBoundingClientRect()
    if (box) tap([x - box.left, y - box.top])
  }
  const touches = useTouches(viewed, {
    onTap: tap,
    ...(tip && { onDown: (place: PixelPoint) => { drawn.begin(at(place)); return true }, onMove: (place: PixelPoint) => drawn.go(at(place)), onUp: drawn.end, onCancel: drawn.cancel }),
  })
  const isFull = list !== undefined && points.points.length >= mostPoints[list]
  return (
    <div className={bench.board}>
      {/* oxlint-disable jsx-a11y/no-noninteractive-tabindex, jsx-a11y/no-noninteractive-element-interactions -- a drawing surface of its own: what it takes is told beside it */}
      <div ref={frame} role="application" tabIndex={0} className={style.stage} data-moves={isFull} aria-label={said.stage} aria-describedby="measuring-help" onKeyDown={crosshair.strike} {...touches}>
        {/* oxlint-enable jsx-a11y/no-noninteractive-tabindex, jsx-a11y/no-noninteractive-element-interactions */}
        <ShownPicture src={src} size={size} view={view} onLoad={onImage} onError={onNoImage} />
        <Overlay board={board} outline={outline} stroke={drawn.stroke} view={view} frame={viewed.frame} crosshair={crosshair.isShown ? crosshair.at : undefined} />
        <Handles points={points} viewed={viewed} list={list} onTap={tapInWindow} />
        {points.touched && <Magnifier src={src} size={size} view={view} point={points.touched} />}
      </div>
      <output className="visually-hidden">{points.news}</output>
      <output className="visually-hidden">{crosshair.news}</output>
      <Tools viewed={viewed} isPainting={tip !== undefined} isFull={isFull} onUse={crosshair.act} history={history} />
      <p id="measuring-help" className={bench.help}>{said.stageHelp[tip === undefined ? 'points' : 'brush']}</p>
    </div>
  )
}

const Handles = ({ points, viewed, list, onTap }: { readonly points: Points; readonly viewed: ViewControl; readonly list: PointList | undefined; readonly onTap: (x: number, y: number) => void }) =>
  points.points.map((point, index) => (
    <Handle
      // A point has no identity beyond its place in the row.
      // oxlint-disable-next-line react/no-array-index-key
      key={`${list} ${index}`} number={index + 1} at={toFrame(viewed.view, point)} label={points.labelOf(index)}
      onGrab={() => points.grab(index)} onDrag={(byX, byY, isTouch) => points.drag(index, byX, byY, isTouch)} onLetGo={points.letGo} onTap={onTap}
      onStep={(way, isLarge) => points.step(index, way, isLarge)} onRemove={() => points.remove(index)}
    />
  ))

const Tools = ({ viewed, isPainting, isFull, onUse, history }: { readonly viewed: ViewControl; readonly isPainting: boolean; readonly isFull: boolean; readonly onUse: () => void; readonly history: ReactNode }) => {
  const said = useWords().screens.measuring
  return (
    <div className={bench.under}>
      <Button isDisabled={isFull} onPress={onUse}>{isPainting ? said.dab : said.addPoint}</Button>
      {history}
      <div className={layout.zoom}><ZoomButtons viewed={viewed} /></div>
    </div>
  )
}

/** A brush to begin with, px of the original: a fiftieth of the preview's long edge. */
export const usualRadiusPx = (size: PictureSize): number => {
  const step = originalPxPerWorkingPx(size)
  return Math.round(Math.max(4 * step, Math.max(size.widthPx, size.heightPx) / 50))
}
