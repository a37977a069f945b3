import type { Assessed } from './assess'
import { byWhens, compareVerdicts } from './verdict'

const urgency = (assessed: Assessed): number => (assessed.by === undefined ? byWhens.length : byWhens.indexOf(assessed.by))

/** Advisories and fails, gravest and most pressing first, otherwise in walking order. */
export const findingsOf = (assessed: readonly Assessed[]): Assessed[] =>
  assessed
    .filter((each) => each.verdict === 'fail' || each.verdict === 'advisory')
    .toSorted((a, b) => compareVerdicts(b.verdict, a.verdict) || urgency(a) - urgency(b))

/** What was not seen, whether said so with a reason or left open. */
export const notSeenOf = (assessed: readonly Assessed[]): Assessed[] => assessed.filter((each) => each.verdict === 'not seen')
