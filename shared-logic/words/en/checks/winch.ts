import type { StationCheckWords } from '../../check-words'

export const winchWords: StationCheckWords = {}
