import type { Assessed } from '../../shared-logic/survey/assess'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import type { StationId } from '../../shared-logic/survey/station'
import type { Words } from '../../shared-logic/words/en'
import { nameOf } from '../survey/check-names'
import type { CheckPlace } from '../survey/answer-queue'

/** A place photographs can be given to: a check at its position, or none. */
export interface CheckTarget {
  readonly id: string
  readonly place: CheckPlace | undefined
  readonly title: string
  /** 'left front'; empty for what is asked once. */
  readonly at: string
  /** A finding that is to be shown. */
  readonly wantsPhotograph: boolean
}

/** The checks of a station, in walking order. */
export interface TargetGroup {
  readonly id: StationId
  readonly name: string
  readonly targets: readonly CheckTarget[]
}

/** The id of 'no check'. */
export const nowhere = 'no check'

export const targetGroups = (assessed: readonly Assessed[], survey: Pick<Survey, 'rig'>, words: Words): TargetGroup[] =>
  [...Map.groupBy(assessed, ({ check }) => check.station)].map(([station, own]) => ({
    id: station,
    name: words.stations[station],
    targets: own.map((each) => {
      const { title, place: at } = nameOf(words, each, survey)
      return { id: each.key, place: { checkId: each.check.id, position: each.position }, title, at, wantsPhotograph: each.check.photograph === true && (each.verdict === 'fail' || each.verdict === 'advisory') }
    }),
  }))

/** How many photographs stand at each place, by its id. */
export const countAtTargets = (photographs: readonly Photograph[], keyOf: (checkId: string, position: string) => string): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>()
  for (const { checkId, position } of photographs) {
    const id = checkId === undefined || position === undefined ? nowhere : keyOf(checkId, position)
    counts.set(id, (counts.get(id) ?? 0) + 1)
  }
  return counts
}
