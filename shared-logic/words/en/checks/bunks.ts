import type { StationCheckWords } from '../../check-words'

export const bunkWords: StationCheckWords = {}
