import { useMemo, useRef, useState, type KeyboardEvent } from 'react'
import type { PixelPoint, Stroke } from '../../shared-logic/measuring/measurement'
import { originalPxPerWorkingPx, type PictureSize } from '../../shared-logic/measuring/picture-size'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { keyStep, mostStrokes, onPicture, placeFor, withPointAdded, withPoints, type Board, type PointList } from './board'
import { arrowWays, Handle } from './handle'
import { Magnifier } from './magnifier'
import { Overlay } from './overlay'
import style from './stage.module.css'
import layout from './measuring.module.css'
import { useStroke, type BrushTip } from './use-stroke'
import { useTouches } from './use-touches'
import { useView } from './use-view'
import { toFrame, toPicture } from './view'

/** What the hand does on the picture: puts points of one list, or paints. */
export type Tool = { readonly puts: PointList } | { readonly paints: 'brush' | 'finder'; readonly tip: BrushTip }

interface StageProps {
  readonly src: string
  readonly size: PictureSize
  readonly board: Board
  readonly outline: string
  readonly tool: Tool
  readonly onPut: (board: Board, gesture?: string) => void
  readonly onImage: (image: HTMLImageElement) => void
  readonly onNoImage: () => void
}

const zoomStep = 1.5
const edgeReachPx = 9

const where = ([x, y]: PixelPoint): { x: number; y: number } => ({ x: Math.round(x), y: Math.round(y) })

/** The photograph with what was put on it: come closer, move it, put and drag points, paint. All of it by keys as well. */
export const Stage = ({ src, size, board, outline, tool, onPut, onImage, onNoImage }: StageProps) => {
  const said = useWords().screens.measuring
  const units = useUnits()
  const frame = useRef<HTMLDivElement>(null)
  const viewed = useView(frame, size)
  const { view } = viewed
  const [cross, setCross] = useState<PixelPoint>([size.widthPx / 2, size.heightPx / 2])
  const [isCrossShown, setCrossShown] = useState(false)
  const [touched, setTouched] = useState<PixelPoint>()
  const [news, setNews] = useState('')
  const gesture = useRef(0)
  const grabbed = useRef<PixelPoint>([0, 0])
  const tip = 'paints' in tool ? tool.tip : undefined
  const list = 'puts' in tool ? tool.puts : undefined
  const points = list === undefined ? [] : board.points[list]
  const isPolygon = list === 'polygon' || list === 'face'

  const addStroke = (stroke: Stroke): void => {
    if (!('paints' in tool) || board.strokes[tool.paints].length >= mostStrokes) return
    onPut({ ...board, strokes: { ...board.strokes, [tool.paints]: [...board.strokes[tool.paints], stroke] } })
  }
  const drawn = useStroke(tip, addStroke)
  const at = (place: PixelPoint): PixelPoint => onPicture(toPicture(view, place), size)
  const addPoint = (point: PixelPoint): void => {
    if (list !== undefined) onPut(withPointAdded(board, list, point, isPolygon ? placeFor(points, point, edgeReachPx / view.scale) : undefined))
    else if (tip) addStroke({ ...tip, points: [point] })
  }
  const tap = (place: PixelPoint): void => {
    const point = at(place)
    const isInside = toPicture(view, place).every((value, axis) => Math.abs(value - (point[axis] ?? 0)) < 12 / view.scale)
    if (!isInside) return
    setCross(point)
    setCrossShown(false)
    addPoint(point)
  }
  const touches = useTouches(viewed, {
    onTap: tap,
    ...(tip && { onDown: (place: PixelPoint) => drawn.begin(at(place)), onMove: (place: PixelPoint) => drawn.go(at(place)), onUp: drawn.end, onCancel: drawn.cancel }),
  })
  const moveCross = ([x, y]: PixelPoint, isLarge: boolean): void => {
    const step = keyStep(size, isLarge)
    const next = onPicture([cross[0] + x * step, cross[1] + y * step], size)
    setCross(next)
    setCrossShown(true)
    viewed.bring(next)
    setNews(say(said.crosshair, where(next), units))
  }
  const strike = (event: KeyboardEvent<HTMLDivElement>): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    const way = arrowWays[event.key]
    if (way !== undefined && event.target === event.currentTarget) moveCross(way, event.shiftKey)
    else if (event.key === '+' || event.key === '=') viewed.zoom(zoomStep, isCrossShown ? toFrame(view, cross) : undefined)
    else if (event.key === '-') viewed.zoom(1 / zoomStep, isCrossShown ? toFrame(view, cross) : undefined)
    else if (event.key === '0') viewed.fit()
    else if ((event.key === 'Enter' || event.key === ' ') && event.target === event.currentTarget) addPoint(cross)
    else return
    event.preventDefault()
  }
  const names = list && said.handles[list]
  const nameOf = (index: number): string => say(names ?? '', { number: index + 1 }, units)
  const moveTo = (index: number, point: PixelPoint, name: string): void => {
    if (list !== undefined) onPut(withPoints(board, list, points.with(index, onPicture(point, size))), name)
  }
  const step = (index: number, [x, y]: PixelPoint, isLarge: boolean): void => {
    const by = keyStep(size, isLarge)
    const [fromX, fromY] = points[index] ?? [0, 0]
    const next = onPicture([fromX + x * by, fromY + y * by], size)
    moveTo(index, next, `keys ${list} ${index}`)
    viewed.bring(next)
    setNews(say(said.moved, { name: nameOf(index), ...where(next) }, units))
  }
  const remove = (index: number): void => {
    if (list === undefined) return
    setNews(say(said.removed, { name: nameOf(index) }, units))
    onPut(withPoints(board, list, points.toSpliced(index, 1)))
    frame.current?.focus()
  }
  const shownImage = useMemo(
    () => <img src={src} alt="" className={style.picture} draggable={false} onLoad={(event) => onImage(event.currentTarget)} onError={onNoImage} style={{ width: size.widthPx * view.scale, height: size.heightPx * view.scale, left: view.left, top: view.top }} />,
    [src, size, view, onImage, onNoImage],
  )
  return (
    <div className={layout.board}>
      {/* oxlint-disable jsx-a11y/no-noninteractive-tabindex, jsx-a11y/no-noninteractive-element-interactions -- a drawing surface of its own: what it takes is told beside it */}
      <div
        ref={frame} role="application" tabIndex={0} className={style.stage} data-moves={list !== undefined && !isPolygon && points.length >= (list === 'length' ? 2 : 4)}
        aria-label={said.stage} aria-describedby="measuring-help" onKeyDown={strike} {...touches}
      >
        {/* oxlint-enable jsx-a11y/no-noninteractive-tabindex, jsx-a11y/no-noninteractive-element-interactions */}
        {shownImage}
        <Overlay board={board} outline={outline} stroke={drawn.stroke} view={view} frame={viewed.frame} crosshair={isCrossShown ? cross : undefined} />
        {points.map((point, index) => (
          <Handle
            // A point has no identity beyond its place in the row.
            // oxlint-disable-next-line react/no-array-index-key
            key={`${list} ${index}`} number={index + 1} at={toFrame(view, point)}
            label={say(said.handleAt, { name: nameOf(index), ...where(point) }, units)}
            onGrab={() => { gesture.current += 1; grabbed.current = point }}
            onDrag={(byX, byY, isTouch) => {
              const to: PixelPoint = [grabbed.current[0] + byX / view.scale, grabbed.current[1] + byY / view.scale]
              moveTo(index, to, `drag ${gesture.current}`)
              if (isTouch) setTouched(onPicture(to, size))
            }}
            onLetGo={() => setTouched(undefined)} onStep={(way, isLarge) => step(index, way, isLarge)} onRemove={() => remove(index)}
          />
        ))}
        {touched && <Magnifier src={src} size={size} view={view} point={touched} />}
      </div>
      <output className="visually-hidden">{news}</output>
      <div className={layout.tools}>
        <Button onPress={() => { setCrossShown(true); addPoint(cross) }}>{list === undefined ? said.dab : said.addPoint}</Button>
        <span className={layout.gap} />
        <Button onPress={() => viewed.zoom(1 / zoomStep)} aria-label={said.zoomOut}>−</Button>
        <Button onPress={viewed.fit}>{said.fit}</Button>
        <Button onPress={() => viewed.zoom(zoomStep)} aria-label={said.zoomIn}>+</Button>
      </div>
      <p id="measuring-help" className={layout.help}>{said.stageHelp}</p>
    </div>
  )
}

/** A brush to begin with: a fiftieth of the picture's long edge, px of the original. */
export const usualRadiusPx = (size: PictureSize): number => Math.round(originalPxPerWorkingPx(size) * Math.max(4, Math.max(size.widthPx, size.heightPx) / originalPxPerWorkingPx(size) / 50))
