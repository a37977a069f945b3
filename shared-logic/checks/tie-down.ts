import type { Check } from './check'
import { tieDownDirectionChecks } from './tie-down/directions'
import { tieDownLoadChecks } from './tie-down/load'
import { tieDownSetChecks } from './tie-down/set'
import { strapChecks } from './tie-down/straps'

/** Tie-down: each strap, how the set holds the boat, and what else must stay put. */
export const tieDownChecks: readonly Check[] = [...strapChecks, ...tieDownSetChecks, ...tieDownDirectionChecks, ...tieDownLoadChecks]
