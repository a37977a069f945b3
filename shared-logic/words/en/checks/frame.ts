import type { StationCheckWords } from '../../check-words'

export const frameWords: StationCheckWords = {}
