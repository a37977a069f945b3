import type { Check } from './check'

export const winchChecks: readonly Check[] = []
