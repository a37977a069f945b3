import type { Check } from './check'
import { winchBowChecks } from './winch/bow'
import { winchGearChecks } from './winch/gear'

/** Winch post, winch, and the bow on its stop. */
export const winchChecks: readonly Check[] = [...winchGearChecks, ...winchBowChecks]
