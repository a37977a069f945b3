import { useMemo } from 'react'
import { catalogue } from '../../shared-logic/checks/catalogue'
import { alikeAmong } from '../../shared-logic/photographs/alike'
import { assess, type Assessed } from '../../shared-logic/survey/assess'
import { factsOf } from '../../shared-logic/survey/facts'
import { placeKey } from '../../shared-logic/survey/keys'
import { timeTaken } from '../../shared-logic/photographs/time-taken'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import type { Words } from '../../shared-logic/words/en'
import { namePlace, sayPosition } from '../../shared-logic/words/position'
import { say } from '../../shared-logic/words/say'
import { shortWarnings } from '../../shared-logic/words/say-photograph'
import { useWords } from '../parts/use-words'
import { nameOf } from '../survey/check-names'
import type { CheckPlace } from '../survey/answer-queue'
import { countAtTargets, targetGroups, type TargetGroup } from './check-targets'
import type { SheetPhotograph } from './sheet-photograph'

/** Everything the sheet shows of a survey, whatever is wanted of it. */
export interface SheetContents {
  readonly photographs: readonly SheetPhotograph[]
  /** Each check's place in walking order, by its key. */
  readonly walk: ReadonlyMap<string, number>
  readonly groups: readonly TargetGroup[]
  readonly counts: ReadonlyMap<string, number>
  readonly whereIs: (place: CheckPlace) => string
}

/** The survey judged; anew only when what it is judged by has changed, not with every photograph. */
const useAssessed = (survey: Survey): readonly Assessed[] => {
  const { rig, ruleBook, purpose, surveyDate, answers } = survey
  return useMemo(() => assess(catalogue, factsOf({ rig, ruleBook, purpose, surveyDate, answers })), [rig, ruleBook, purpose, surveyDate, answers])
}

const whereOf = (words: Words, { checkId, position }: CheckPlace, owner: Assessed | undefined, survey: Pick<Survey, 'rig'>): string => {
  const said = words.screens.contactSheet
  if (owner !== undefined) {
    const { title, place } = nameOf(words, owner, survey)
    return namePlace(title, place)
  }
  const title = words.checks[checkId]?.title ?? checkId
  return say(said.noLongerAsked, { check: namePlace(title, sayPosition(position, survey.rig.trailer.axleCount)) }, 'metric')
}

const calledOn = ({ caption, fileName }: Photograph): string => (caption.trim() === '' ? fileName : caption.trim())

const asShown = (words: Words, photograph: Photograph, zone: string, owner: Assessed | undefined, where: string, alike: readonly string[]): SheetPhotograph => ({
  id: photograph.id, photograph, owner, station: owner?.check.station, taken: timeTaken(photograph, zone), name: calledOn(photograph), where, warnings: shortWarnings(words, photograph), alike,
})

/** By id, the names of those that are the same picture or look like it. */
const namesOfAlike = (photographs: readonly Photograph[]): ReadonlyMap<string, readonly string[]> => {
  const names = new Map(photographs.map((photograph) => [photograph.id, calledOn(photograph)]))
  return new Map([...alikeAmong(photographs)].map(([id, alike]) => [id, alike.map((other) => names.get(other.id) ?? '')]))
}

const none: readonly string[] = []
const areSame = (a: readonly string[], b: readonly string[]): boolean => a.length === b.length && a.every((each, index) => each === b[index])

export const useSheet = (survey: Survey): SheetContents => {
  const words = useWords()
  const assessed = useAssessed(survey)
  const { rig, photographs, zone } = survey
  const places = useMemo(() => {
    const owners = new Map(assessed.map((each) => [each.key, each]))
    return {
      owners,
      walk: new Map(assessed.map((each, index) => [each.key, index])),
      groups: targetGroups(assessed, { rig }, words),
      // What has not changed stays the same thing, so that its cell is not drawn anew.
      known: new WeakMap<Photograph, SheetPhotograph>(),
      whereIs: (place: CheckPlace): string => whereOf(words, place, owners.get(placeKey(place.checkId, place.position)), { rig }),
    }
  }, [assessed, rig, words])
  const shown = useMemo(() => {
    const names = namesOfAlike(photographs)
    return photographs.map((photograph) => {
      const alike = names.get(photograph.id) ?? none
      const before = places.known.get(photograph)
      if (before !== undefined && areSame(before.alike, alike)) return before
      const { checkId, position } = photograph
      const place = checkId === undefined || position === undefined ? undefined : { checkId, position }
      const now = asShown(words, photograph, zone, place && places.owners.get(placeKey(place.checkId, place.position)), place === undefined ? words.screens.contactSheet.noCheck : places.whereIs(place), alike)
      places.known.set(photograph, now)
      return now
    })
  }, [photographs, places, words, zone])
  const counts = useMemo(() => countAtTargets(photographs, placeKey), [photographs])
  return { photographs: shown, walk: places.walk, groups: places.groups, counts, whereIs: places.whereIs }
}
