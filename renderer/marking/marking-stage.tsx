import { useMemo, useRef, type KeyboardEvent, type ReactNode } from 'react'
import { knownLines } from '../../shared-logic/marking/mark-lines'
import { pxPerPoint } from '../../shared-logic/marking/mark-sizes'
import { platesOf } from '../../shared-logic/marking/marks-drawing'
import type { Mark } from '../../shared-logic/marking/marks'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import bench from '../picture-board/bench.module.css'
import { Magnifier } from '../picture-board/magnifier'
import { onPicture, wherePx } from '../picture-board/on-picture'
import { ShownPicture } from '../picture-board/shown-picture'
import base from '../picture-board/stage.module.css'
import { useCrosshair } from '../picture-board/use-crosshair'
import { useTouches } from '../picture-board/use-touches'
import { useView } from '../picture-board/use-view'
import { isNearPicture, toPicture } from '../picture-board/view'
import { ZoomButtons } from '../picture-board/zoom-buttons'
import { MarkHandles } from './mark-handles'
import style from './marking.module.css'
import { MarkingOverlay } from './marking-overlay'
import { MarksOver } from './marks-over'
import { nameOfMark } from './name-of-mark'
import { choiceAt, everyChoice, layerOf, mostMarks, withoutMark, type Chosen, type Sketch } from './sketch'
import { toolOfKey, withDrawn, type Tool } from './tools'
import { useDrawing } from './use-drawing'
import { useMarkPointer } from './use-mark-pointer'
import { useMoving } from './use-moving'
import { useReader } from './use-reader'

export interface MarkedPhotograph {
  readonly src: string
  /** Of the picture as it is turned. */
  readonly size: PictureSize
  readonly quarterTurns: number
}

/** Words being written at a place of the picture. */
export interface Writing {
  readonly at: PixelPoint
  readonly text: string
}

interface MarkingStageProps {
  readonly picture: MarkedPhotograph
  readonly sketch: Sketch
  readonly tool: Tool
  readonly chosen: Chosen | undefined
  readonly writing: Writing | undefined
  /** What was done last, for those who do not see it. */
  readonly news: string
  readonly onNews: (news: string) => void
  readonly onTool: (tool: Tool) => void
  readonly onChoose: (chosen: Chosen | undefined) => void
  readonly onPut: (sketch: Sketch, gesture?: string) => void
  /** Words are to stand there. */
  readonly onWrite: (at: PixelPoint) => void
  /** What takes back and does again, near the hand. */
  readonly history: ReactNode
  readonly onNoImage: () => void
}

/** Px of the frame: a finger this near to a line means it. */
const reachPx = 20
/** Px of the frame: a pointer that moved less was a tap. */
const stillPx = 6

const withWriting = (sketch: Sketch, writing: Writing | undefined): Sketch => {
  const text = writing?.text.trim() ?? ''
  return writing === undefined || text === '' ? sketch : { ...sketch, marks: [...sketch.marks, { kind: 'text', at: writing.at, text }] }
}

/** The photograph with its marks: drawn, chosen, moved and taken away by pointer, finger and keys. */
export const MarkingStage = ({ picture, sketch, tool, chosen, writing, news, onNews, onTool, onChoose, onPut, onWrite, history, onNoImage }: MarkingStageProps) => {
  const { src, size, quarterTurns } = picture
  const reader = useReader()
  const { marking: said, pictureBoard } = reader.words.screens
  const frame = useRef<HTMLDivElement>(null)
  const viewed = useView(frame, size)
  const { view } = viewed
  const layer = useMemo(() => layerOf(sketch, size), [sketch, size])
  const plates = useMemo(() => platesOf(layer, reader), [layer, reader])
  const tell = (sentence: string, name: string, at: PixelPoint = [0, 0]): void => onNews(say(sentence, { name, ...wherePx(at) }, reader.units))
  const under = (point: PixelPoint): Chosen | undefined => choiceAt(sketch, point, reachPx / view.scale, plates)

  const put = (mark: Mark): void => {
    if (tool !== 'known' && sketch.marks.length >= mostMarks) return onNews(said.full)
    const drawn = withDrawn(sketch, tool, mark)
    const which = tool === 'known' ? 'known' : sketch.marks.length
    onPut(drawn)
    onChoose(which)
    // It was wanted for this.
    if (tool === 'known') onTool('length')
    tell(said.drawn, nameOfMark(layerOf(drawn, size), which, reader))
  }
  const remove = (which: Chosen): void => {
    tell(said.removed, nameOfMark(layer, which, reader))
    onPut(withoutMark(sketch, which))
    onChoose(undefined)
    frame.current?.focus()
  }
  const press = (point: PixelPoint): void => {
    if (tool === 'text') onWrite(point)
    else if (tool === 'move') onChoose(under(point))
  }
  const pressByKey = (point: PixelPoint): void => {
    drawing.enter(point)
    const found = tool === 'move' ? under(point) : undefined
    if (found !== undefined) frame.current?.querySelectorAll<HTMLElement>('[data-grip="true"]')[everyChoice(sketch).indexOf(found)]?.focus()
  }
  const drawing = useDrawing({ tool, stillPx: stillPx / view.scale, onDrawn: put, onStart: (point) => tell(said.started, said.tools.names[tool], point), onPress: press })
  const moving = useMoving({ sketch, size, viewed, onPut, onStepped: (which, at) => tell(pictureBoard.moved, nameOfMark(layer, which, reader), at) })
  const crosshair = useCrosshair(size, viewed, pressByKey, drawing.follow)
  const at = (place: PixelPoint): PixelPoint => onPicture(toPicture(view, place), size)
  const pointer = useMarkPointer({ tool, at, isNear: (place) => isNearPicture(view, place, size), stillPx: stillPx / view.scale, under, drawing, moving, onChoose, onTap: (point) => { crosshair.follow(point); press(point) }, onDown: crosshair.follow })
  const touches = useTouches(viewed, pointer.gestures)
  const tapInWindow = (x: number, y: number): void => {
    const box = frame.current?.getBoundingClientRect()
    if (box) pointer.tapAt([x - box.left, y - box.top])
  }

  const strike = (event: KeyboardEvent<HTMLElement>): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    const next = toolOfKey(event.key)
    if (event.key === 'Escape') {
      // With nothing under way it is the sheet's to hear.
      if (!drawing.cancel()) {
        if (chosen === undefined) return
        onChoose(undefined)
        frame.current?.focus()
      }
      event.stopPropagation()
    } else if ((event.key === 'Delete' || event.key === 'Backspace') && chosen !== undefined) remove(chosen)
    else if (next !== undefined) onTool(next)
    else return crosshair.strike(event)
    event.preventDefault()
  }

  const preview = drawing.preview(crosshair.isShown ? crosshair.at : undefined)
  const shown = withWriting(preview ? withDrawn(sketch, tool, preview) : sketch, writing)
  const shownLayer = layerOf(shown, size)
  const untold = shown.known && shownLayer.scale === undefined ? knownLines(shown.known, pxPerPoint(size)) : undefined
  const touched = moving.touched ?? pointer.touched
  return (
    <div className={bench.board}>
      {/* oxlint-disable jsx-a11y/no-noninteractive-tabindex, jsx-a11y/no-noninteractive-element-interactions -- a drawing surface of its own: what it takes is told beside it */}
      <div ref={frame} role="application" tabIndex={0} className={base.stage} data-moves={tool === 'move'} aria-label={said.stage} aria-describedby="marking-help" onKeyDown={strike} {...touches}>
        {/* oxlint-enable jsx-a11y/no-noninteractive-tabindex, jsx-a11y/no-noninteractive-element-interactions */}
        <ShownPicture src={src} size={size} quarterTurns={quarterTurns} view={view} onError={onNoImage} />
        <div className={style.layer} style={{ left: view.left, top: view.top, width: size.widthPx * view.scale, height: size.heightPx * view.scale }}>
          <MarksOver layer={shownLayer} quarterTurns={0} fit="contain" {...(untold && { below: untold })} />
        </div>
        <MarkingOverlay sketch={sketch} chosen={chosen} plates={plates} start={drawing.start ?? writing?.at} crosshair={crosshair.isShown ? crosshair.at : undefined} view={view} frame={viewed.frame} />
        <MarkHandles sketch={sketch} layer={layer} chosen={chosen} viewed={viewed} moving={moving} onChoose={onChoose} onRemove={remove} onTap={tapInWindow} />
        {touched && <Magnifier src={src} size={size} quarterTurns={quarterTurns} view={view} point={touched} />}
      </div>
      <output className="visually-hidden">{news}</output>
      <output className="visually-hidden">{crosshair.news}</output>
      <div className={bench.under}>
        <Button onPress={crosshair.act}>{said.press[tool]}</Button>
        {history}
        <span className={bench.gap} />
        <ZoomButtons viewed={viewed} />
      </div>
      <p id="marking-help" className={bench.help}>{said.stageHelp}</p>
    </div>
  )
}
