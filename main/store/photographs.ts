import type { Insertable, Selectable, Updateable } from 'kysely'
import { markLayerSchema } from '../../shared-logic/marking/marks'
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

export const changePhotograph = async (db: WritableDb, id: string, change: Omit<Updateable<PhotographTable>, 'id' | 'survey_id' | 'sha256' | 'added_at' | 'source'>): Promise<void> => {
  await db.updateTable('photographs').set(change).where('id', '=', id).execute()
}

/** The name a recorded original arrived under; undefined for a hash that is not recorded. */
export const findOriginalName = async (db: ReadableDb, sha256: string): Promise<string | undefined> =>
  (await db.selectFrom('photographs').select('file_name').where('sha256', '=', sha256).orderBy('added_at').limit(1).executeTakeFirst())?.file_name

export const recordedOriginals = async (db: ReadableDb): Promise<Set<string>> =>
  new Set((await db.selectFrom('originals').select('sha256').execute()).map((row) => row.sha256))
