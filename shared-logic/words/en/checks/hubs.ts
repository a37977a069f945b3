import type { StationCheckWords } from '../../check-words'
import { hubBearingWords } from './hubs/bearings'
import { hubLubricationWords } from './hubs/lubrication'

export const hubWords: StationCheckWords = { ...hubLubricationWords, ...hubBearingWords }
