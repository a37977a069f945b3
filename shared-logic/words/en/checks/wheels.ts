import type { StationCheckWords } from '../../check-words'
import { pressureWords } from './wheels/pressure'
import { rimAndNutWords } from './wheels/rims-and-nuts'
import { tyreFitWords } from './wheels/tyre-fit'
import { tyreWearWords } from './wheels/tyre-wear'

export const wheelWords: StationCheckWords = { ...tyreFitWords, ...tyreWearWords, ...pressureWords, ...rimAndNutWords }
