import { sql, type RawBuilder } from 'kysely'
import { searchWords } from './search-text'

/** Three letters make a trigram; shorter words are looked for row by row. */
const isLong = (word: string): boolean => Array.from(word).length >= 3

const matchOf = (words: readonly string[]): string | undefined => {
  const long = words.filter(isLong)
  return long.length === 0 ? undefined : long.map((word) => `"${word.replaceAll('"', '""')}"`).join(' AND ')
}

const likeOf = (word: string): string => `%${word.replaceAll(/[\\%_]/g, (mark) => `\\${mark}`)}%`

/** Conditions on `table` that every word of the search is found; none for an empty search. */
export const foundBy = (table: 'rigs' | 'surveys', search: string | undefined): RawBuilder<boolean>[] => {
  const words = searchWords(search)
  const match = matchOf(words)
  const index = sql.table(`${table}_search`)
  return [
    ...(match === undefined ? [] : [sql<boolean>`${sql.ref(`${table}.serial`)} in (select rowid from ${index} where ${index} match ${match})`]),
    ...words.filter((word) => !isLong(word)).map((word) => sql<boolean>`${sql.ref(`${table}.search_text`)} like ${likeOf(word)} escape '\\'`),
  ]
}
