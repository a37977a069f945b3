import type { Assessed } from '../survey/assess'
import { becauseOf, consequenceOf, criterionOf, readingsOf, remedyOf, saySource, sourcesOf, wordsOf } from '../words/check-sentences'
import type { Words } from '../words/en'
import type { ReportContext } from './context'
import type { ReportDocument, ReportFinding } from './document'

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
  return {
    number,
    checkId: each.check.id,
    position: each.position,
    station: each.check.station,
    stationName: words.stations[each.check.station],
    place: context.place(each.position),
    title: own.title,
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
    photographs: context.photographsOf(each.key),
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

/** The three gravest things to do; the same remedy at several places is one thing. */
export const threeThings = (findings: readonly ReportFinding[], words: Words): ReportDocument['threeThings'] => {
  const groups = Map.groupBy(findings, (each) => `${each.checkId} ${each.verdict} ${each.by} ${each.remedy ?? each.number}`)
  return [...groups.values()].slice(0, 3).flatMap((group) => {
    const [first] = group
    if (first === undefined) return []
    const places = group.map(({ place }) => place).filter((place) => place !== '')
    return [{
      findings: group.map(({ number }) => number),
      verdict: first.verdict,
      word: first.word,
      what: first.remedy ?? first.because ?? first.criterion,
      where: places.length === 0 ? first.title : `${first.title}, ${sayPlaces(places, words)}`,
      byWords: first.byWords,
    }]
  })
}
