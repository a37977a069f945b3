import type { Check } from './check'

export const paperChecks: readonly Check[] = []
