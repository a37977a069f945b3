import type { StationCheckWords } from '../../check-words'
import { winchBowWords } from './winch/bow'
import { winchGearWords } from './winch/gear'

export const winchWords: StationCheckWords = { ...winchGearWords, ...winchBowWords }
