import type { Check } from './check'

export const axleChecks: readonly Check[] = []
