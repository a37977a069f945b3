import { mayGoInLater } from '../../shared-logic/photographs/for-now'
import type { TurnedAway } from './door'

/** Ended: nothing more goes through this door. Later: this picture goes, only not now. For good: not this picture. */
export type Kind = 'ended' | 'later' | 'for good'

/** No session, or none any more. */
const endedStatuses = new Set([401, 403, 410, 421])
/** Asked again in a while: too slow, too many at once, or trouble on the desktop's side. */
const laterStatuses = new Set([408, 425, 429])

export const kindOf = ({ status, code }: TurnedAway): Kind => {
  if (endedStatuses.has(status)) return 'ended'
  if (laterStatuses.has(status) || mayGoInLater(code)) return 'later'
  // A fault of the program's may lie in this one picture: it does not hold up the others.
  return status >= 500 && code !== 'program.fault' ? 'later' : 'for good'
}

/** Growing pauses before asking again, and never longer than a person would wait beside the phone. */
const pausesMs = [1_000, 2_000, 4_000, 8_000, 15_000, 30_000]
export const pauseAfter = (misses: number): number => pausesMs[Math.min(Math.max(misses, 1), pausesMs.length) - 1] ?? 30_000
