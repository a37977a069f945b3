import type { StationCheckWords } from '../../check-words'

export const tieDownWords: StationCheckWords = {}
