import type { StationCheckWords } from '../../check-words'
import { connectorWords } from './lights/connector'
import { lampWords } from './lights/lamps'
import { lampPlacingWords } from './lights/placing'
import { wiringWords } from './lights/wiring'

export const lightWords: StationCheckWords = { ...connectorWords, ...lampWords, ...lampPlacingWords, ...wiringWords }
