import type { RecordedPhotograph, RecordedReport } from './acts'
import { laterFactNames, surveyFactNames, type SurveyFacts } from './entry'
import type { Problem, ProblemCode } from './problem'
import type { IssuedSurvey } from './read-record'

const shown = (value: string | number | boolean | null | undefined): string => (value === null || value === undefined || value === '' ? '–' : String(value))

const changedFacts = (row: RecordedPhotograph, recorded: RecordedPhotograph): Problem[] => {
  const facts: Readonly<Record<string, string | number | boolean | null>> = { ...row.facts, byteCount: row.byteCount }
  const unknownAtFirst = Object.fromEntries(laterFactNames.map((name) => [name, null]))
  return Object.entries({ ...unknownAtFirst, ...recorded.facts, byteCount: recorded.byteCount })
    .filter(([name, value]) => facts[name] !== value)
    .map(([name, value]) => ({ code: 'photograph-changed' as const, values: { name: shown(recorded.facts.fileName), fact: name, recorded: shown(value), now: shown(facts[name]), photographId: row.photographId } }))
}

/** Where the yard's rows say something else than the record does. */
export const compareRows = (rows: readonly RecordedPhotograph[], recorded: ReadonlyMap<string, RecordedPhotograph>): Problem[] => {
  const problems: Problem[] = []
  for (const row of rows) {
    const told = recorded.get(row.photographId)
    if (told === undefined) problems.push({ code: 'photograph-unrecorded', values: { name: row.facts.fileName, photographId: row.photographId } })
    else if (told.sha256 !== row.sha256) problems.push({ code: 'photograph-other', values: { name: shown(told.facts.fileName), recorded: told.sha256, now: row.sha256, photographId: row.photographId } })
    else problems.push(...changedFacts(row, told))
  }
  const there = new Set(rows.map(({ photographId }) => photographId))
  for (const { photographId, facts } of recorded.values())
    if (!there.has(photographId)) problems.push({ code: 'photograph-gone', values: { name: shown(facts.fileName), photographId } })
  return problems
}

const changedReport = (row: RecordedReport, recorded: RecordedReport): Problem[] => {
  const { number, revision } = recorded.facts
  const facts: Readonly<Record<string, string | number>> = row.facts
  return Object.entries(recorded.facts)
    .filter(([name, value]) => facts[name] !== value)
    .map(([name, value]) => ({ code: 'report-row-changed' as const, values: { number, revision, reportFact: name, recorded: shown(value), now: shown(facts[name]) } }))
}

/** The same of a survey's reports. */
export const compareReports = (rows: readonly RecordedReport[], recorded: ReadonlyMap<string, RecordedReport>): Problem[] => {
  const there = new Set(rows.map(({ reportId }) => reportId))
  return [
    ...rows.flatMap((row): Problem[] => {
      const told = recorded.get(row.reportId)
      return told === undefined ? [{ code: 'report-unrecorded', values: { number: row.facts.number, revision: row.facts.revision } }] : changedReport(row, told)
    }),
    ...[...recorded.values()].filter(({ reportId }) => !there.has(reportId)).map(({ facts: { number, revision } }): Problem => ({ code: 'report-gone', values: { number, revision } })),
  ]
}

/** Where a survey is not any more as it was issued, though nobody opened it again. */
export const compareSurvey = (now: SurveyFacts, issued: IssuedSurvey | undefined): Problem[] =>
  issued === undefined ? [] : surveyFactNames.filter((name) => now[name] !== issued.survey[name]).map((name) => ({ code: 'survey-changed', values: { number: issued.number, revision: issued.revision, surveyFact: name } }))

const unblamed: Partial<Record<ProblemCode, ProblemCode>> = {
  'photograph-unrecorded': 'photograph-not-in-record', 'photograph-gone': 'photograph-only-in-record', 'photograph-other': 'photograph-other-in-record', 'photograph-changed': 'photograph-differs',
  'order-changed': 'order-differs', 'survey-changed': 'survey-differs', 'report-unrecorded': 'report-not-in-record', 'report-gone': 'report-only-in-record', 'report-row-changed': 'report-differs',
}

/** The same differences where the record was altered: then nobody knows which of the two is right, and none is accused. */
export const withoutBlame = (problems: readonly Problem[]): Problem[] => problems.map(({ code, values }) => ({ code: unblamed[code] ?? code, values }))
