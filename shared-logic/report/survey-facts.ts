import type { Settings } from '../survey/settings'
import { wallClock } from '../survey/wall-clock'
import { say, sayDate } from '../words/say'
import type { ReportContext } from './context'
import type { Fact } from './document'

/** An instant as the clock on the wall showed it where the survey was made: '25 November 2026, 14:05, Europe/Athens'. */
export const sayInstant = (instant: string, zone: string, context: Pick<ReportContext, 'words' | 'units'>): string => {
  const { date, time, zone: shownZone } = wallClock(instant, zone)
  return say(context.words.report.at, { date: sayDate(date), time: time.slice(0, 5), zone: shownZone }, context.units)
}

const joined = (...parts: readonly (string | undefined)[]): string | undefined => {
  const text = parts.map((part) => part?.trim()).filter((part) => part !== undefined && part !== '').join('\n')
  return text === '' ? undefined : text
}

const fact = (label: string, value: string | undefined, absent: string): Fact => ({ label, value: value ?? absent, known: value !== undefined })

/** When, where, by whom, for whom, what for and by which rules. */
export const surveyFacts = (context: ReportContext, settings: Settings): Fact[] => {
  const { survey, words, units } = context
  const { facts, notGiven, notKnown } = words.report
  const { owner } = survey.rig
  return [
    fact(facts.surveyed, sayDate(survey.surveyDate), notGiven),
    fact(facts.place, joined(survey.place), notGiven),
    fact(facts.purpose, words.purposes[survey.purpose], notGiven),
    fact(facts.surveyor, joined(settings.surveyorName, settings.surveyorAddress, settings.surveyorContact), notGiven),
    fact(facts.owner, joined(owner?.name, owner?.address, owner?.contact), notKnown),
    fact(facts.ruleBook, say(words.report.ruleBookName, { name: words.ruleBooks[survey.ruleBook] }, units), notGiven),
  ]
}
