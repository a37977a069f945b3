import { lettersOf, lineWidth } from './letter-widths'

/** A word wider than the line is broken between letters. */
const broken = (word: string, most: number): string[] => {
  const parts: string[] = []
  for (const letter of lettersOf(word)) {
    const last = parts.at(-1)
    if (last !== undefined && lineWidth(last + letter) <= most) parts[parts.length - 1] = last + letter
    else parts.push(letter)
  }
  return parts
}

/** What is written, in lines no wider than `most` sizes of its letters. */
export const writtenLines = (text: string, most: number): string[] => {
  const lines: string[] = []
  for (const word of text.trim().split(/\s+/u)) {
    const [first = '', ...rest] = lineWidth(word) > most ? broken(word, most) : [word]
    const last = lines.at(-1)
    if (last !== undefined && lineWidth(`${last} ${first}`) <= most) lines[lines.length - 1] = `${last} ${first}`
    else lines.push(first)
    lines.push(...rest)
  }
  return lines
}
