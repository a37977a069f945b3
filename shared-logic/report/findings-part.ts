import type { Assessed } from '../survey/assess'
import { byWhens } from '../survey/verdict'
import { becauseOf, consequenceOf, criterionOf, readingsOf, remedyOf, saySource, sourcesOf, wordsOf } from '../words/check-sentences'
import type { Words } from '../words/en'
import { namePlace } from '../words/position'
import { say } from '../words/say'
import type { ReportContext } from './context'
import type { ReportDocument, ReportFinding } from './document'
import { sayLeftOut } from './photographs-part'

const overruled = ({ answer, judged }: Assessed, { words }: ReportContext): ReportFinding['overruled'] => {
  if (answer?.overrule === undefined) return undefined
  return { ...(judged !== undefined && { judged: { verdict: judged, word: words.verdicts[judged] } }), reason: answer.overrule.reason }
}

/** What was recorded, without the choice that is the outcome itself: `because` says that one in a sentence. */
const readings = ({ answer, check, found }: Assessed, { words, units }: ReportContext): ReportFinding['readings'] => {
  if (answer === undefined) return []
  const fields = check.fields.filter((field) => field.kind !== 'choice' || answer.values[field.id] !== found?.outcome)
  return readingsOf(words, { ...check, fields }, answer.values, units)
}

const finding = (each: Assessed, number: number, context: ReportContext): ReportFinding => {
  const { words, units, survey } = context
  const own = wordsOf(words, each.check)
  const by = each.by ?? 'before next trip'
  const place = context.place(each.position)
  const photographs = context.photographsOf(each.key)
  const leftOut = context.leftOutOf(each.key)
  return {
    number,
    checkId: each.check.id,
    position: each.position,
    station: each.check.station,
    stationName: words.stations[each.check.station],
    place,
    title: own.title,
    name: namePlace(own.title, place),
    verdict: each.verdict,
    word: words.verdicts[each.verdict],
    overruled: overruled(each, context),
    because: becauseOf(words, each, units),
    readings: readings(each, context),
    criterion: criterionOf(words, each.check, survey.ruleBook),
    sources: sourcesOf(each.check, survey.ruleBook).map(saySource),
    consequence: consequenceOf(words, each),
    remedy: remedyOf(words, each, units),
    by,
    byWords: words.byWhens[by],
    note: each.answer?.note?.trim() || undefined,
    instrument: each.answer?.instrument || undefined,
    photographs,
    withoutPhotograph: each.check.photograph === true && photographs.length + leftOut === 0 ? words.report.withoutPhotograph : undefined,
    photographsKept: sayLeftOut(leftOut, photographs.length, context),
  }
}

/** Advisories and fails, gravest first, each with everything it rests on. */
export const findingsPart = (context: ReportContext): ReportFinding[] => context.findings.map((each, index) => finding(each, index + 1, context))

/** At most so many places are named on the first page; the findings name them all. */
const mostPlaces = 5

const sayPlaces = (places: readonly string[], words: Words): string => {
  if (places.length <= mostPlaces) return places.join(', ')
  return words.report.andMore.replace('{places}', places.slice(0, mostPlaces - 1).join(', ')).replace('{count}', String(places.length - mostPlaces + 1))
}

type Group = readonly [ReportFinding, ...ReportFinding[]]

/** Findings with the same thing to do, gravest first: the same remedy at several places is one thing. */
const groupsOf = (findings: readonly ReportFinding[]): Group[] =>
  [...Map.groupBy(findings, (each) => `${each.checkId} ${each.verdict} ${each.by} ${each.remedy ?? each.number}`).values()].flatMap(([first, ...more]): Group[] => (first === undefined ? [] : [[first, ...more]]))

const inShort = (group: Group, words: Words): ReportDocument['furtherFails'][number] => {
  const [{ title, name, verdict, word, byWords }] = group
  const places = group.map(({ place }) => place).filter((place) => place !== '')
  return { findings: group.map(({ number }) => number), verdict, word, where: places.length > 1 ? `${title}, ${sayPlaces(places, words)}` : name, byWords }
}

const shownFirst = 3

/** The three gravest things to do. */
export const threeThings = (findings: readonly ReportFinding[], words: Words): ReportDocument['threeThings'] =>
  groupsOf(findings).slice(0, shownFirst).map((group) => ({ ...inShort(group, words), what: group[0].remedy ?? group[0].because ?? group[0].criterion }))

/** The fails that the three gravest things leave out. */
export const furtherFails = (findings: readonly ReportFinding[], words: Words): ReportDocument['furtherFails'] =>
  groupsOf(findings).slice(shownFirst).filter(([{ verdict }]) => verdict === 'fail').map((group) => inShort(group, words))

export const byWhenKey = (findings: readonly ReportFinding[], words: Words): ReportDocument['byWhenKey'] =>
  byWhens.filter((by) => findings.some((finding) => finding.by === by)).map((by) => ({ word: words.byWhens[by], meaning: words.report.byWhenMeanings[by] }))

/** How many findings want a photograph and have none. */
export const photographsWanted = (findings: readonly ReportFinding[], { words, units }: ReportContext): string | undefined => {
  const numbers = findings.filter(({ withoutPhotograph }) => withoutPhotograph !== undefined).map(({ number }) => number)
  if (numbers.length === 0) return undefined
  return say(numbers.length === 1 ? words.report.photographWanted : words.report.photographsWanted, { numbers: numbers.join(', ') }, units)
}
