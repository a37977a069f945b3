import { useMemo } from 'react'
import type { TrailPoint } from '../../shared-logic/corrosion/trail-point'
import type { Trail } from '../../shared-logic/corrosion/trails'
import { commonWidthM, levelPicture, type LevelPicture } from '../../shared-logic/measuring/level-picture'
import type { Measurement } from '../../shared-logic/measuring/measurement'
import { roundLengthWithin } from '../../shared-logic/measuring/scale-bar'
import { measured } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { frame, LevelPhotograph } from './level-photograph'
import style from './photographs.module.css'

interface Taken {
  readonly point: TrailPoint
  readonly measurement: Measurement
  readonly picture: LevelPicture
}

const takenOn = (points: readonly TrailPoint[]): readonly Taken[] =>
  points.flatMap((point) => {
    const { measurement } = point.spot
    const picture = measurement && levelPicture(measurement)
    return measurement && picture ? [{ point, measurement, picture }] : []
  })

/** The measured photographs of one spot side by side, oldest first: as many millimetres across in each. */
export const TrailPhotographs = ({ trail }: { readonly trail: Trail }) => {
  const { spot: said } = useWords().screens.corrosion
  const units = useUnits()
  const taken = useMemo(() => takenOn(trail.points), [trail])
  const widthM = commonWidthM(taken.map(({ picture }) => picture), frame.height / frame.width)
  const bar = roundLengthWithin(widthM * 0.3, units).label
  return (
    <section className={style.photographs} aria-labelledby="spot-photographs">
      <h3 id="spot-photographs">{said.photographs}</h3>
      {taken.length === 0 ? <p className={style.soft}>{said.noPhotographs}</p> : (
        <>
          <div className={style.row}>
            {taken.map(({ point, measurement, picture }) => (
              <figure key={`${point.surveyId ?? ''} ${point.date}`}>
                <LevelPhotograph measurement={measurement} picture={picture} widthM={widthM} name={say(said.photograph, { place: point.spot.place, date: { date: point.date }, bar }, units)} />
                <figcaption>{say(said.taken, { date: { date: point.date }, area: measured('area', measurement.result.areaM2), uncertainty: measured('area', measurement.result.uncertaintyM2) }, units)}</figcaption>
              </figure>
            ))}
          </div>
          <p className={style.soft}>{say(said.sameScale, { scale: measured('smallLength', widthM) }, units)}{taken.length === 1 && ` ${said.onePhotograph}`}</p>
        </>
      )}
    </section>
  )
}
