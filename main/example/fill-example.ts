import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { catalogue } from '../../shared-logic/checks/catalogue'
import type { Desk } from '../../shared-logic/contract/contract'
import { askedChecks } from '../../shared-logic/survey/assess'
import { assetsFolder } from '../assets-folder'
import { pictures } from './pictures'
import { inventedMark, painted } from './rigs'
import { singleAxleScript, singleAxleStopsBefore, tandemScript } from './scripts'
import { answerAt, type Script } from './walk'

const surveyor = { surveyorName: 'Invented Surveyor (example)', surveyorAddress: '3 Example Street, Nowhere Harbor', surveyorContact: 'nobody@example.invalid' }

/** How each step is taken back, the last first. */
type Undo = (() => Promise<unknown>)[]

const saveRig = async (desk: Desk, rig: Script['rig'], undo: Undo): Promise<string> => {
  const { id: rigId } = await desk['rigs.save']({ rig })
  undo.push(() => desk['rigs.remove']({ rigId }))
  return rigId
}

const start = async (desk: Desk, { rig, ruleBook, purpose, surveyDate }: Script, place: string, undo: Undo): Promise<string> => {
  const rigId = await saveRig(desk, rig, undo)
  const { id: surveyId } = await desk['surveys.start']({ rigId, purpose, surveyDate, ruleBook, place: `${place}. ${inventedMark}` })
  undo.push(() => desk['surveys.discard']({ surveyId }))
  return surveyId
}

/** Answers in walking order, up to the station named, and stands there. */
const walk = async (desk: Desk, surveyId: string, script: Script, stopBefore?: string): Promise<void> => {
  for (const { check, position } of askedChecks(catalogue, script)) {
    const here = { checkId: check.id, position }
    if (check.station === stopBefore) {
      await desk['surveys.standAt']({ surveyId, here })
      return
    }
    await desk['surveys.answer']({ surveyId, ...here, answer: answerAt(script, check, position) })
  }
}

const addPictures = async (desk: Desk, surveyId: string): Promise<void> => {
  for (const { file, caption, checkId, position, marks } of pictures) {
    const bytes = await readFile(join(assetsFolder(), 'example', file))
    const { photograph } = await desk['photographs.add']({ surveyId, checkId, position, fileName: file, caption, source: 'file' }, bytes)
    if (marks !== undefined) await desk['photographs.mark']({ photographId: photograph.id, layer: marks })
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
  await walk(desk, await start(desk, underWay, 'Example Lake', undo), underWay, singleAxleStopsBefore)
  const surveyId = await start(desk, tandemScript, 'Example Landing, Nowhere Harbor', undo)
  await walk(desk, surveyId, tandemScript)
  await addPictures(desk, surveyId)
  // Last, for an issued report is never taken back.
  await desk['reports.issue']({ surveyId, withPlaces: false })
}

/** Takes back every step it can: one that fails leaves the others to be taken back all the same. */
const takeBack = async (undo: Undo): Promise<void> => {
  for (const step of undo.toReversed()) await step().catch(() => undefined)
}

/**
 * Fills an empty yard with the example, going through the desk like anybody: three invented rigs, one surveyed and
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
