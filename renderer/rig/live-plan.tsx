import { useDeferredValue, useMemo } from 'react'
import { planView } from '../../shared-logic/drawings/plan-view'
import { DrawingView } from '../drawing/drawing-view'
import { RigThumbnail } from '../drawing/rig-thumbnail'
import { useSettings } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { rigSoFar, type Draft } from './draft'
import style from './live-plan.module.css'

/** The rig as described so far; a step behind fast typing rather than in its way. */
export const LivePlan = ({ draft }: { readonly draft: Draft }) => {
  const { rig: words } = useWords().screens
  const { ruleBook } = useSettings()
  const settled = useDeferredValue(draft)
  const rig = useMemo(() => rigSoFar(settled), [settled])
  const drawing = useMemo(() => planView(rig, ruleBook, { walk: false }), [rig, ruleBook])
  return (
    <figure className={style.plan}>
      <div className={style.sheet}><DrawingView drawing={drawing} title={words.liveDrawing} /></div>
      <div className={style.lying}><RigThumbnail rig={rig} ruleBook={ruleBook} /></div>
      <figcaption className={style.caption}>{drawing.toScale ? words.drawingNote : words.sketchNote}</figcaption>
    </figure>
  )
}
