import type { Assessed } from '../survey/assess'
import type { Photograph } from '../survey/records'

/** A photograph with its number in the report and the check it belongs to, where it belongs to one. */
export interface NumberedPhotograph {
  readonly number: number
  readonly photograph: Photograph
  readonly owner: Assessed | undefined
}

const ownerOf = (photograph: Photograph, assessed: readonly Assessed[]): Assessed | undefined =>
  assessed.find(({ check, position }) => check.id === photograph.checkId && (photograph.position === undefined || position === photograph.position))

/**
 * Those that print, numbered in the order they are met: those of the findings first, then in walking order, those of no
 * check last. Within a check they stand as the survey has them: as they arrived, or as the surveyor put them.
 */
export const sortPhotographs = (photographs: readonly Photograph[], findings: readonly Assessed[], assessed: readonly Assessed[]): NumberedPhotograph[] => {
  const order = new Map([...findings, ...assessed.filter((each) => !findings.includes(each))].map((each, index) => [each.key, index]))
  const rank = (owner: Assessed | undefined): number => (owner === undefined ? order.size : (order.get(owner.key) ?? order.size))
  return photographs
    .filter(({ isPrinted }) => isPrinted)
    .map((photograph) => ({ photograph, owner: ownerOf(photograph, assessed) }))
    .toSorted((a, b) => rank(a.owner) - rank(b.owner))
    .map((each, index) => ({ ...each, number: index + 1 }))
}

/** How many photographs of each check were left out of the report, by its key. */
export const countLeftOut = (photographs: readonly Photograph[], assessed: readonly Assessed[]): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>()
  for (const photograph of photographs) {
    const key = photograph.isPrinted ? undefined : ownerOf(photograph, assessed)?.key
    if (key !== undefined) counts.set(key, (counts.get(key) ?? 0) + 1)
  }
  return counts
}
