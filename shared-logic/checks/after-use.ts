import type { Check } from './check'

export const afterUseChecks: readonly Check[] = []
