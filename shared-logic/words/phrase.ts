import type { Measured } from '../units/quantity'

/** What a phrase's gaps are filled with: words, counts, measured values (shown in the reader's units), or ISO dates. */
export type PhraseValue = string | number | Measured | { readonly date: string }
export type PhraseValues = Readonly<Record<string, PhraseValue>>
