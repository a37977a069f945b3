import type { Check } from './check'
import { pressureChecks } from './wheels/pressure'
import { rimAndNutChecks } from './wheels/rims-and-nuts'
import { tyreFitChecks } from './wheels/tyre-fit'
import { tyreWearChecks } from './wheels/tyre-wear'

/** Wheels and tyres. */
export const wheelChecks: readonly Check[] = [...tyreFitChecks, ...tyreWearChecks, ...pressureChecks, ...rimAndNutChecks]
