import { isPresent } from '../../shared-logic/corrosion/corroded-share'
import { gravestFirst } from '../../shared-logic/corrosion/grade-spot'
import { trailsOf, type Trail, type TrailSetting } from '../../shared-logic/corrosion/trails'
import type { CorrosionSurvey } from '../../shared-logic/survey/records'

/** A spot with its number in drawing and table. */
export interface NumberedTrail {
  readonly number: number
  readonly trail: Trail
}

/** What still stands, the gravest first; then what was not looked at again; then what is repaired. */
const groupOf = ({ standing }: Trail): number => (standing === 'healed' ? 2 : standing === 'not looked at again' ? 1 : 0)

/** The spots of a rig over its surveys, numbered in the order they are told. */
export const numberedTrails = (surveys: readonly CorrosionSurvey[], setting: TrailSetting): readonly NumberedTrail[] => {
  const trails = trailsOf(surveys, setting)
  const order = gravestFirst(trails.map(({ last }) => last.grading))
  const rankOf = ({ last }: Trail): number => order.indexOf(last.grading)
  return trails.toSorted((a, b) => groupOf(a) - groupOf(b) || rankOf(a) - rankOf(b)).map((trail, index) => ({ number: index + 1, trail }))
}

export const areaOfTrail = ({ last }: Trail): number | undefined => (isPresent(last.spot) ? last.area?.value : undefined)
