import type { Check } from './check'

export const brakeChecks: readonly Check[] = []
