import { memo } from 'react'
import { planView } from '../../shared-logic/drawings/plan-view'
import type { Rig } from '../../shared-logic/rig/rig'
import type { RuleBook } from '../../shared-logic/rules/rule-book'
import { DrawingShapes } from './drawing-shapes'
import style from './rig-thumbnail.module.css'

interface RigThumbnailProps {
  readonly rig: Rig
  readonly ruleBook: RuleBook
}

/** The rig in small, lying on its side with the coupler to the left; the words beside it say what it is. */
export const RigThumbnail = memo(({ rig, ruleBook }: RigThumbnailProps) => {
  const { viewBox: [x, y, width, height], shapes } = planView(rig, ruleBook, { walk: false })
  return (
    <svg className={style.thumbnail} viewBox={`${y} ${-x - width} ${height} ${width}`} aria-hidden="true">
      <g transform="rotate(-90)">
        <DrawingShapes shapes={shapes.filter((shape) => shape.kind !== 'text')} />
      </g>
    </svg>
  )
})
RigThumbnail.displayName = 'RigThumbnail'
