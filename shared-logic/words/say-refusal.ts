import type { RefusalData } from '../contract/refusal'
import type { Words } from './en'

/** The sentence of a refusal. A code without a sentence shows itself rather than nothing; the tests look for such. */
export const sayRefusal = (words: Words, refusal: RefusalData): string =>
  (words.refusals[refusal.code] ?? refusal.code).replaceAll(/\{([\w-]+)\}/g, (gap, name: string) => String(refusal.values?.[name] ?? gap))
