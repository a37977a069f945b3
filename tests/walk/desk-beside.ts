import type { Rig } from '../../shared-logic/rig/rig'
import type { Survey } from '../../shared-logic/survey/records'
import type { ProgramWindow } from './window'

type Ask = ProgramWindow['ask']

/** A small rig for walks that are about something else than the rig. */
const smallRig: Rig = {
  name: 'Reed skiff',
  trailer: { axleCount: 1, frame: 'galvanized steel', brakes: 'none', hubLubrication: 'oil bath', suspension: 'leaf springs', supports: 'bunks', winch: 'hand, strap', lengthM: 5, widthM: 1.9, ballToAxleM: 3.4 },
  boat: { lengthM: 4.6, beamM: 1.8, engine: 'outboard' },
}

/** A survey begun through the desk, where what is tested is what comes after. */
export const beginSurvey = async (ask: Ask): Promise<Survey> => {
  const { id } = await ask('rigs.save', { rig: smallRig })
  const { today } = await ask('yard.about', {})
  return ask('surveys.start', { rigId: id, purpose: 'before tow', surveyDate: today, ruleBook: 'us' })
}
