import type { StationCheckWords } from '../../check-words'

export const wheelWords: StationCheckWords = {}
