import type { Check } from './check'

export const couplerChecks: readonly Check[] = []
