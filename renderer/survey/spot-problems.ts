import { faultsOfSpots } from '../../shared-logic/corrosion/spot-faults'
import { spotSchema, type Spot } from '../../shared-logic/survey/spot'
import type { Words } from '../../shared-logic/words/en'
import { sayRefusal } from '../../shared-logic/words/say-refusal'

/** A sentence a field, by its name in the record. */
export type SpotProblems = Readonly<Record<string, string | undefined>>

type Said = Words['screens']['survey']['spots']

const labelsOf = (said: Said): Readonly<Record<string, string | undefined>> => ({
  areaM2: said.area, areaUncertaintyM2: said.area, faceAreaM2: said.faceArea, share: said.share, pitDepthM: said.pitDepth, wallM: said.wall, remainingM: said.remaining, pitCount: said.pitCount, coatingReadingsM: said.readings,
})

/** Where the sentence about a field stands: what was measured with the area stands with the area. */
const shownAt = (field: string): string => (field === 'areaUncertaintyM2' || field === 'measurement' ? 'areaM2' : field)

/** What cannot be right in a spot among the others of its member, a sentence a field. None of it is graded then. The place is asked for when the spot is kept. */
export const spotProblems = (words: Words, spot: Spot, others: readonly Spot[]): SpotProblems => {
  const said = words.screens.survey.spots
  const problems: Record<string, string> = {}
  const read = spotSchema.omit({ place: true }).safeParse(spot)
  for (const { path } of read.error?.issues ?? []) problems[shownAt(String(path[0]))] = said.outOfRange
  const own = faultsOfSpots([...others, spot], (index) => (index === others.length ? 'own' : 'other')).filter(({ field }) => field?.startsWith('own.') === true)
  for (const fault of own) {
    const field = fault.field?.slice('own.'.length) ?? ''
    const label = labelsOf(said)[field]
    problems[shownAt(field)] = sayRefusal(words, { ...fault, values: { ...fault.values, ...(label !== undefined && { field: label }) } })
  }
  return problems
}
