import type { StationCheckWords } from '../../check-words'

export const afterUseWords: StationCheckWords = {}
