import type { Check } from './check'

export const frameChecks: readonly Check[] = []
