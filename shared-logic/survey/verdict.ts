import { z } from 'zod'

/** What a check came to. 'not seen' is never a pass: it is counted and reported by itself. */
export const verdicts = ['pass', 'advisory', 'fail', 'not seen', 'not applicable'] as const
export const verdictSchema = z.enum(verdicts)
export type Verdict = z.infer<typeof verdictSchema>

/** By when a remedy is due, most pressing first. */
export const byWhens = ['before it is towed', 'before next trip', 'within a month', 'at next service', 'within a year'] as const
export type ByWhen = (typeof byWhens)[number]

const seriousness: Record<Verdict, number> = { fail: 4, advisory: 3, pass: 2, 'not seen': 1, 'not applicable': 0 }

/** Positive when `a` is worse than `b`. 'not seen' never outweighs what was seen. */
export const compareVerdicts = (a: Verdict, b: Verdict): number => seriousness[a] - seriousness[b]

/** The worst of what was seen; 'not seen' when nothing was; 'not applicable' for an empty list. */
export const worstVerdict = (list: Iterable<Verdict>): Verdict => {
  let worst: Verdict = 'not applicable'
  for (const verdict of list) if (compareVerdicts(verdict, worst) > 0) worst = verdict
  return worst
}
