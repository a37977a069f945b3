import { actuatorChecks } from './brakes/actuator'
import { breakawayAndParkingChecks } from './brakes/breakaway-and-parking'
import { electricBrakeChecks } from './brakes/electric'
import { brakeFluidChecks } from './brakes/fluid'
import { frictionChecks } from './brakes/friction'
import { brakeHydraulicChecks } from './brakes/hydraulics'
import { brakeRequirementChecks } from './brakes/requirement'
import type { Check } from './check'

/** Brakes. */
export const brakeChecks: readonly Check[] = [
  ...brakeRequirementChecks,
  ...actuatorChecks,
  ...breakawayAndParkingChecks,
  ...electricBrakeChecks,
  ...brakeFluidChecks,
  ...brakeHydraulicChecks,
  ...frictionChecks,
]
