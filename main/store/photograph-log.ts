import { hash } from 'node:crypto'
import { sql } from 'kysely'
import { actBetween, addedAct, type RecordedPhotograph } from '../../shared-logic/proof/acts'
import { orderHash, writeEntries, type Act, type RecordEnd, type Sha256 } from '../../shared-logic/proof/entry'
import type { FoundEntry } from '../../shared-logic/proof/read-record'
import type { ReadableDb, WritableDb } from './database'
import { isOneOf } from './photographs'

/** Lower-case hex of a text's UTF-8 bytes. */
export const sha256Of: Sha256 = (text) => hash('sha256', text)

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

const enter = async (db: WritableDb, surveyId: string, acts: readonly Act[], at: string): Promise<void> => {
  if (acts.length === 0) return
  const entries = JSON.stringify(writeEntries(surveyId, await endToFollow(db, surveyId), acts, at, sha256Of))
  await sql`INSERT INTO photograph_log (survey_id, place, entry_json, sha256)
    SELECT ${surveyId}, value ->> 'place', value ->> 'text', value ->> 'sha256' FROM json_each(${entries}) ORDER BY key`.execute(db)
}

const recordedById = async (db: ReadableDb, ids: readonly string[]): Promise<Map<string, RecordedPhotograph>> =>
  new Map((await rows(db).where(isOneOf(ids)).execute()).map((row) => [row.id, asRecorded(row)]))

/** Enters a photograph that has just come in; in the transaction that brings it. `at` is a UTC instant, as everywhere here. */
export const enterAdded = async (db: WritableDb, surveyId: string, photographId: string, at: string): Promise<void> =>
  enter(db, surveyId, [...(await recordedById(db, [photographId])).values()].map(addedAct), at)

/** Makes a change to photographs of one survey and enters what it did to each of them. */
export const enterChanges = async (db: WritableDb, surveyId: string, ids: readonly string[], at: string, change: () => Promise<void>): Promise<void> => {
  const before = await recordedById(db, ids)
  await change()
  const after = await recordedById(db, ids)
  await enter(db, surveyId, [...before].flatMap(([id, was]) => {
    const is = after.get(id)
    return (is && actBetween(was, is)) ?? []
  }), at)
}

/** Enters the order a survey's photographs have just been put into. */
export const enterOrder = async (db: WritableDb, surveyId: string, at: string): Promise<void> =>
  enter(db, surveyId, [{ what: 'put in order', orderSha256: await orderToRecord(db, surveyId) }], at)

/** Bytes of an entry as text, exactly; undefined where they are none. */
const exactText = (bytes: Uint8Array | null): string | undefined => {
  try {
    return bytes === null ? undefined : new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch {
    return undefined
  }
}

/** The record of a survey as it lies in the file, by place. Entries are read as bytes: a text that only reads alike is another. */
export const foundEntries = async (db: ReadableDb, surveyId: string): Promise<FoundEntry[]> =>
  (await db.selectFrom('photograph_log').select(['place', 'sha256', sql<Uint8Array | null>`CAST(entry_json AS BLOB)`.as('bytes')]).where('survey_id', '=', surveyId).orderBy('place').execute())
    .map(({ place, sha256, bytes }) => ({ place, sha256, text: exactText(bytes) }))
