import type { Check } from './check'
import { connectorChecks } from './lights/connector'
import { lampChecks } from './lights/lamps'
import { lampPlacingChecks } from './lights/placing'
import { wiringChecks } from './lights/wiring'

/** Lights and wiring. */
export const lightChecks: readonly Check[] = [...connectorChecks, ...lampChecks, ...lampPlacingChecks, ...wiringChecks]
