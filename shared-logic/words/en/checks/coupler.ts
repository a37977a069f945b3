import type { StationCheckWords } from '../../check-words'

export const couplerWords: StationCheckWords = {}
