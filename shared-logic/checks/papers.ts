import type { Check } from './check'
import { paperIdentityChecks } from './papers/identity'
import { paperLoadChecks } from './papers/loads'
import { paperNumberChecks } from './papers/numbers'
import { paperRatingChecks } from './papers/ratings'

/** Papers and plates: who the rig is, whether it may be on the road, and what it may carry. */
export const paperChecks: readonly Check[] = [...paperIdentityChecks, ...paperNumberChecks, ...paperRatingChecks, ...paperLoadChecks]
