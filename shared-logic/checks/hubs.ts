import type { Check } from './check'
import { hubBearingChecks } from './hubs/bearings'
import { hubLubricationChecks } from './hubs/lubrication'

/** Hubs and wheel bearings. */
export const hubChecks: readonly Check[] = [...hubLubricationChecks, ...hubBearingChecks]
