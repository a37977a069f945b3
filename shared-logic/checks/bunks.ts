import { supportChecks } from './bunks/supports'
import { seatingChecks } from './bunks/seating'
import type { Check } from './check'

/** Bunks and rollers, and how the boat sits on them. */
export const bunkChecks: readonly Check[] = [...supportChecks, ...seatingChecks]
