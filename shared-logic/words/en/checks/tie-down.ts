import type { StationCheckWords } from '../../check-words'
import { tieDownDirectionWords } from './tie-down/directions'
import { tieDownLoadWords } from './tie-down/load'
import { tieDownSetWords } from './tie-down/set'
import { strapWords } from './tie-down/straps'

export const tieDownWords: StationCheckWords = { ...strapWords, ...tieDownSetWords, ...tieDownDirectionWords, ...tieDownLoadWords }
