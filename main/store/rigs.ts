import { sql } from 'kysely'
import type { Rig } from '../../shared-logic/rig/rig'
import { rigSchema } from '../../shared-logic/rig/rig'
import type { RigRow, SurveyRow } from '../../shared-logic/survey/records'
import type { ReadableDb, WritableDb } from './database'
import { foundBy } from './find'
import { fold, rigSearchText } from './search-text'
import { asSurveyRow } from './survey-row'

export interface Page {
  readonly offset: number
  readonly limit: number
}

export const parseRig = (json: string): Rig => rigSchema.parse(JSON.parse(json))

/** Rigs of the yard by name; a rig is found by its own words or by those of its surveys. */
export const rigsByName = (db: ReadableDb, search?: string) => {
  const own = foundBy('rigs', search)
  const theirs = foundBy('surveys', search)
  const listed = db.selectFrom('rigs').where('rigs.removed_at', 'is', null)
  if (own.length === 0) return listed
  return listed.where((either) =>
    either.or([either.and(own), sql<boolean>`rigs.id in (select rig_id from surveys where discarded_at is null and ${sql.join(theirs, sql` and `)})`]),
  )
}

export const pageOfRigs = (db: ReadableDb, { search, offset, limit }: Page & { readonly search?: string | undefined }) =>
  rigsByName(db, search).select(['rigs.id', 'rigs.rig_json']).orderBy('rigs.sort_name').orderBy('rigs.id').limit(limit).offset(offset)

const surveyCounts = async (db: ReadableDb, ids: readonly string[]): Promise<ReadonlyMap<string, number>> => {
  const rows = await db.selectFrom('surveys').select(['rig_id', (query) => query.fn.countAll<number>().as('count')])
    .where('discarded_at', 'is', null).where('rig_id', 'in', ids).groupBy('rig_id').execute()
  return new Map(rows.map((row) => [row.rig_id, row.count]))
}

const latestSurveys = async (db: ReadableDb, ids: readonly string[]): Promise<ReadonlyMap<string, SurveyRow>> => {
  const rows = await Promise.all(ids.map((id) =>
    db.selectFrom('surveys').selectAll().where('rig_id', '=', id).where('discarded_at', 'is', null)
      .orderBy('survey_date', 'desc').orderBy('id', 'desc').limit(1).executeTakeFirst()))
  return new Map(rows.flatMap((row) => (row === undefined ? [] : [[row.rig_id, asSurveyRow(row)]])))
}

const withSurveys = async (db: ReadableDb, rows: readonly { readonly id: string; readonly rig_json: string }[]): Promise<RigRow[]> => {
  if (rows.length === 0) return []
  const ids = rows.map((row) => row.id)
  const counts = await surveyCounts(db, ids)
  const latest = await latestSurveys(db, ids)
  return rows.map(({ id, rig_json }) => ({ id, rig: parseRig(rig_json), surveyCount: counts.get(id) ?? 0, latest: latest.get(id) }))
}

export const listRigs = async (db: ReadableDb, page: Page & { readonly search?: string | undefined }): Promise<{ rigs: RigRow[]; total: number }> => {
  const { total } = await rigsByName(db, page.search).select((query) => query.fn.countAll<number>().as('total')).executeTakeFirstOrThrow()
  return { rigs: await withSurveys(db, await pageOfRigs(db, page).execute()), total }
}

/** A rig that was not removed. */
export const findRig = async (db: ReadableDb, id: string): Promise<RigRow | undefined> => {
  const row = await db.selectFrom('rigs').select(['id', 'rig_json']).where('id', '=', id).where('removed_at', 'is', null).executeTakeFirst()
  return row && (await withSurveys(db, [row]))[0]
}

/** The rig as the yard knows it now, removed or not; a survey under way is made of it. */
export const yardRig = async (db: ReadableDb, id: string): Promise<Rig> =>
  parseRig((await db.selectFrom('rigs').select('rig_json').where('id', '=', id).executeTakeFirstOrThrow()).rig_json)

const columnsOf = (rig: Rig, at: string) =>
  ({ name: rig.name, sort_name: fold(rig.name), search_text: rigSearchText(rig), rig_json: JSON.stringify(rig), saved_at: at })

export const insertRig = async (db: WritableDb, id: string, rig: Rig, at: string): Promise<void> => {
  await db.insertInto('rigs').values({ id, ...columnsOf(rig, at), removed_at: null }).execute()
}

export const updateRig = async (db: WritableDb, id: string, rig: Rig, at: string): Promise<void> => {
  await db.updateTable('rigs').set(columnsOf(rig, at)).where('id', '=', id).execute()
}

/** The row stays for the surveys made of it. */
export const removeRig = async (db: WritableDb, id: string, at: string): Promise<void> => {
  await db.updateTable('rigs').set({ removed_at: at }).where('id', '=', id).execute()
}
