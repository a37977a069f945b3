import type { Settings } from '../survey/settings'
import { say, sayDate } from '../words/say'
import type { ReportContext } from './context'
import type { Fact } from './document'

/** An instant as the clock on the wall showed it where the survey was made: '25 November 2026, 14:05, Europe/Athens'. */
export const sayInstant = (instant: string, zone: string, context: Pick<ReportContext, 'words' | 'units'>): string => {
  const { date, time, zone: shownZone } = wallClock(instant, zone)
  return say(context.words.report.at, { date: sayDate(date), time, zone: shownZone }, context.units)
}

const wallClock = (instant: string, zone: string): { date: string; time: string; zone: string } => {
  try {
    const format = new Intl.DateTimeFormat('en-GB', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit', hour: '2-digit', minute: '2-digit', hourCycle: 'h23' })
    const parts = new Map(format.formatToParts(new Date(instant)).map(({ type, value }) => [type, value]))
    return { date: `${parts.get('year')}-${parts.get('month')}-${parts.get('day')}`, time: `${parts.get('hour')}:${parts.get('minute')}`, zone }
  } catch {
    // A zone this machine does not know: the instant is told in UTC, as it was stored.
    return { date: instant.slice(0, 10), time: instant.slice(11, 16), zone: 'UTC' }
  }
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
