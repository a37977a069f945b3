import type { ParsedInputOf } from '../../shared-logic/contract/contract'
import { refuse } from '../../shared-logic/contract/refusal'
import type { Photograph } from '../../shared-logic/survey/records'
import { plainFileName } from '../photos/file-name'
import type { Original } from '../photos/shelf'
import type { ReadableDb, WritableDb } from '../store/database'
import { asPhotograph, changePhotograph, findSame, insertOriginal, insertPhotograph } from '../store/photographs'
import { enterAdded, enterChanges, enterCopies } from '../store/photograph-log'
import { yardRig } from '../store/rigs'
import { changeSurvey } from '../store/surveys'
import type { Parts, Procedures } from './parts'
import { assign, changeOne, choose, mark, needPhotograph, order, putAway, turnAll } from './photograph-acts'
import { needAsked, needUnderWay } from './under-way'

type AddInput = ParsedInputOf<'photographs.add'>

/** Refused before the file is worked on: a survey that takes no photographs, a place it does not ask about. */
const needPlace = async (db: ReadableDb, { surveyId, checkId, position }: AddInput): Promise<void> => {
  const survey = await needUnderWay(db, surveyId)
  if (checkId === undefined && position === undefined) return
  if (checkId === undefined) return refuse('field.missing', undefined, 'checkId')
  if (position === undefined) return refuse('field.missing', undefined, 'position')
  needAsked(await yardRig(db, survey.rig_id), survey, checkId, position)
}

/** An original the yard has already keeps what it was recorded with, but for its copies, which may just have been made anew. */
const recordOriginal = async (db: WritableDb, original: Original, at: string): Promise<void> => {
  const { large, small } = original.previews
  await insertOriginal(db, {
    sha256: original.sha256, format: original.format, byte_count: original.byteCount, width_px: original.widthPx, height_px: original.heightPx,
    taken_at: original.takenAt ?? null, latitude: original.latitude ?? null, longitude: original.longitude ?? null,
    quality_json: original.quality === undefined ? null : JSON.stringify(original.quality), look_hash: original.lookHash ?? null,
    large_preview_sha256: large, small_preview_sha256: small, added_at: at,
  })
  await enterCopies(db, original.sha256, original.previews, at)
}

/** One picture stands once at one place of a survey; one that was removed comes back. */
const record = async (db: WritableDb, input: AddInput, original: Original, id: string, at: string): Promise<{ photograph: Photograph; alreadyThere: boolean }> => {
  const { surveyId, checkId = null, position = null } = input
  await needPlace(db, input)
  await recordOriginal(db, original, at)
  const same = await findSame(db, surveyId, original.sha256, checkId, position)
  if (same && same.removed_at === null) return { photograph: asPhotograph(same), alreadyThere: true }
  if (same) await enterChanges(db, surveyId, [same.id], at, () => changePhotograph(db, same.id, { removed_at: null, caption: input.caption ?? same.caption }))
  else {
    await insertPhotograph(db, {
      id, survey_id: surveyId, sha256: original.sha256, check_id: checkId, position, caption: input.caption ?? '',
      file_name: plainFileName(input.fileName), source: input.source, quarter_turns: 0, is_printed: 1, print_order: null, marks_json: null, added_at: at, removed_at: null,
    })
    await enterAdded(db, surveyId, id, at)
  }
  await changeSurvey(db, surveyId, {})
  return { photograph: asPhotograph(await needPhotograph(db, same?.id ?? id)), alreadyThere: false }
}

export const photographProcedures = ({ yard, shelf, missingPhotographs, clock, newId }: Parts): Procedures<'photographs'> => {
  const now = (): string => clock().toISOString()
  return {
    /** The file is safe on the shelf before a row names it: a crash between leaves a file without a row, which the sweep clears away. */
    'photographs.add': async (input, bytes) => {
      if (bytes === undefined) return refuse('photograph.empty', { name: plainFileName(input.fileName) })
      await yard.read((db) => needPlace(db, input))
      const original = await shelf.take(bytes, input.fileName)
      return yard.write((db) => record(db, input, original, newId(), now()))
    },
    'photographs.describe': ({ photographId, caption }) => yard.write(async (db) => ({ photograph: await changeOne(db, photographId, { caption }, now()) })),
    'photographs.missing': async () => ({ missing: [...(await missingPhotographs())] }),
    'photographs.remove': ({ photographId }) =>
      yard.write(async (db) => {
        const at = now()
        await changeOne(db, photographId, { removed_at: at }, at)
        return {}
      }),
    'photographs.restore': ({ photographId }) => yard.write(async (db) => ({ photograph: await changeOne(db, photographId, { removed_at: null }, now()) })),
    'photographs.mark': (input) => yard.write(async (db) => ({ photograph: await mark(db, input, now()) })),
    'photographs.turn': ({ photographId, quarterTurns }) => yard.write(async (db) => ({ photograph: await changeOne(db, photographId, { quarter_turns: quarterTurns }, now()) })),
    'photographs.turnAll': (input) => yard.write((db) => turnAll(db, input, now())),
    'photographs.removeAll': ({ photographIds }) =>
      yard.write(async (db) => {
        const at = now()
        await putAway(db, photographIds, at, at)
        return {}
      }),
    'photographs.restoreAll': ({ photographIds }) => yard.write((db) => putAway(db, photographIds, null, now())),
    'photographs.assign': (input) => yard.write((db) => assign(db, input, now())),
    'photographs.choose': (input) => yard.write((db) => choose(db, input, now())),
    'photographs.order': (input) => yard.write((db) => order(db, input, now())),
  }
}
