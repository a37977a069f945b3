import type { Desk } from '../../shared-logic/contract/contract'
import type { Verified } from '../../shared-logic/proof/problem'
import { programVersion } from '../program-version'
import { listReports, reportsOf } from '../store/reports'
import { listRigs } from '../store/rigs'
import { listSurveys } from '../store/surveys'
import type { NamedSurvey } from '../store/to-prove'
import { openYardToRead } from '../store/yard-to-read'
import { reportPdfIn, type OpenedDesk } from './open'
import { needRig } from './rigs'
import { wholeSurvey } from './surveys'
import { needSurvey } from './under-way'
import { verifyList } from './verify-list'
import { verifyOneSurvey, type VerifyOptions } from './verify-survey'
import { verifyYard, type VerifiedYard, type VerifyYardOptions } from './verify-yard'

/** The part of the desk that changes nothing, for a door that only looks. */
export type ReadingDesk = Pick<Desk, 'rigs.list' | 'rigs.get' | 'surveys.list' | 'surveys.get' | 'reports.list'>

export interface OpenedToRead {
  readonly desk: ReadingDesk
  readonly reportPdf: OpenedDesk['reportPdf']
  /** Every survey that can be verified: those put away too, and those of which only a record or the yard's list still tells. */
  readonly surveysToVerify: () => Promise<readonly NamedSurvey[]>
  readonly verifySurvey: (surveyId: string, options?: VerifyOptions) => Promise<Verified>
  readonly verifyYard: (options?: VerifyYardOptions) => Promise<VerifiedYard>
  readonly close: () => Promise<void>
}

/** Opens a yard without its lock and without writing to it, beside a running program or from read-only ground. */
export const openDeskToRead = (folder: string): OpenedToRead => {
  const yard = openYardToRead(folder, { programVersion })
  const { read } = yard
  return {
    desk: {
      'rigs.list': (page) => read((db) => listRigs(db, page)),
      'rigs.get': ({ rigId }) => read((db) => needRig(db, rigId)),
      'surveys.list': (page) => read((db) => listSurveys(db, page)),
      'surveys.get': ({ surveyId }) => read(async (db) => wholeSurvey(db, await needSurvey(db, surveyId))),
      'reports.list': ({ surveyId, ...page }) => read(async (db) => ({ reports: surveyId === undefined ? await listReports(db, page) : await reportsOf(db, surveyId) })),
    },
    reportPdf: reportPdfIn(yard),
    surveysToVerify: async () => (await verifyList(yard)).named,
    verifySurvey: (surveyId, options) => verifyOneSurvey(yard, surveyId, options),
    verifyYard: (options) => verifyYard(yard, options),
    close: yard.close,
  }
}
