import type { ParsedInputOf } from '../../shared-logic/contract/contract'
import { refuse } from '../../shared-logic/contract/refusal'
import type { Photograph } from '../../shared-logic/survey/records'
import type { ReadableDb, WritableDb } from '../store/database'
import { asPhotograph, changePhotograph, findPhotograph, findSame, photographsOf, type KeptPhotograph } from '../store/photographs'
import { yardRig } from '../store/rigs'
import { changeSurvey } from '../store/surveys'
import { needAsked, needUnderWay } from './under-way'

/** What can be done to a photograph that is in: every act changes the row, none the original. */

export const needPhotograph = async (db: ReadableDb, photographId: string): Promise<KeptPhotograph> =>
  (await findPhotograph(db, photographId)) ?? refuse('photograph.not-found')

type Change = Parameters<typeof changePhotograph>[2]

/** Changes one photograph of a survey under way. */
export const changeOne = async (db: WritableDb, photographId: string, to: Change): Promise<Photograph> => {
  const { survey_id } = await needPhotograph(db, photographId)
  await needUnderWay(db, survey_id)
  await changePhotograph(db, photographId, to)
  await changeSurvey(db, survey_id, {})
  return asPhotograph(await needPhotograph(db, photographId))
}

/** Those photographs; refused unless all stand in one survey, which is under way. */
const needTogether = async (db: ReadableDb, photographIds: readonly string[]): Promise<readonly KeptPhotograph[]> => {
  const kept: KeptPhotograph[] = []
  for (const id of photographIds) {
    const photograph = await needPhotograph(db, id)
    if (photograph.removed_at !== null) refuse('photograph.not-found')
    kept.push(photograph)
  }
  const surveys = new Set(kept.map(({ survey_id }) => survey_id))
  if (surveys.size > 1) refuse('photograph.of-two-surveys')
  for (const surveyId of surveys) await needUnderWay(db, surveyId)
  return kept
}

const asTheyStand = async (db: WritableDb, kept: readonly KeptPhotograph[]): Promise<{ photographs: Photograph[] }> => {
  const surveyId = kept[0]?.survey_id
  if (surveyId !== undefined) await changeSurvey(db, surveyId, {})
  const photographs: Photograph[] = []
  for (const { id } of kept) photographs.push(asPhotograph(await needPhotograph(db, id)))
  return { photographs }
}

export const choose = async (db: WritableDb, { photographIds, isPrinted }: ParsedInputOf<'photographs.choose'>): Promise<{ photographs: Photograph[] }> => {
  const kept = await needTogether(db, photographIds)
  for (const { id } of kept) await changePhotograph(db, id, { is_printed: isPrinted ? 1 : 0 })
  return asTheyStand(db, kept)
}

/** A picture stands once at one place: one that is there already is left where it was. One removed from there makes room. */
export const assign = async (db: WritableDb, { photographIds, place }: ParsedInputOf<'photographs.assign'>): Promise<{ photographs: Photograph[] }> => {
  const kept = await needTogether(db, photographIds)
  const surveyId = kept[0]?.survey_id ?? refuse('photograph.not-found')
  const survey = await needUnderWay(db, surveyId)
  if (place !== undefined) needAsked(await yardRig(db, survey.rig_id), survey, place.checkId, place.position)
  const to = { check_id: place?.checkId ?? null, position: place?.position ?? null }
  for (const photograph of kept) {
    const same = await findSame(db, surveyId, photograph.sha256, to.check_id, to.position)
    if (same?.id === photograph.id) continue
    if (same !== undefined && same.removed_at === null) continue
    // The two trade places, so that what was removed can still be had back.
    if (same !== undefined) await changePhotograph(db, same.id, { check_id: `away ${same.id}`, position: 'away' })
    await changePhotograph(db, photograph.id, to)
    if (same !== undefined) await changePhotograph(db, same.id, { check_id: photograph.check_id, position: photograph.position })
  }
  return asTheyStand(db, kept)
}

export const order = async (db: WritableDb, { surveyId, photographIds }: ParsedInputOf<'photographs.order'>): Promise<{ photographs: Photograph[] }> => {
  await needUnderWay(db, surveyId)
  const known = new Set((await photographsOf(db, surveyId)).map(({ id }) => id))
  const isWhole = photographIds.length === known.size && new Set(photographIds).size === known.size && photographIds.every((id) => known.has(id))
  if (!isWhole) refuse('photograph.order-incomplete')
  for (const [index, id] of photographIds.entries()) await changePhotograph(db, id, { print_order: index })
  await changeSurvey(db, surveyId, {})
  return { photographs: await photographsOf(db, surveyId) }
}

/** The layer must lie on this picture: its size is that of the upright original. An empty one takes the layer away. */
export const mark = async (db: WritableDb, { photographId, layer }: ParsedInputOf<'photographs.mark'>): Promise<Photograph> => {
  const { width_px, height_px } = await needPhotograph(db, photographId)
  if (layer.widthPx !== width_px || layer.heightPx !== height_px) refuse('photograph.marks-of-another', { width: width_px, height: height_px }, 'layer')
  return changeOne(db, photographId, { marks_json: layer.marks.length === 0 && layer.scale === undefined ? null : JSON.stringify(layer) })
}
