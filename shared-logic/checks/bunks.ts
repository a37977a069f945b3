import type { Check } from './check'

export const bunkChecks: readonly Check[] = []
