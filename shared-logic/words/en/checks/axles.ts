import type { StationCheckWords } from '../../check-words'

export const axleWords: StationCheckWords = {}
