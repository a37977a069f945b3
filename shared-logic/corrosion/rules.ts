import { compareGravity, type CorrosionFinding } from './findings'

/** One rule: what is found where it holds. Rules about the same matter stand in for one another; those about another are told beside. */
export interface Rule<Case, Matter extends string> {
  readonly finding: CorrosionFinding
  readonly about: Matter
  readonly holds: (at: Case) => boolean
}

export interface Found {
  readonly finding: CorrosionFinding
  /** What holds besides, the gravest of each other matter, gravest first. */
  readonly also: readonly CorrosionFinding[]
}

/** The gravest finding that holds, and what else does; `otherwise` where none does. */
export const findingOf = <Case, Matter extends string>(rules: readonly Rule<Case, Matter>[], at: Case, otherwise: CorrosionFinding): Found => {
  const holding = rules.filter(({ holds }) => holds(at)).toSorted((a, b) => compareGravity(a.finding, b.finding))
  const ofEach = holding.filter(({ about }, index) => holding.findIndex((other) => other.about === about) === index)
  const [gravest, ...also] = ofEach
  return gravest === undefined ? { finding: otherwise, also: [] } : { finding: gravest.finding, also: also.map(({ finding }) => finding) }
}
