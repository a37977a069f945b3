import { useMemo } from 'react'
import { trailOf, type Spot } from '../../shared-logic/survey/spot'
import { useQueryOf } from '../client/use-procedure'

/** A spot as an earlier survey left it. */
export interface EarlierSpot {
  readonly spot: Spot
  readonly position: string
  readonly date: string
}

/** The last record of every spot of the rig's earlier surveys: those of this position first, then the newest. */
export const useEarlierSpots = (rigId: string, surveyId: string, position: string): readonly EarlierSpot[] => {
  const surveys = useQueryOf('corrosion.history', { rigId }).data?.surveys
  return useMemo(() => {
    const all = (surveys ?? [])
      .filter((survey) => survey.surveyId !== surveyId)
      .toSorted((a, b) => b.date.localeCompare(a.date))
      .flatMap(({ date, places }) => places.flatMap((place) => place.spots.map((spot) => ({ spot, date, position: place.position }))))
    const last = [...new Map(all.toReversed().map((each) => [trailOf(each.spot), each])).values()].toReversed()
    return last.toSorted((a, b) => Number(b.position === position) - Number(a.position === position))
  }, [surveys, surveyId, position])
}
