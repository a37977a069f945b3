import { z } from 'zod'
import type { Verdict } from './verdict'

const count = z.int().nonnegative()

/** How many checks came to each verdict; their sum is the number of checks asked. */
export const talliesSchema = z.object({
  pass: count,
  advisory: count,
  fail: count,
  'not seen': count,
  'not applicable': count,
})
export type Tallies = z.infer<typeof talliesSchema>

export const tally = (list: Iterable<Verdict>): Tallies => {
  const tallies: Tallies = { pass: 0, advisory: 0, fail: 0, 'not seen': 0, 'not applicable': 0 }
  for (const verdict of list) tallies[verdict] += 1
  return tallies
}
