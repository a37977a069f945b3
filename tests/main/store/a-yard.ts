import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { v7 } from 'uuid'
import { afterAll } from 'vitest'
import { Refusal, type RefusalData } from '../../../shared-logic/contract/refusal'
import type { Rig } from '../../../shared-logic/rig/rig'
import type { WritableDb } from '../../../main/store/database'
import { insertRig } from '../../../main/store/rigs'
import { surveySearchText } from '../../../main/store/search-text'
import { summaryColumns } from '../../../main/store/survey-row'
import { insertSurvey } from '../../../main/store/surveys'
import { openYard, type Yard, type YardOptions } from '../../../main/store/yard'

const made: string[] = []
afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true })
})

/** A folder of its own; cleared away when the test file is done. */
export const newFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'store-'))
  made.push(folder)
  return folder
}

export const noon = new Date('2026-06-15T12:00:00Z')
export const open = (folder: string, more: Partial<YardOptions> = {}): Yard => openYard(folder, { programVersion: '0.1.0', clock: () => noon, ...more })

/** What a call was refused with; fails when it was not. */
export const refusalOf = async (call: () => unknown): Promise<RefusalData> => {
  try {
    await call()
  } catch (error) {
    if (error instanceof Refusal) return error.data
    throw error
  }
  throw new Error('nothing was refused')
}

export const aRig = (name: string, more: Partial<Rig> = {}): Rig => ({ name, trailer: { axleCount: 1 }, ...more })

export const keepRig = async (db: WritableDb, rig: Rig): Promise<string> => {
  const id = v7()
  await insertRig(db, id, rig, noon.toISOString())
  return id
}

export const keepSurvey = async (db: WritableDb, rigId: string, rig: Rig, surveyDate: string, place?: string): Promise<string> => {
  const id = v7()
  await insertSurvey(db, {
    id, rig_id: rigId, rig_name: rig.name, search_text: surveySearchText(rig, { place, surveyDate }), purpose: 'yearly', survey_date: surveyDate,
    status: 'under way', rule_book: 'us', catalogue_version: '2026.1', zone: 'UTC', place: place ?? null, here_check_id: null, here_position: null,
    ...summaryColumns({ verdict: 'not seen', tallies: { pass: 0, advisory: 0, fail: 0, 'not seen': 3, 'not applicable': 0 }, asked: 3, open: 3 }),
    report_number: null, revision: 0, change_count: 0, started_at: noon.toISOString(), discarded_at: null,
  })
  return id
}
