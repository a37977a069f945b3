import type { Check } from './check'

export const lightChecks: readonly Check[] = []
