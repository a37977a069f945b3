import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import { useWords } from '../parts/use-words'
import { movingKeys } from '../picture-board/moving-keys'
import style from './marking.module.css'

interface GripProps {
  readonly label: string
  /** Where it stands in the frame, px. */
  readonly at: PixelPoint
  readonly onFocus: () => void
  readonly onStep: (way: PixelPoint, isLarge: boolean) => void
  readonly onRemove: () => void
}

/** A whole mark for the keyboard: found by Tab, moved by arrows, taken away by Delete. A pointer takes hold of the mark itself. */
export const Grip = ({ label, at: [left, top], onFocus, onStep, onRemove }: GripProps) => {
  const { roleOfMark } = useWords().screens.marking
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex, jsx-a11y/no-noninteractive-element-interactions, jsx-a11y/prefer-tag-over-role -- a thing drawn on a surface of its own, taken hold of by keys
    <div role="group" tabIndex={0} data-grip="true" aria-roledescription={roleOfMark} aria-label={label} className={style.grip} style={{ left, top }} onFocus={onFocus} onKeyDown={movingKeys({ onStep, onRemove })} />
  )
}
