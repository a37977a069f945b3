import { sql, type Insertable, type RawBuilder, type Selectable, type Updateable } from 'kysely'
import { markLayerSchema } from '../../shared-logic/marking/marks'
import type { PreviewHashes } from '../../shared-logic/photographs/preview-hashes'
import { qualitySchema } from '../../shared-logic/photographs/quality'
import type { Photograph } from '../../shared-logic/survey/records'
import type { ReadableDb, WritableDb } from './database'
import type { OriginalTable, PhotographTable } from './tables'

const withOriginals = (db: ReadableDb) =>
  db.selectFrom('photographs').innerJoin('originals', 'originals.sha256', 'photographs.sha256').selectAll('originals').selectAll('photographs')

/** A photograph and its original as kept; `removed_at` says whether it still stands in the survey. */
export type KeptPhotograph = Selectable<PhotographTable> & Omit<Selectable<OriginalTable>, 'added_at'>

export const asPhotograph = (row: KeptPhotograph): Photograph => ({
  id: row.id,
  sha256: row.sha256,
  checkId: row.check_id ?? undefined,
  position: row.position ?? undefined,
  caption: row.caption,
  fileName: row.file_name,
  format: row.format,
  byteCount: row.byte_count,
  widthPx: row.width_px,
  heightPx: row.height_px,
  takenAt: row.taken_at ?? undefined,
  latitude: row.latitude ?? undefined,
  longitude: row.longitude ?? undefined,
  addedAt: row.added_at,
  source: row.source,
  quarterTurns: row.quarter_turns,
  isPrinted: row.is_printed === 1,
  marks: row.marks_json === null ? undefined : markLayerSchema.parse(JSON.parse(row.marks_json)),
  quality: row.quality_json === null ? undefined : qualitySchema.parse(JSON.parse(row.quality_json)),
  lookHash: row.look_hash ?? undefined,
})

export const photographsOf = async (db: ReadableDb, surveyId: string): Promise<Photograph[]> =>
  (await withOriginals(db).where('photographs.survey_id', '=', surveyId).where('photographs.removed_at', 'is', null)
    .orderBy((row) => row.fn.coalesce('photographs.print_order', row.val(Number.MAX_SAFE_INTEGER))).orderBy('photographs.added_at').orderBy('photographs.id').execute()).map(asPhotograph)

export const findPhotograph = (db: ReadableDb, id: string): Promise<KeptPhotograph | undefined> =>
  withOriginals(db).where('photographs.id', '=', id).executeTakeFirst()

/** Ids handed over as one value, so that five hundred are one statement and never more placeholders than SQLite takes. */
export const isOneOf = (ids: readonly string[]): RawBuilder<boolean> => sql<boolean>`photographs.id IN (SELECT value FROM json_each(${JSON.stringify(ids)}))`

/** Those photographs by id, removed or not; an id that is not known is left out. */
export const photographsById = async (db: ReadableDb, ids: readonly string[]): Promise<Map<string, KeptPhotograph>> =>
  new Map((await withOriginals(db).where(isOneOf(ids)).execute()).map((kept) => [kept.id, kept]))

/** All that stand or stood at one place of a survey, removed or not. */
export const photographsAtPlace = (db: ReadableDb, surveyId: string, checkId: string | null, position: string | null): Promise<KeptPhotograph[]> =>
  withOriginals(db).where('photographs.survey_id', '=', surveyId).where('photographs.check_id', 'is', checkId).where('photographs.position', 'is', position).execute()

/** The same picture at the same place of a survey, removed or not. */
export const findSame = (db: ReadableDb, surveyId: string, sha256: string, checkId: string | null, position: string | null): Promise<KeptPhotograph | undefined> =>
  withOriginals(db).where('photographs.survey_id', '=', surveyId).where('photographs.sha256', '=', sha256)
    .where('photographs.check_id', 'is', checkId).where('photographs.position', 'is', position).executeTakeFirst()

export const insertOriginal = async (db: WritableDb, original: Insertable<OriginalTable>): Promise<void> => {
  await db.insertInto('originals').values(original).onConflict((conflict) => conflict.column('sha256').doNothing()).execute()
}

export const insertPhotograph = async (db: WritableDb, photograph: Insertable<PhotographTable>): Promise<void> => {
  await db.insertInto('photographs').values(photograph).execute()
}

type PhotographChange = Omit<Updateable<PhotographTable>, 'id' | 'survey_id' | 'sha256' | 'added_at' | 'source'>

export const changePhotograph = async (db: WritableDb, id: string, change: PhotographChange): Promise<void> => {
  await db.updateTable('photographs').set(change).where('id', '=', id).execute()
}

/** The same change to many. */
export const changePhotographs = async (db: WritableDb, ids: readonly string[], change: PhotographChange): Promise<void> => {
  await db.updateTable('photographs').set(change).where(isOneOf(ids)).execute()
}

/** Puts a survey's photographs into this order; what is not named comes after, as it arrived. */
export const putInOrder = async (db: WritableDb, surveyId: string, ids: readonly string[]): Promise<void> => {
  await db.updateTable('photographs').set({ print_order: null }).where('survey_id', '=', surveyId).where('removed_at', 'is', null).execute()
  await sql`UPDATE photographs SET print_order = wanted.key FROM json_each(${JSON.stringify(ids)}) AS wanted WHERE photographs.id = wanted.value`.execute(db)
}

/** The name a recorded original arrived under, and the hashes of its copies where these are recorded; undefined for a hash that is not. */
export const findOriginal = async (db: ReadableDb, sha256: string): Promise<{ readonly fileName: string; readonly previews: PreviewHashes | undefined } | undefined> => {
  const found = await withOriginals(db).where('photographs.sha256', '=', sha256).orderBy('photographs.added_at').limit(1).executeTakeFirst()
  if (found === undefined) return undefined
  const { file_name: fileName, large_preview_sha256: large, small_preview_sha256: small } = found
  return { fileName, previews: large === null || small === null ? undefined : { large, small } }
}

export const recordedOriginals = async (db: ReadableDb): Promise<Set<string>> =>
  new Set((await db.selectFrom('originals').select('sha256').execute()).map((row) => row.sha256))
