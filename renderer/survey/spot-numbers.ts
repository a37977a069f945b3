import { spotsIn } from '../../shared-logic/survey/answer'
import type { Assessed } from '../../shared-logic/survey/assess'
import type { Spot } from '../../shared-logic/survey/spot'

/** A spot of the survey with its number, as the report numbers it: place by place in walking order. */
export interface NumberedSpot {
  readonly number: number
  readonly position: string
  readonly spot: Spot
}

/** All spots of the survey, those of the open check as they stand in its form. */
export const numberedSpots = (assessed: readonly Assessed[], current: Assessed, here: readonly Spot[]): NumberedSpot[] =>
  assessed
    .filter(({ check, answer }) => check.id === current.check.id && answer?.aside === undefined)
    .flatMap(({ key, position, answer }) => {
      const spots = key === current.key ? here : Object.values(answer?.values ?? {}).map(spotsIn).find((noted) => noted !== undefined)
      return (spots ?? []).map((spot) => ({ position, spot }))
    })
    .map((each, index) => ({ ...each, number: index + 1 }))
