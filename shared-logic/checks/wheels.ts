import type { Check } from './check'

export const wheelChecks: readonly Check[] = []
