import type { StationCheckWords } from '../../check-words'

export const lightWords: StationCheckWords = {}
