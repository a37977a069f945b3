import type { MarkLayer } from '../../shared-logic/marking/marks'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import { say } from '../../shared-logic/words/say'
import { Handle } from '../picture-board/handle'
import { wherePx } from '../picture-board/on-picture'
import type { ViewControl } from '../picture-board/use-view'
import { toFrame } from '../picture-board/view'
import { Grip } from './grip'
import { nameOfEnd, nameOfMark } from './name-of-mark'
import { chosenMark, everyChoice, gripOf, type Chosen, type Sketch } from './sketch'
import { endOf, type End, type Moving } from './use-moving'
import { useReader } from './use-reader'

interface MarkHandlesProps {
  readonly sketch: Sketch
  readonly layer: MarkLayer
  readonly chosen: Chosen | undefined
  readonly viewed: ViewControl
  readonly moving: Moving
  readonly onChoose: (chosen: Chosen) => void
  readonly onRemove: (chosen: Chosen) => void
  /** Tapped beside a handle, at a place of the window: meant for the picture under it. */
  readonly onTap: (x: number, y: number) => void
}

const ends: readonly End[] = ['from', 'to']

/** What Tab walks through: a grip for every mark, and the two ends of the chosen one. */
export const MarkHandles = ({ sketch, layer, chosen, viewed, moving, onChoose, onRemove, onTap }: MarkHandlesProps) => {
  const reader = useReader()
  const { handleAt } = reader.words.screens.pictureBoard
  const { view } = viewed
  const labelled = (name: string, at: PixelPoint): string => say(handleAt, { name, ...wherePx(at) }, reader.units)
  const dragTo = (which: Chosen, part: End) => (byX: number, byY: number, isTouch: boolean): void => moving.drag(which, part, [byX / view.scale, byY / view.scale], isTouch)
  return everyChoice(sketch).flatMap((which) => {
    const mark = chosenMark(sketch, which)
    if (mark === undefined) return []
    const grip = gripOf(sketch, which)
    return [
      <Grip
        key={`grip ${which}`} label={labelled(nameOfMark(layer, which, reader), grip)} at={toFrame(view, grip)} onFocus={() => onChoose(which)}
        onStep={(way, isLarge) => moving.step(which, 'whole', way, isLarge)} onRemove={() => onRemove(which)}
      />,
      ...ends.flatMap((end) => {
        const at = which === chosen ? endOf(mark, end) : undefined
        return at === undefined ? [] : [
          <Handle
            key={`end ${which} ${end}`} label={labelled(nameOfEnd(layer, which, end, reader), at)} at={toFrame(view, at)} onGrab={() => moving.grab(which)} onDrag={dragTo(which, end)}
            onLetGo={moving.letGo} onTap={onTap} onRemove={() => onRemove(which)} onStep={(way, isLarge) => moving.step(which, end, way, isLarge)}
          />,
        ]
      }),
    ]
  })
}
