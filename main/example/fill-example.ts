import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { catalogue } from '../../shared-logic/checks/catalogue'
import type { Desk } from '../../shared-logic/contract/contract'
import { refuse } from '../../shared-logic/contract/refusal'
import type { Rig } from '../../shared-logic/rig/rig'
import { spotsIn, type Answer } from '../../shared-logic/survey/answer'
import { askedChecks } from '../../shared-logic/survey/assess'
import { assetsFolder } from '../assets-folder'
import { withMeasurement } from './measured-spots'
import { pictures, picturesBefore } from './pictures'
import { inventedMark, painted, tandemBefore } from './rigs'
import { singleAxleScript, singleAxleStopsBefore, tandemBeforeScript, tandemScript } from './scripts'
import { answerAt, type Script } from './walk'

const surveyor = { surveyorName: 'Invented Surveyor (example)', surveyorAddress: '3 Example Street, Nowhere Harbor', surveyorContact: 'nobody@example.invalid' }

/** How each step is taken back, the last first. */
type Undo = (() => Promise<unknown>)[]

const saveRig = async (desk: Desk, rig: Script['rig'], undo: Undo): Promise<string> => {
  const { id: rigId } = await desk['rigs.save']({ rig })
  undo.push(() => desk['rigs.remove']({ rigId }))
  return rigId
}

const start = async (desk: Desk, rigId: string, { ruleBook, purpose, surveyDate }: Script, place: string, undo: Undo): Promise<string> => {
  const { id: surveyId } = await desk['surveys.start']({ rigId, purpose, surveyDate, ruleBook, place: `${place}. ${inventedMark}` })
  undo.push(() => desk['surveys.discard']({ surveyId }))
  return surveyId
}

/** Hashes of a survey's pictures by file. */
type Hashes = ReadonlyMap<string, string>

/** An answer with its spots measured on the pictures that the yard holds. */
const onPictures = (answer: Answer, hashes: Hashes): Answer => {
  const spots = spotsIn(answer.values['spots'])
  const sha256Of = (file: string): string => hashes.get(file) ?? refuse('photograph.not-found')
  return spots === undefined ? answer : { ...answer, values: { ...answer.values, spots: spots.map((spot) => withMeasurement(spot, sha256Of)) } }
}

/** Answers in walking order, up to the station named, and stands there. */
const walk = async (desk: Desk, surveyId: string, script: Script, hashes: Hashes = new Map(), stopBefore?: string): Promise<void> => {
  for (const { check, position } of askedChecks(catalogue, script)) {
    const here = { checkId: check.id, position }
    if (check.station === stopBefore) {
      await desk['surveys.standAt']({ surveyId, here })
      return
    }
    await desk['surveys.answer']({ surveyId, ...here, answer: onPictures(answerAt(script, check, position), hashes) })
  }
}

const addPictures = async (desk: Desk, surveyId: string, listed: typeof pictures): Promise<Hashes> => {
  const hashes = new Map<string, string>()
  for (const { file, caption, checkId, position, marks } of listed) {
    const bytes = await readFile(join(assetsFolder(), 'example', file))
    const { photograph } = await desk['photographs.add']({ surveyId, checkId, position, fileName: file, caption, source: 'file' }, bytes)
    if (marks !== undefined) await desk['photographs.mark']({ photographId: photograph.id, layer: marks })
    hashes.set(file, photograph.sha256)
  }
  return hashes
}

/** The tandem's two surveys, walked and photographed; then issued one after the other, each with the rig as it was. */
const surveyTandem = async (desk: Desk, undo: Undo): Promise<void> => {
  const rigId = await saveRig(desk, tandemBefore, undo)
  const told = [
    { script: tandemBeforeScript, place: 'Example Ramp, Nowhere Harbor', listed: picturesBefore },
    { script: tandemScript, place: 'Example Landing, Nowhere Harbor', listed: pictures },
  ]
  const walked: { readonly surveyId: string; readonly rig: Rig }[] = []
  for (const { script, place, listed } of told) {
    await desk['rigs.save']({ rigId, rig: script.rig })
    const surveyId = await start(desk, rigId, script, place, undo)
    await walk(desk, surveyId, script, await addPictures(desk, surveyId, listed))
    walked.push({ surveyId, rig: script.rig })
  }
  // Last, for an issued report is never taken back.
  for (const { surveyId, rig } of walked) {
    await desk['rigs.save']({ rigId, rig })
    await desk['reports.issue']({ surveyId, withPlaces: false, isHarmKnown: false })
  }
}

const fill = async (desk: Desk, undo: Undo): Promise<void> => {
  const { settings, saved } = await desk['settings.get']({})
  if (!saved || settings.surveyorName === '') {
    await desk['settings.save']({ settings: { ...settings, ...surveyor } })
    undo.push(() => desk['settings.save']({ settings }))
  }
  await saveRig(desk, painted, undo)
  const { today } = await desk['yard.about']({})
  const underWay = singleAxleScript(today)
  await walk(desk, await start(desk, await saveRig(desk, underWay.rig, undo), underWay, 'Example Lake', undo), underWay, undefined, singleAxleStopsBefore)
  await surveyTandem(desk, undo)
}

/** Takes back every step it can: one that fails leaves the others to be taken back all the same. */
const takeBack = async (undo: Undo): Promise<void> => {
  for (const step of undo.toReversed()) await step().catch(() => undefined)
}

/**
 * Fills an empty yard with the example, going through the desk like anybody: three invented rigs, one surveyed twice and
 * reported, one with its survey under way, one with none. The surveyor's name is entered only where none was saved.
 * When a step fails, what was added is taken back and the failure told: the yard is empty again and the example can be opened anew.
 */
export const fillExample = async (desk: Desk): Promise<void> => {
  const undo: Undo = []
  try {
    await fill(desk, undo)
  } catch (failure) {
    await takeBack(undo)
    throw failure
  }
}
