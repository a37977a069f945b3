import { useMemo, useState } from 'react'
import { gradeSpot, type SpotGrading } from '../../shared-logic/corrosion/grade-spot'
import type { MeasuredArea, Measurement } from '../../shared-logic/measuring/measurement'
import { spotSchema, type Spot } from '../../shared-logic/survey/spot'
import { say } from '../../shared-logic/words/say'
import { Sheet } from '../parts/sheet'
import { Button } from '../parts/button'
import { ConfirmDialog } from '../parts/dialog'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { SpotGrade, SpotVerdict } from './spot-grade'
import { SpotMeasuring } from './spot-measuring'
import { numberedSpots } from './spot-numbers'
import { SpotPlace } from './spot-place'
import { spotProblems } from './spot-problems'
import { useSpotScene } from './spot-scene'
import style from './spot-sheet.module.css'
import { SpotSize } from './spot-size'
import { newSpot } from './spot-suggestions'
import { SpotWhat } from './spot-what'
import type { EarlierSpot } from './use-earlier-spots'

interface SpotSheetProps {
  readonly spot: Spot | undefined
  /** All spots of this part as they stand; this one may be among them. */
  readonly spots: readonly Spot[]
  readonly earlier: readonly EarlierSpot[]
  readonly onKeep: (spot: Spot) => void
  readonly onClose: () => void
}

/** What a measurement on a photograph says of a spot. A share goes with the measurement it came from. */
const withMeasurement = ({ share: before, ...spot }: Spot, { areaM2, uncertaintyM2, faceAreaM2, share = spot.measurement?.result.share === undefined ? before : undefined }: MeasuredArea, measurement?: Measurement): Spot => ({
  ...spot, areaM2, areaUncertaintyM2: uncertaintyM2,
  ...(faceAreaM2 !== undefined && { faceAreaM2 }), ...(share !== undefined && { share }), ...(measurement && { measurement }),
})

/** A place found sound keeps no size: what was measured then stands in the survey before. */
const asKept = (spot: Spot): Spot => {
  if (spot.state !== 'repaired') return spot
  const { areaM2: _a, areaUncertaintyM2: _u, share: _s, pitDepthM: _p, pitCount: _c, remainingM: _r, measurement: _m, coatingReadingsM: _z, ...rest } = spot
  return rest
}

/** One corroded spot, whole: where, what, how much, and what it comes to while it is written. */
export const SpotSheet = ({ spot: given, spots, earlier, onKeep, onClose }: SpotSheetProps) => {
  const words = useWords()
  const said = words.screens.survey.spots
  const units = useUnits()
  const { walk } = useSpotScene()
  const { position } = walk.current
  const [first] = useState(() => given ?? newSpot(walk.survey.rig, position))
  const [spot, setSpot] = useState(first)
  const [unread, setUnread] = useState<ReadonlySet<string>>(new Set())
  const [hasReadingLeft, setReadingLeft] = useState(false)
  const [isTried, setTried] = useState(false)
  const [shown, setShown] = useState<'board' | 'leaving'>()
  const fellows = useMemo(() => spots.filter((each) => each.id !== first.id), [spots, first])
  const numbered = numberedSpots(walk.assessed, walk.current, spots.some(({ id }) => id === first.id) ? spots : [...spots, first])
  const number = numbered.find((each) => each.spot.id === first.id)?.number ?? numbered.length
  const kept = asKept(spot)
  const problems = spotProblems(words, kept, fellows)
  const isWrong = unread.size > 0 || Object.keys(problems).length > 0
  const gradingOf = (each: Spot): SpotGrading => gradeSpot(each, [...fellows, each], { position })
  const needsPlace = isTried && spot.place.trim() === ''
  const keep = (): void => {
    setTried(true)
    const read = spotSchema.safeParse(kept)
    if (read.success && !isWrong && !hasReadingLeft) onKeep(read.data)
  }
  const gradeOf = (result: MeasuredArea) => {
    const measured = withMeasurement(spot, result)
    return Object.keys(spotProblems(words, measured, fellows)).length > 0 ? null : <SpotVerdict grading={gradingOf(measured)} />
  }
  const turnUnread = (field: string, isUnread: boolean): void => setUnread((before) => new Set(isUnread ? [...before, field] : [...before].filter((each) => each !== field)))
  const leave = (): void => {
    if (spot === first) onClose()
    else setShown('leaving')
  }
  return (
    <Sheet
      title={say(said.titleNumbered, { number }, units)} onClose={leave}
      actions={
        <>
          <div className={style.foot}>{isTried && (isWrong || needsPlace || hasReadingLeft) ? <p role="alert">{said.toMend}</p> : !isWrong && <SpotVerdict grading={gradingOf(kept)} />}</div>
          <Button onPress={leave}>{said.cancel}</Button><Button kind="primary" onPress={keep}>{said.keep}</Button>
        </>
      }
    >
      <div className={style.columns}>
        <div className={style.entry}>
          <section className={style.part} aria-label={said.parts.place}>
            <h3>{said.parts.place}</h3>
            <SpotPlace spot={spot} position={position} number={number} others={numbered.filter((each) => each.spot.id !== first.id)} earlier={earlier} error={needsPlace ? said.needPlace : undefined} onChange={setSpot} />
          </section>
          <section className={style.part} aria-label={said.parts.what}><h3>{said.parts.what}</h3><SpotWhat spot={spot} onChange={setSpot} /></section>
          {spot.state !== 'repaired' && (
            <section className={style.part} aria-label={said.parts.size}>
              <h3>{said.parts.size}</h3>
              <SpotSize spot={spot} problems={problems} isTried={isTried} onChange={setSpot} onUnread={turnUnread} onReadingLeft={setReadingLeft} onMeasure={() => setShown('board')} />
            </section>
          )}
        </div>
        <section className={style.graded} aria-label={said.parts.grade}>
          <h3>{said.parts.grade}</h3>
          {isWrong ? <p>{said.noGrade}</p> : <SpotGrade grading={gradingOf(kept)} />}
        </section>
      </div>
      {shown === 'board' && (
        <SpotMeasuring
          measurement={spot.measurement} gradeOf={gradeOf} onClose={() => setShown(undefined)}
          onKeep={(measurement) => { setSpot(withMeasurement(spot, measurement.result, measurement)); setShown(undefined) }}
        />
      )}
      <ConfirmDialog title={said.discardTitle} isOpen={shown === 'leaving'} confirmLabel={said.discard} cancelLabel={said.stay} onConfirm={onClose} onCancel={() => setShown(undefined)}>
        <p>{said.discardText}</p>
      </ConfirmDialog>
    </Sheet>
  )
}
