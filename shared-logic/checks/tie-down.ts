import type { Check } from './check'

export const tieDownChecks: readonly Check[] = []
