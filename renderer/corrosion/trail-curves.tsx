import { useMemo } from 'react'
import { depthErrorM } from '../../shared-logic/corrosion/growth'
import type { Trail } from '../../shared-logic/corrosion/trails'
import { curveKinds, trailCurve } from '../../shared-logic/drawings/corrosion/trail-curve'
import { measured } from '../../shared-logic/units/quantity'
import { sayTrail } from '../../shared-logic/words/corrosion/trail'
import { say } from '../../shared-logic/words/say'
import { DrawingView } from '../drawing/drawing-view'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './trail-panel.module.css'

/** Area, depth and coating over the surveys: those that were measured. Side by side they have little room, so each is drawn small, with figures that can be read. */
export const TrailCurves = ({ trail }: { readonly trail: Trail }) => {
  const words = useWords()
  const { curves: said, spot } = words.screens.corrosion
  const units = useUnits()
  const drawn = useMemo(() => curveKinds.flatMap((kind) => {
    const drawing = trailCurve(trail, kind, { words, units, isSmall: true })
    return drawing ? [{ kind, drawing }] : []
  }), [trail, words, units])
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
            <figcaption>{say(said[kind].note, { error: measured('smallLength', depthErrorM) }, units)}</figcaption>
          </figure>
        ))}
      </div>
    </section>
  )
}
