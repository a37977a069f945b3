import { Refusal } from '../../shared-logic/contract/refusal'
import type { Words } from '../../shared-logic/words/en'
import { sayRefusal } from '../../shared-logic/words/say-refusal'

/** The sentence of whatever was thrown: a refusal's own, or that something went wrong here. */
export const sentenceOf = (words: Words, error: unknown): string => (error instanceof Refusal ? sayRefusal(words, error.data) : words.screens.shell.wentWrong)
