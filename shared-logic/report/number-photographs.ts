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

/** Numbered in the order they are met: those of the findings first, then in walking order, those of no check last. */
export const sortPhotographs = (photographs: readonly Photograph[], findings: readonly Assessed[], assessed: readonly Assessed[]): NumberedPhotograph[] => {
  const order = new Map([...findings, ...assessed.filter((each) => !findings.includes(each))].map((each, index) => [each.key, index]))
  const rank = (owner: Assessed | undefined): number => (owner === undefined ? order.size : (order.get(owner.key) ?? order.size))
  return photographs
    .map((photograph) => ({ photograph, owner: ownerOf(photograph, assessed) }))
    .toSorted((a, b) => rank(a.owner) - rank(b.owner))
    .map((each, index) => ({ ...each, number: index + 1 }))
}
