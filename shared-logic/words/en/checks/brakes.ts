import type { StationCheckWords } from '../../check-words'

export const brakeWords: StationCheckWords = {}
