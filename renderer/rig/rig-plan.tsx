import { useMemo } from 'react'
import { planView } from '../../shared-logic/drawings/plan-view'
import type { Rig } from '../../shared-logic/rig/rig'
import { say } from '../../shared-logic/words/say'
import { DrawingView } from '../drawing/drawing-view'
import { RigThumbnail } from '../drawing/rig-thumbnail'
import { useSettings } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './live-plan.module.css'

/** The rig from above, from what is registered. */
export const RigPlan = ({ rig }: { readonly rig: Rig }) => {
  const { rig: words } = useWords().screens
  const { ruleBook } = useSettings()
  const drawing = useMemo(() => planView(rig, ruleBook, { walk: false }), [rig, ruleBook])
  return (
    <figure className={style.plan}>
      <div className={style.sheet}><DrawingView drawing={drawing} title={say(words.drawing, { rig: rig.name }, 'metric')} /></div>
      <div className={style.lying}><RigThumbnail rig={rig} ruleBook={ruleBook} /></div>
      <figcaption className={style.caption}>{drawing.toScale ? words.drawingNote : words.sketchNote}</figcaption>
    </figure>
  )
}
