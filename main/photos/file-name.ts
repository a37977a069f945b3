import { printable } from '../../shared-logic/words/printable'

const longest = 255

/** A photograph's file name without folders and without unprintable characters, at most 255 characters long, never empty. */
export const plainFileName = (given: string): string => {
  const name = printable(given.split(/[/\\]/).at(-1) ?? '')
  if (name === '' || name === '.' || name === '..') return 'photograph'
  return name.length <= longest ? name : name.slice(-longest)
}
