import { useMemo } from 'react'
import type { Trail } from '../../shared-logic/corrosion/trails'
import { curveKinds, trailCurve } from '../../shared-logic/drawings/corrosion/trail-curve'
import { sayTrail } from '../../shared-logic/words/corrosion/trail'
import { say } from '../../shared-logic/words/say'
import { DrawingView } from '../drawing/drawing-view'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { useIsNarrow } from '../sums/use-is-narrow'
import style from './trail-panel.module.css'

/** Area, depth and coating over the surveys: those that were measured. */
export const TrailCurves = ({ trail }: { readonly trail: Trail }) => {
  const words = useWords()
  const { curves: said, spot } = words.screens.corrosion
  const units = useUnits()
  const isSmall = useIsNarrow()
  const drawn = useMemo(() => curveKinds.flatMap((kind) => {
    const drawing = trailCurve(trail, kind, { words, units, isSmall })
    return drawing ? [{ kind, drawing }] : []
  }), [trail, words, units, isSmall])
  // The same figures as the lines of the course, for those who cannot see the curve.
  const points = sayTrail(words, trail, units).lines.slice(1, trail.points.length + 1).map(({ text }) => text.replace(/\.$/, '')).join('; ')
  return (
    <section className={style.part} aria-labelledby="spot-curves">
      <h3 id="spot-curves">{spot.curves}</h3>
      {drawn.length === 0 && <p className={style.soft}>{said.none}</p>}
      <div className={style.curves}>
        {drawn.map(({ kind, drawing }) => (
          <figure key={kind} className={style.curve}>
            <h4>{said[kind].title}</h4>
            <DrawingView drawing={drawing} title={say(said[kind].alternative, { points }, units)} />
            <figcaption>{said[kind].note}</figcaption>
          </figure>
        ))}
      </div>
    </section>
  )
}
