import type { RecordEnd } from '../proof/entry'
import type { Problem, ProblemCode, Verified } from '../proof/problem'
import type { Words } from './en'
import { sayDate } from './say'
import { sayFact } from './say-fact'

const fill = (line: string, values: Readonly<Record<string, string | number>>): string => line.replaceAll(/\{(\w+)\}/g, (gap, name: string) => String(values[name] ?? gap))

/** The words for a name out of a list; undefined for any other. */
const wordsFor = (list: Readonly<Record<string, string>>, name: string | number | undefined): string | undefined => (typeof name === 'string' && Object.hasOwn(list, name) ? list[name] : undefined)

const shown = (value: string | number): string => {
  const text = String(value)
  if (/^[0-9a-f]{64}$/.test(text)) return `${text.slice(0, 12)}…`
  return /^\d{4}-\d\d-\d\dT.*Z$/.test(text) ? sayDate(text) : text
}

/** Facts that are hashes of what they stand for: two of them tell nothing. */
const hidden = new Set(['qualitySha256', 'lookHash', 'marksSha256', 'largePreviewSha256', 'smallPreviewSha256', 'documentSha256', 'pdfSha256'])

/** 'Caption: “worn” in the record, “as new” now.' Two that would read alike are shown as they stand. */
const sayDifference = (words: Words, { fact, reportFact, recorded, now }: Problem['values']): string => {
  const { facts, reportFacts, difference, hiddenDifference } = words.proof
  const name = String(fact ?? reportFact ?? '')
  const label = wordsFor(fact === undefined ? reportFacts : facts, name) ?? name
  if (hidden.has(name)) return fill(hiddenDifference, { label })
  const [before, after] = [String(recorded ?? '–'), String(now ?? '–')]
  const [saidBefore, saidAfter] = [sayFact(words, name, before), sayFact(words, name, after)]
  return fill(difference, saidBefore === saidAfter ? { label, recorded: before, now: after } : { label, recorded: saidBefore, now: saidAfter })
}

/** The sentence of what is not as it was recorded. Hashes are cut short; a changed fact shows what it was and what it is. */
export const sayProblem = (words: Words, { code, values }: Problem): string => {
  const said: Record<string, string> = Object.fromEntries(Object.entries(values).map(([name, value]) => [name, shown(value)]))
  const { surveyFacts, copies, originals } = words.proof
  for (const [gap, list] of [['surveyFact', surveyFacts], ['copy', copies], ['original', originals]] as const) {
    const worded = wordsFor(list, values[gap])
    if (worded !== undefined) said[gap] = worded
  }
  return fill(words.proof.problems[code], { ...said, difference: sayDifference(words, values) })
}

const ofOriginals: ReadonlySet<ProblemCode> = new Set(['file-missing', 'file-set-aside', 'file-resized', 'file-changed'])

/** What to do about them; undefined where there are none, or copies alone, which are made again by themselves. */
export const sayToDo = (words: Words, problems: readonly Problem[], hasBackups = false): string | undefined => {
  if (problems.every(({ values }) => values['copy'] !== undefined && values['original'] === 'whole')) return undefined
  const { toDo, toDoBackups, toDoOriginals } = words.proof
  return [toDo, ...(hasBackups ? [toDoBackups] : []), ...(problems.some(({ code }) => ofOriginals.has(code)) ? [toDoOriginals] : [])].join(' ')
}

const counted = ({ one, many }: { readonly one: string; readonly many: string }, count: number, more: Readonly<Record<string, string>> = {}): string => fill(count === 1 ? one : many, { count, ...more })

/** In a sentence: '12 photographs, all as they came in.' or how much is not as it was recorded. */
export const sayOutcome = (words: Words, { photographCount, removedCount, problems }: Verified): string => {
  if (problems.length > 0) return counted(words.proof.wrong, problems.length)
  return photographCount === 0 && removedCount === 0 ? words.proof.allRight.none : counted(words.proof.allRight, photographCount)
}

/** What goes with it: those removed, and those of which less is proven. */
export const sayBeside = (words: Words, { removedCount, late, lateReports, withoutCopies }: Verified): string[] => [
  ...(removedCount > 0 ? [counted(words.proof.removed, removedCount)] : []),
  ...(late ? [counted(words.proof.late, late.count, { date: sayDate(late.at) })] : []),
  ...(lateReports ? [counted(words.proof.lateReports, lateReports.count, { date: sayDate(lateReports.at) })] : []),
  ...(withoutCopies === undefined ? [] : [counted(words.proof.withoutCopies, withoutCopies)]),
]

export const sayEnd = (words: Words, { entryCount, lastSha256 }: RecordEnd): string => fill(words.proof.end, { count: entryCount, sha256: lastSha256 })

export const sayListEnd = (words: Words, { entryCount, lastSha256 }: RecordEnd): string => fill(words.proof.listEnd, { count: entryCount, sha256: lastSha256 })

/** What each issued report prints of the record, to be held to the paper. */
export const sayReportEnds = (words: Words, { reports }: Verified): string[] =>
  reports.map(({ number, revision, end }) =>
    end === undefined ? fill(words.proof.reportBefore, { number, revision }) : fill(words.proof.reportEnd, { number, revision, count: end.entryCount, sha256: end.lastSha256 }))
