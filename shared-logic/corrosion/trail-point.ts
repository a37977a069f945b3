import type { Spot } from '../survey/spot'
import { gradeSpot, type SpotGrading } from './grade-spot'
import { isPresent } from './corroded-share'
import { within, type Ranged } from './ranged'

/** What a survey recorded of corroded spots. A position that is listed was looked at, though nothing was found there. */
export interface SpotSurvey {
  readonly surveyId?: string
  /** The survey's own date, ISO. */
  readonly date: string
  readonly places: readonly { readonly position: string; readonly spots: readonly Spot[] }[]
}

/** One look at a spot. */
export interface TrailPoint {
  readonly surveyId: string | undefined
  readonly date: string
  readonly spot: Spot
  readonly grading: SpotGrading
  /** With the uncertainty that was recorded; else with the one assumed. Undefined where it was not measured, or is repaired. */
  readonly area: Ranged | undefined
  /** Of the face, all spots of the place together, likewise. */
  readonly share: Ranged | undefined
  readonly isAssumed: boolean
}

/** Error of an area whose uncertainty was not recorded, of its size: 10 to 20 % is often quoted, the larger is taken. Common practice, no source. */
const assumedRelative = 0.2

const isExact = ({ low, high }: Ranged): boolean => low === high

const withAssumed = (measured: Ranged | undefined, most?: number): Ranged | undefined =>
  measured === undefined || !isExact(measured) ? measured : within(measured.value, measured.value * assumedRelative, most)

export const trailPoint = (survey: SpotSurvey, position: string, spot: Spot, spots: readonly Spot[]): TrailPoint => {
  const grading = gradeSpot(spot, spots, { position })
  const { area, share } = grading
  return {
    surveyId: survey.surveyId, date: survey.date, spot, grading, area: withAssumed(area), share: withAssumed(share, 1),
    isAssumed: [area, share].some((each) => each !== undefined && isExact(each)),
  }
}

/** The looks since the spot was last found repaired, oldest first: before that it was another spot. */
export const sinceRepair = (points: readonly TrailPoint[]): readonly TrailPoint[] => points.slice(points.findLastIndex(({ spot }) => !isPresent(spot)) + 1)
