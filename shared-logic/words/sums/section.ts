import type { Verdict } from '../../survey/verdict'
import type { Words } from '../en'
import type { UnitSystem } from '../../units/quantity'
import { sayField } from '../say-refusal'
import { say } from '../say'

/** One line of the sums in words, with its verdict where it has one. */
export interface SumsLine {
  readonly text: string
  readonly verdict?: Extract<Verdict, 'pass' | 'advisory' | 'fail' | 'not seen'>
  /** The line says what is waited for: dotted paths of those fields, each once. */
  readonly waitsFor?: readonly string[]
}

export interface SumsSection {
  readonly id: 'load' | 'balance' | 'tyres' | 'coupling' | 'brakes' | 'tie-down'
  readonly title: string
  readonly lines: readonly SumsLine[]
  /** The formula in words, and where it comes from. */
  readonly formula: string
  readonly sources: readonly string[]
  readonly cautions: readonly string[]
}

/** 'Share of the tank filled (2)': says which row of a list is meant. */
export const sayPath = (words: Words, path: string): string => {
  const row = /\.(\d+)\./.exec(path)?.[1]
  return `${sayField(words, path)}${row === undefined ? '' : ` (${Number(row) + 1})`}`
}

/** 'Waits for: …', each field once; no line when it waits for nothing. */
export const sayWaits = (words: Words, fields: readonly string[], units: UnitSystem): SumsLine[] =>
  fields.length === 0 ? [] : [waitingLine(words, [...new Set(fields)], units)]

const waitingLine = (words: Words, waitsFor: readonly string[], units: UnitSystem): SumsLine =>
  ({ text: say(words.sums.waits, { fields: waitsFor.map((field) => sayPath(words, field)).join('; ') }, units), verdict: 'not seen', waitsFor })
