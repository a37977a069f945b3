import type { Words } from '../../shared-logic/words/en'

/** What a field is called on this sheet: by its own label here, or the register's. */
export const labelOf = (words: Words, path: string): string => {
  const own: Readonly<Record<string, string>> = words.screens.sums.labels
  const plain = path.replaceAll(/\.\d+/g, '')
  return own[plain] ?? words.fields[plain] ?? path
}
