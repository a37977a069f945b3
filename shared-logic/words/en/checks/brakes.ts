import type { StationCheckWords } from '../../check-words'
import { actuatorWords } from './brakes/actuator'
import { breakawayAndParkingWords } from './brakes/breakaway-and-parking'
import { electricBrakeWords } from './brakes/electric'
import { brakeFluidWords } from './brakes/fluid'
import { frictionWords } from './brakes/friction'
import { brakeHydraulicWords } from './brakes/hydraulics'
import { brakeRequirementWords } from './brakes/requirement'

export const brakeWords: StationCheckWords = {
  ...brakeRequirementWords,
  ...actuatorWords,
  ...breakawayAndParkingWords,
  ...electricBrakeWords,
  ...brakeFluidWords,
  ...brakeHydraulicWords,
  ...frictionWords,
}
