import { sql } from 'kysely'
import type { PreviewHashes } from '../../shared-logic/photographs/preview-hashes'
import { actBetween, addedAct, type RecordedPhotograph } from '../../shared-logic/proof/acts'
import type { FoundEntry } from '../../shared-logic/proof/chain'
import { orderHash, writeEntries, type Act, type RecordEnd } from '../../shared-logic/proof/entry'
import { exactText, sha256Of } from './chained-text'
import type { ReadableDb, WritableDb } from './database'
import { isOneOf } from './photographs'
import { enterInList } from './survey-list'

const hashOrNone = (text: string | null): string | null => (text === null ? null : sha256Of(text))

const yesOrNo = (value: number): boolean | number => (value === 0 || value === 1 ? value === 1 : value)

const rows = (db: ReadableDb) =>
  db.selectFrom('photographs').innerJoin('originals', 'originals.sha256', 'photographs.sha256').selectAll('originals').selectAll('photographs').select('originals.added_at as first_arrived_at')

type Row = Awaited<ReturnType<ReturnType<typeof rows>['execute']>>[number]

const asRecorded = (row: Row): RecordedPhotograph => ({
  photographId: row.id,
  sha256: row.sha256,
  byteCount: row.byte_count,
  facts: {
    format: row.format, widthPx: row.width_px, heightPx: row.height_px, takenAt: row.taken_at, latitude: row.latitude, longitude: row.longitude,
    qualitySha256: hashOrNone(row.quality_json), lookHash: row.look_hash, firstArrivedAt: row.first_arrived_at, arrivedAt: row.added_at, source: row.source,
    fileName: row.file_name, checkId: row.check_id, position: row.position, caption: row.caption, quarterTurns: row.quarter_turns,
    isPrinted: yesOrNo(row.is_printed), marksSha256: hashOrNone(row.marks_json), removedAt: row.removed_at,
    largePreviewSha256: row.large_preview_sha256, smallPreviewSha256: row.small_preview_sha256,
  },
})

/** A survey's photographs, those removed too, in the words of the record. */
export const photographsToRecord = async (db: ReadableDb, surveyId: string): Promise<RecordedPhotograph[]> =>
  (await rows(db).where('photographs.survey_id', '=', surveyId).orderBy('photographs.added_at').orderBy('photographs.id').execute()).map(asRecorded)

/** Hash of the order a survey's photographs stand in. */
export const orderToRecord = async (db: ReadableDb, surveyId: string): Promise<string> => {
  const ordered = await db.selectFrom('photographs').select(['id', 'print_order']).where('survey_id', '=', surveyId).where('print_order', 'is not', null).execute()
  return orderHash(ordered.flatMap(({ id, print_order }) => (print_order === null ? [] : [{ photographId: id, place: print_order }])), sha256Of)
}

/** Where a survey's record ends by the row kept apart from it. */
export const recordEnd = async (db: ReadableDb, surveyId: string): Promise<RecordEnd | undefined> => {
  const end = await db.selectFrom('photograph_log_ends').select(['entry_count', 'last_sha256']).where('survey_id', '=', surveyId).executeTakeFirst()
  return end && { entryCount: end.entry_count, lastSha256: end.last_sha256 }
}

/** What the next entry follows: whichever reaches further, so that a record that was tampered with can still be added to. */
const endToFollow = async (db: ReadableDb, surveyId: string): Promise<RecordEnd | undefined> => {
  const end = await recordEnd(db, surveyId)
  const last = await db.selectFrom('photograph_log').select(['place', 'sha256']).where('survey_id', '=', surveyId).orderBy('place', 'desc').limit(1).executeTakeFirst()
  return last !== undefined && last.place > (end?.entryCount ?? 0) ? { entryCount: last.place, lastSha256: last.sha256 } : end
}

/** Adds entries to a survey's record. That it was opened by them stands in the yard's list of surveys too. */
export const enter = async (db: WritableDb, surveyId: string, acts: readonly Act[], at: string): Promise<void> => {
  if (acts.length === 0) return
  const before = await endToFollow(db, surveyId)
  const written = writeEntries(surveyId, before, acts, at, sha256Of)
  await sql`INSERT INTO photograph_log (survey_id, place, entry_json, sha256)
    SELECT ${surveyId}, value ->> 'place', value ->> 'text', value ->> 'sha256' FROM json_each(${JSON.stringify(written)}) ORDER BY key`.execute(db)
  const last = written.at(-1)
  if (before === undefined && last !== undefined) await enterInList(db, { what: 'record opened', surveyId, end: { entryCount: last.place, lastSha256: last.sha256 } }, at)
}

const recordedById = async (db: ReadableDb, ids: readonly string[]): Promise<Map<string, RecordedPhotograph>> =>
  new Map((await rows(db).where(isOneOf(ids)).execute()).map((row) => [row.id, asRecorded(row)]))

/** Enters a photograph that has just come in; in the transaction that brings it. `at` is a UTC instant, as everywhere here. */
export const enterAdded = async (db: WritableDb, surveyId: string, photographId: string, at: string): Promise<void> =>
  enter(db, surveyId, [...(await recordedById(db, [photographId])).values()].map(addedAct), at)

/** Makes a change to photographs, and answers by id what it did to them. */
const actsOf = async (db: WritableDb, ids: readonly string[], change: () => Promise<void>): Promise<Map<string, Act>> => {
  const before = await recordedById(db, ids)
  await change()
  const after = await recordedById(db, ids)
  const acts = new Map<string, Act>()
  for (const [id, was] of before) {
    const is = after.get(id)
    const act = is && actBetween(was, is)
    if (act) acts.set(id, act)
  }
  return acts
}

/** Makes a change to photographs of one survey and enters what it did to each of them. */
export const enterChanges = async (db: WritableDb, surveyId: string, ids: readonly string[], at: string, change: () => Promise<void>): Promise<void> =>
  enter(db, surveyId, [...(await actsOf(db, ids, change)).values()], at)

/** Keeps the hashes of the copies just made of an original, and enters them for each of its photographs, of whichever survey. Nothing where they are kept already. */
export const enterCopies = async (db: WritableDb, sha256: string, { large, small }: PreviewHashes, at: string): Promise<void> => {
  const photographs = await db.selectFrom('photographs').select(['id', 'survey_id']).where('sha256', '=', sha256).orderBy('added_at').orderBy('id').execute()
  const acts = await actsOf(db, photographs.map(({ id }) => id), async () => {
    await db.updateTable('originals').set({ large_preview_sha256: large, small_preview_sha256: small }).where('sha256', '=', sha256).execute()
  })
  for (const surveyId of new Set(photographs.map(({ survey_id }) => survey_id)))
    await enter(db, surveyId, photographs.flatMap(({ id, survey_id }) => (survey_id === surveyId ? (acts.get(id) ?? []) : [])), at)
}

/** Enters the order a survey's photographs have just been put into. */
export const enterOrder = async (db: WritableDb, surveyId: string, at: string): Promise<void> =>
  enter(db, surveyId, [{ what: 'put in order', orderSha256: await orderToRecord(db, surveyId) }], at)

/** What the record of a survey says of the copies of each original, by its hash; whoever prints them takes the record's word, not the row's. */
export const recordedCopies = async (db: ReadableDb, surveyId: string): Promise<Map<string, PreviewHashes>> => {
  const told = (path: string) => sql<string | null>`entry_json ->> ${path}`
  const found = await db.selectFrom('photograph_log').where('survey_id', '=', surveyId).where(sql<boolean>`json_valid(entry_json)`).orderBy('place')
    .select([told('$.sha256').as('sha256'), told('$.to.largePreviewSha256').as('large'), told('$.to.smallPreviewSha256').as('small')]).execute()
  const copies = new Map<string, PreviewHashes>()
  for (const { sha256, large, small } of found) {
    if (sha256 === null) continue
    const before = copies.get(sha256)
    const [largeNow, smallNow] = [large ?? before?.large, small ?? before?.small]
    if (largeNow !== undefined && smallNow !== undefined) copies.set(sha256, { large: largeNow, small: smallNow })
  }
  return copies
}

/** The record of a survey as it lies in the file, by place. Entries are read as bytes: a text that only reads alike is another. */
export const foundEntries = async (db: ReadableDb, surveyId: string): Promise<FoundEntry[]> =>
  (await db.selectFrom('photograph_log').select(['place', 'sha256', sql<Uint8Array | null>`CAST(entry_json AS BLOB)`.as('bytes')]).where('survey_id', '=', surveyId).orderBy('place').execute())
    .map(({ place, sha256, bytes }) => ({ place, sha256, text: exactText(bytes) }))
