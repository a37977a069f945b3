import type { StationCheckWords } from '../../check-words'
import { paperIdentityWords } from './papers/identity'
import { paperLoadWords } from './papers/loads'
import { paperNumberWords } from './papers/numbers'
import { paperRatingWords } from './papers/ratings'

export const paperWords: StationCheckWords = { ...paperIdentityWords, ...paperNumberWords, ...paperRatingWords, ...paperLoadWords }
