import type { RecordEnd } from '../proof/entry'
import type { CorrosionSurvey, Survey } from '../survey/records'
import type { Settings } from '../survey/settings'
import type { Words } from '../words/en'
import { say, sayDate } from '../words/say'
import { cautionsPart } from './cautions'
import { notSeenPart, sourcesPart, stationsPart } from './checks-part'
import { corrosionPart } from './corrosion-part'
import { contextOf, type Harmed, type ReportContext } from './context'
import type { ReportDocument } from './document'
import { byWhenKey, findingsPart, furtherFails, photographsWanted, threeThings } from './findings-part'
import { originalsHarmed, photographMethod } from './originals-part'
import { photographsPart, sayLeftOut } from './photographs-part'
import { planPart } from './plan-part'
import { rigLines, rigPart } from './rig-facts'
import { sumsPart } from './sums-part'
import { sayInstant, surveyFacts } from './survey-facts'
import { verdictPart } from './verdict-part'

/** All a report is made from. `issuedAt` is a UTC instant, ISO with Z. */
export interface ReportInput {
  readonly survey: Survey
  readonly settings: Settings
  /** 'BW-2026-0007'; the same for every revision. */
  readonly number: string
  /** 1 for the first issue. */
  readonly revision: number
  readonly issuedAt: string
  readonly programVersion: string
  readonly words: Words
  /** Corroded spots of the rig's surveys; those of earlier issued ones are followed. A survey that is only a file has none. */
  readonly corrosion?: readonly CorrosionSurvey[]
  /** Prints where each photograph was taken, by its camera. */
  readonly withPlaces?: boolean
  /** Where the survey's record of photographs stands; a survey that is only a file has none. */
  readonly photographRecord?: RecordEnd | undefined
  /** Every original was read anew for this report: those that are not as they came in. Absent for a survey that is only a file. */
  readonly harmed?: Harmed
  /** Of these, by their hash, those of which there is no copy to print either. */
  readonly withoutPicture?: ReadonlySet<string>
}

type Head = Pick<ReportDocument, 'language' | 'paper' | 'number' | 'revision' | 'surveyId' | 'surveyDate' | 'issuedAt' | 'programVersion' | 'catalogueVersion' | 'ruleBook'
  | 'labels' | 'title' | 'rigName' | 'rigLines' | 'reference' | 'surveyDateWords' | 'issuedWords' | 'surveyor' | 'survey' | 'ruleBookMeaning' | 'verdictWords'>

const headOf = ({ survey, settings, number, revision, issuedAt, programVersion, words }: ReportInput, context: ReportContext): Head => ({
  language: words.report.language,
  paper: settings.paper,
  number,
  revision,
  surveyId: survey.id,
  surveyDate: survey.surveyDate,
  issuedAt,
  programVersion,
  catalogueVersion: survey.catalogueVersion,
  ruleBook: survey.ruleBook,
  labels: { ...words.report.labels },
  title: say(words.report.title, { number, rig: survey.rig.name }, context.units),
  rigName: survey.rig.name,
  rigLines: rigLines(survey.rig, context),
  reference: say(words.report.reference, { number, revision }, context.units),
  surveyDateWords: sayDate(survey.surveyDate),
  issuedWords: sayInstant(issuedAt, survey.zone, context),
  surveyor: { name: settings.surveyorName, address: settings.surveyorAddress, contact: settings.surveyorContact },
  survey: surveyFacts(context, settings),
  ruleBookMeaning: words.report.ruleBooks[survey.ruleBook],
  verdictWords: { ...words.verdicts },
})

const methodOf = ({ survey, programVersion, words, revision, withoutPicture = new Set() }: ReportInput, context: ReportContext): string[] => [
  ...words.report.method.map((paragraph) => say(paragraph, { date: { date: survey.surveyDate } }, context.units)),
  ...photographMethod(context, withoutPicture),
  say(words.report.made, { programVersion, catalogueVersion: survey.catalogueVersion }, context.units),
  ...(revision > 1 ? [say(words.report.revised, { revision }, context.units)] : []),
]

const recordPart = ({ photographRecord, words }: ReportInput, context: ReportContext): Pick<ReportDocument, 'photographRecord'> => {
  if (photographRecord === undefined) return {}
  const { entryCount, lastSha256 } = photographRecord
  return { photographRecord: { entryCount, lastSha256, sentence: say(words.report.photographRecord, { count: entryCount, sha256: lastSha256 }, context.units) } }
}

/** Words a survey into a report. Pure: the same input gives the same document. */
export const composeReport = (input: ReportInput): ReportDocument => {
  const { survey, words, settings } = input
  const context = contextOf(survey, words, settings.units, input.harmed)
  const findings = findingsPart(context)
  const corrosion = corrosionPart(context, input.corrosion ?? [])
  const sums = sumsPart(context, settings.sums)
  return {
    format: 'bunkwright report',
    formatVersion: 1,
    ...headOf(input, context),
    ...verdictPart(context),
    threeThings: threeThings(findings, words),
    furtherFails: furtherFails(findings, words),
    byWhenKey: byWhenKey(findings, words),
    photographsWanted: photographsWanted(findings, context),
    plan: planPart(context, findings),
    rig: rigPart(survey.rig, context),
    remarks: survey.rig.remarks,
    findings,
    stations: stationsPart(context),
    notSeen: notSeenPart(context),
    ...(corrosion && { corrosion }),
    ...(sums && { sums }),
    photographs: photographsPart(context, input.withPlaces ?? false),
    photographsKept: sayLeftOut(survey.photographs.length - context.photographs.length, context.photographs.length, context),
    ...originalsHarmed(context),
    ...recordPart(input, context),
    cautions: cautionsPart(context, sums),
    method: methodOf(input, context),
    sources: sourcesPart(context),
    declaration: say(words.report.declaration, { date: { date: survey.surveyDate } }, context.units),
  }
}
