import { factNames, type Act, type Facts, type PhotographAct, type ReportFacts, type SurveyFacts } from './entry'

/** A photograph as the record knows it. */
export interface RecordedPhotograph {
  readonly photographId: string
  readonly sha256: string
  readonly byteCount: number
  readonly facts: Facts
}

/** A report as the record knows it. */
export interface RecordedReport {
  readonly reportId: string
  readonly facts: ReportFacts
}

export const issuedAct = ({ reportId, facts }: RecordedReport, survey: SurveyFacts): Act => ({ what: 'report issued', reportId, report: facts, survey })

export const addedAct = ({ photographId, sha256, byteCount, facts }: RecordedPhotograph): Act => ({ what: 'added', photographId, sha256, byteCount, to: facts })

const named: readonly (readonly [keyof Facts, (to: Facts) => PhotographAct])[] = [
  ['removedAt', ({ removedAt }) => (removedAt === null ? 'restored' : 'removed')],
  ['checkId', () => 'assigned'],
  ['position', () => 'assigned'],
  ['marksSha256', () => 'marked'],
  ['quarterTurns', () => 'turned'],
  ['caption', () => 'captioned'],
  ['isPrinted', ({ isPrinted }) => (isPrinted === true ? 'chosen to print' : 'left out of print')],
  ['largePreviewSha256', () => 'copies made'],
  ['smallPreviewSha256', () => 'copies made'],
]

/** What was done to a photograph between two looks at it; undefined for nothing. Named by the gravest of what changed. Throws where no act of ours could have changed it so. */
export const actBetween = (before: RecordedPhotograph, after: RecordedPhotograph): Act | undefined => {
  const changed = factNames.filter((name) => before.facts[name] !== after.facts[name])
  if (changed.length === 0) return undefined
  const { photographId, sha256, byteCount, facts } = after
  const what = named.find(([name]) => changed.includes(name))?.[1](facts)
  const isOurs = changed.every((name) => named.some(([known]) => known === name)) && before.sha256 === sha256
  if (what === undefined || !isOurs) throw new Error(`no act changes ${changed.join(', ')} of a photograph`)
  return { what, photographId, sha256, byteCount, to: Object.fromEntries(changed.map((name) => [name, facts[name]])) }
}
