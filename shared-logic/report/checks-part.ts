import { summarize, type Assessed } from '../survey/assess'
import { notSeenOf } from '../survey/findings'
import { stations } from '../survey/station'
import { becauseOf, readingsOf, saySource, sourcesOf, wordsOf } from '../words/check-sentences'
import { say } from '../words/say'
import type { ReportContext } from './context'
import type { CheckLine, NotSeenLine, StationPart } from './document'

/** Readings other than plain choices: a choice is told by the sentence of its outcome. */
const measured = ({ check, answer }: Assessed, { words, units }: ReportContext): string[] =>
  answer === undefined
    ? []
    : readingsOf(words, { ...check, fields: check.fields.filter((field) => field.kind !== 'choice') }, answer.values, units).map(({ label, value }) =>
        say(words.report.reading, { label, value }, units),
      )

const decision = ({ answer, judged, verdict }: Assessed, { words, units }: ReportContext): string | undefined => {
  if (answer?.overrule === undefined) return undefined
  const values = { verdict: words.verdicts[verdict], reason: answer.overrule.reason }
  return judged === undefined ? say(words.report.overruledUnjudged, values, units) : say(words.report.overruledFrom, { ...values, judged: words.verdicts[judged] }, units)
}

/** Why a check came out as it did, or why it was set aside or left. */
const remarkOf = (each: Assessed, context: ReportContext): string => {
  const { words, units } = context
  if (each.answer?.aside !== undefined) return each.answer.aside.reason
  if (each.open) return words.report.leftOpen
  const instrument = each.answer?.instrument
  return [...measured(each, context), becauseOf(words, each, units), decision(each, context), instrument ? say(words.report.withInstrument, { instrument }, units) : undefined]
    .filter((part) => part !== undefined && part !== '')
    .map((part) => (/[.!?)”]$/.test(part ?? '') ? part : `${part}.`))
    .join(' ')
}

const checkLine = (each: Assessed, context: ReportContext): CheckLine => {
  const finding = context.findingNumber(each.key)
  return {
    checkId: each.check.id,
    position: each.position,
    title: wordsOf(context.words, each.check).title,
    place: context.place(each.position),
    verdict: each.verdict,
    word: context.words.verdicts[each.verdict],
    remark: remarkOf(each, context),
    note: finding === undefined ? each.answer?.note?.trim() || undefined : undefined,
    finding,
    photographs: context.photographsOf(each.key),
  }
}

/** Every check with its verdict, by station in walking order; stations without a check are left out. */
export const stationsPart = (context: ReportContext): StationPart[] =>
  stations
    .map((station) => ({ station, own: context.assessed.filter(({ check }) => check.station === station) }))
    .filter(({ own }) => own.length > 0)
    .map(({ station, own }) => {
      const { verdict, tallies } = summarize(own)
      return { station, name: context.words.stations[station], verdict, word: context.words.verdicts[verdict], tallies, checks: own.map((each) => checkLine(each, context)) }
    })

/** What was asked and not seen, with the reason. */
export const notSeenPart = (context: ReportContext): NotSeenLine[] =>
  notSeenOf(context.assessed).map((each) => ({
    stationName: context.words.stations[each.check.station],
    title: wordsOf(context.words, each.check).title,
    place: context.place(each.position),
    reason: remarkOf(each, context),
  }))

/** Every rule, standard or practice the criteria of this survey rest on, once, in the order of their names. */
export const sourcesPart = ({ assessed, survey }: ReportContext): string[] =>
  [...new Set(assessed.flatMap(({ check }) => sourcesOf(check, survey.ruleBook).map(saySource)))].toSorted()
