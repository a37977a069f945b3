import { en, type Words } from '../../shared-logic/words/en'

/** The catalogue the window speaks. One language today; another is another file of the same shape. */
export const useWords = (): Words => en
