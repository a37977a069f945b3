import type { ParsedInputOf } from '../../shared-logic/contract/contract'
import { refuse } from '../../shared-logic/contract/refusal'
import { checkLayer } from '../../shared-logic/marking/check-layer'
import type { Photograph } from '../../shared-logic/survey/records'
import type { ReadableDb, WritableDb } from '../store/database'
import {
  asPhotograph, changePhotograph, changePhotographs, findPhotograph, photographsAtPlace, photographsById, photographsOf, putInOrder, type KeptPhotograph,
} from '../store/photographs'
import { enterChanges, enterOrder } from '../store/photograph-log'
import { yardRig } from '../store/rigs'
import { changeSurvey } from '../store/surveys'
import { needAsked, needUnderWay } from './under-way'

/** What can be done to a photograph that is in: every act changes the row and is entered in the survey's record, none touches the original. */

export const needPhotograph = async (db: ReadableDb, photographId: string): Promise<KeptPhotograph> =>
  (await findPhotograph(db, photographId)) ?? refuse('photograph.not-found')

type Change = Parameters<typeof changePhotograph>[2]

/** Changes one photograph of a survey under way. `at` is the act's instant, UTC, here and below. */
export const changeOne = async (db: WritableDb, photographId: string, to: Change, at: string): Promise<Photograph> => {
  const { survey_id } = await needPhotograph(db, photographId)
  await needUnderWay(db, survey_id)
  await enterChanges(db, survey_id, [photographId], at, () => changePhotograph(db, photographId, to))
  await changeSurvey(db, survey_id, {})
  return asPhotograph(await needPhotograph(db, photographId))
}

/** Those photographs, in that order; refused unless all are of one survey, which is under way. */
const needOfOneSurvey = async (db: ReadableDb, photographIds: readonly string[]): Promise<readonly KeptPhotograph[]> => {
  const known = await photographsById(db, photographIds)
  const kept = [...new Set(photographIds)].map((id) => known.get(id) ?? refuse('photograph.not-found'))
  const surveys = new Set(kept.map(({ survey_id }) => survey_id))
  if (surveys.size > 1) refuse('photograph.of-two-surveys')
  for (const surveyId of surveys) await needUnderWay(db, surveyId)
  return kept
}

/** The same, none of them removed. */
const needTogether = async (db: ReadableDb, photographIds: readonly string[]): Promise<readonly KeptPhotograph[]> => {
  const kept = await needOfOneSurvey(db, photographIds)
  if (kept.some(({ removed_at }) => removed_at !== null)) refuse('photograph.not-found')
  return kept
}

/** Counts the change, and answers them as they are now. */
const asTheyStand = async (db: WritableDb, surveyId: string, ids: readonly string[]): Promise<{ photographs: Photograph[] }> => {
  await changeSurvey(db, surveyId, {})
  const now = await photographsById(db, ids)
  return { photographs: ids.flatMap((id) => now.get(id) ?? []).map(asPhotograph) }
}

const surveyOf = (kept: readonly KeptPhotograph[]): string => kept[0]?.survey_id ?? refuse('photograph.not-found')

export const choose = async (db: WritableDb, { photographIds, isPrinted }: ParsedInputOf<'photographs.choose'>, at: string): Promise<{ photographs: Photograph[] }> => {
  const kept = await needTogether(db, photographIds)
  const ids = kept.map(({ id }) => id)
  const surveyId = surveyOf(kept)
  await enterChanges(db, surveyId, ids, at, () => changePhotographs(db, ids, { is_printed: isPrinted ? 1 : 0 }))
  return asTheyStand(db, surveyId, ids)
}

/** Those that are to be turned alike are turned together. */
export const turnAll = async (db: WritableDb, { turns }: ParsedInputOf<'photographs.turnAll'>, at: string): Promise<{ photographs: Photograph[] }> => {
  const wanted = new Map(turns.map(({ photographId, quarterTurns }) => [photographId, quarterTurns]))
  const kept = await needTogether(db, [...wanted.keys()])
  const ids = kept.map(({ id }) => id)
  const surveyId = surveyOf(kept)
  await enterChanges(db, surveyId, ids, at, async () => {
    for (const quarterTurns of new Set(wanted.values())) await changePhotographs(db, ids.filter((id) => wanted.get(id) === quarterTurns), { quarter_turns: quarterTurns })
  })
  return asTheyStand(db, surveyId, ids)
}

/** Takes them out, or with `removedAt` null brings them back; one that is so already stays as it is. */
export const putAway = async (db: WritableDb, photographIds: readonly string[], removedAt: string | null, at: string): Promise<{ photographs: Photograph[] }> => {
  const kept = await needOfOneSurvey(db, photographIds)
  const ids = kept.map(({ id }) => id)
  const surveyId = surveyOf(kept)
  const toChange = kept.filter(({ removed_at }) => (removed_at === null) !== (removedAt === null)).map(({ id }) => id)
  await enterChanges(db, surveyId, toChange, at, () => changePhotographs(db, toChange, { removed_at: removedAt }))
  return asTheyStand(db, surveyId, ids)
}

/** The two trade places, so that what was removed can still be had back. */
const tradePlaces = async (db: WritableDb, photograph: KeptPhotograph, removed: KeptPhotograph): Promise<void> => {
  await changePhotograph(db, removed.id, { check_id: `away ${removed.id}`, position: 'away' })
  await changePhotograph(db, photograph.id, { check_id: removed.check_id, position: removed.position })
  await changePhotograph(db, removed.id, { check_id: photograph.check_id, position: photograph.position })
}

type To = Required<Pick<Change, 'check_id' | 'position'>>

const moveTo = async (db: WritableDb, photographs: readonly KeptPhotograph[], to: To, alreadyThere: readonly KeptPhotograph[]): Promise<void> => {
  const there = new Map(alreadyThere.map((each) => [each.sha256, each]))
  const moved: string[] = []
  for (const photograph of photographs) {
    const same = there.get(photograph.sha256)
    if (same !== undefined && same.removed_at === null) continue
    if (same === undefined) moved.push(photograph.id)
    else await tradePlaces(db, photograph, same)
    there.set(photograph.sha256, photograph)
  }
  await changePhotographs(db, moved, to)
}

/** A picture stands once at one place: one that is there already is left where it was, and so is its twin. One removed from there makes room. */
export const assign = async (db: WritableDb, { photographIds, place }: ParsedInputOf<'photographs.assign'>, at: string): Promise<{ photographs: Photograph[] }> => {
  const kept = await needTogether(db, photographIds)
  const surveyId = surveyOf(kept)
  const survey = await needUnderWay(db, surveyId)
  if (place !== undefined) needAsked(await yardRig(db, survey.rig_id), survey, place.checkId, place.position)
  const to = { check_id: place?.checkId ?? null, position: place?.position ?? null }
  const there = await photographsAtPlace(db, surveyId, to.check_id, to.position)
  const ids = kept.map(({ id }) => id)
  await enterChanges(db, surveyId, [...ids, ...there.map(({ id }) => id)], at, () => moveTo(db, kept, to, there))
  return asTheyStand(db, surveyId, ids)
}

/** What came in meanwhile is not in the list yet: it stays last, as it arrived. */
export const order = async (db: WritableDb, { surveyId, photographIds }: ParsedInputOf<'photographs.order'>, at: string): Promise<{ photographs: Photograph[] }> => {
  await needUnderWay(db, surveyId)
  const known = new Set((await photographsOf(db, surveyId)).map(({ id }) => id))
  if (new Set(photographIds).size !== photographIds.length) refuse('photograph.named-twice')
  if (!photographIds.every((id) => known.has(id))) refuse('photograph.not-found')
  await putInOrder(db, surveyId, photographIds)
  await enterOrder(db, surveyId, at)
  await changeSurvey(db, surveyId, {})
  return { photographs: await photographsOf(db, surveyId) }
}

/** The layer must lie on this picture. An empty one takes the layer away. */
export const mark = async (db: WritableDb, { photographId, layer }: ParsedInputOf<'photographs.mark'>, at: string): Promise<Photograph> => {
  const { width_px, height_px } = await needPhotograph(db, photographId)
  checkLayer(layer, { widthPx: width_px, heightPx: height_px })
  return changeOne(db, photographId, { marks_json: layer.marks.length === 0 && layer.scale === undefined ? null : JSON.stringify(layer) }, at)
}
