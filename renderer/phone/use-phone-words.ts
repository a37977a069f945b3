import { phonePageWords } from '../../shared-logic/words/en/screens/phone'
import { say } from '../../shared-logic/words/say'

export type PhoneWords = typeof phonePageWords

/** The page's own words, and not the whole catalogue's: it is kept light. */
export const usePhoneWords = (): PhoneWords => phonePageWords

/** Fills the gaps of a phrase. Nothing on this page has a unit. */
export const fill = (phrase: string, values: Readonly<Record<string, string | number>>): string => say(phrase, values, 'metric')

/** 'One picture …' or '3 pictures …'. */
export const countOf = (phrases: { readonly one: string; readonly many: string }, count: number): string => (count === 1 ? phrases.one : fill(phrases.many, { count }))
