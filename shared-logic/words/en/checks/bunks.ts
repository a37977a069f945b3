import type { StationCheckWords } from '../../check-words'
import { seatingWords } from './bunks/seating'
import { supportWords } from './bunks/supports'

export const bunkWords: StationCheckWords = { ...supportWords, ...seatingWords }
