import type { StationCheckWords } from '../../check-words'

export const paperWords: StationCheckWords = {}
