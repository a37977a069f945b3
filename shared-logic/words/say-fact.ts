import type { Words } from './en'
import { sayPosition } from './position'
import { sayDate } from './say'

type Say = (words: Words, text: string) => string

const fillOne = (line: string, name: string, text: string): string => line.replace(`{${name}}`, text)

const quoted: Say = (words, text) => fillOne(words.proof.quoted, 'text', text)
const check: Say = (words, text) => quoted(words, words.checks[text]?.title ?? text)
const position: Say = (words, text) => sayPosition(text, undefined) || words.proof.wholeRig
const yesOrNo: Say = (words, text) => (text === 'true' ? words.proof.yes : text === 'false' ? words.proof.no : text)
const upperCase: Say = (_, text) => text.toUpperCase()
const named = (list: (words: Words) => Readonly<Record<string, string>>): Say => (words, text) => {
  const names = list(words)
  return Object.hasOwn(names, text) ? (names[text] ?? text) : quoted(words, text)
}
const counted = (unit: 'bytes' | 'pixels' | 'degrees'): Say => (words, text) => fillOne(words.proof[unit], 'count', text)
const turned: Say = (words, text) => fillOne(words.proof.degrees, 'count', /^\d+$/.test(text) ? String(Number(text) * 90) : text)
const date: Say = (_, text) => (/^\d{4}-\d\d-\d\d$/.test(text) ? sayDate(text) : text)
const time: Say = (words, text) => {
  const clock = /^\d{4}-\d\d-\d\dT(\d\d:\d\d)/.exec(text)?.[1]
  return clock === undefined ? text : fillOne(fillOne(text.endsWith('Z') ? words.proof.instant : words.proof.cameraTime, 'date', sayDate(text)), 'time', clock)
}

/** How each fact of a photograph, a report or a survey is said, but for those that are hashes. Names in quotes are the surveyor's own words. */
const sayings: Readonly<Record<string, Say>> = {
  byteCount: counted('bytes'), pdfByteCount: counted('bytes'), widthPx: counted('pixels'), heightPx: counted('pixels'), latitude: counted('degrees'), longitude: counted('degrees'), quarterTurns: turned,
  format: upperCase, takenAt: time, firstArrivedAt: time, arrivedAt: time, removedAt: time, issuedAt: time, date, source: named(({ proof }) => proof.sources), verdict: named(({ verdicts }) => verdicts),
  fileName: quoted, caption: quoted, checkId: check, position, isPrinted: yesOrNo,
}

/** A fact as people read it: a check by its title, an instant by its date. */
export const sayFact = (words: Words, name: string, text: string): string => (text === '–' ? words.proof.none : (sayings[name]?.(words, text) ?? text))
