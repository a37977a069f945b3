import { sql } from 'kysely'
import type { FoundEntry } from '../../shared-logic/proof/chain'
import { writeChain, type RecordEnd } from '../../shared-logic/proof/entry'
import { listOpening, type SurveyAct } from '../../shared-logic/proof/survey-list'
import { exactText, sha256Of } from './chained-text'
import type { ReadableDb, WritableDb } from './database'

/** Where the list ends by the row kept apart from it. */
export const listEnd = async (db: ReadableDb): Promise<RecordEnd | undefined> => {
  const end = await db.selectFrom('survey_list_end').select(['entry_count', 'last_sha256']).executeTakeFirst()
  return end && { entryCount: end.entry_count, lastSha256: end.last_sha256 }
}

/** Whichever reaches further, so that a list that was tampered with can still be added to. */
const endToFollow = async (db: ReadableDb): Promise<RecordEnd | undefined> => {
  const end = await listEnd(db)
  const last = await db.selectFrom('survey_list').select(['place', 'sha256']).orderBy('place', 'desc').limit(1).executeTakeFirst()
  return last !== undefined && last.place > (end?.entryCount ?? 0) ? { entryCount: last.place, lastSha256: last.sha256 } : end
}

/** Enters what happened to a survey in the yard's list, in the transaction that makes it so. `at` is a UTC instant. */
export const enterInList = async (db: WritableDb, act: SurveyAct, at: string): Promise<void> => {
  const entries = JSON.stringify(writeChain(listOpening, await endToFollow(db), [act], at, sha256Of))
  await sql`INSERT INTO survey_list (place, entry_json, sha256)
    SELECT value ->> 'place', value ->> 'text', value ->> 'sha256' FROM json_each(${entries}) ORDER BY key`.execute(db)
}

/** The list as it lies in the file, by place. */
export const foundInList = async (db: ReadableDb): Promise<FoundEntry[]> =>
  (await db.selectFrom('survey_list').select(['place', 'sha256', sql<Uint8Array | null>`CAST(entry_json AS BLOB)`.as('bytes')]).orderBy('place').execute())
    .map(({ place, sha256, bytes }) => ({ place, sha256, text: exactText(bytes) }))
