import { refuse } from '../../shared-logic/contract/refusal'
import type { Rig } from '../../shared-logic/rig/rig'
import type { RigRow } from '../../shared-logic/survey/records'
import type { ReadableDb, WritableDb } from '../store/database'
import { findRig, insertRig, listRigs, removeRig, updateRig } from '../store/rigs'
import { underWayOfRig } from '../store/surveys'
import type { Parts, Procedures } from './parts'
import { followRig } from './under-way'

export const needRig = async (db: ReadableDb, rigId: string): Promise<RigRow> => (await findRig(db, rigId)) ?? refuse('rig.not-found')

const change = async (db: WritableDb, rigId: string, rig: Rig, at: string): Promise<void> => {
  await needRig(db, rigId)
  await updateRig(db, rigId, rig, at)
  for (const survey of await underWayOfRig(db, rigId)) await followRig(db, survey, rig)
}

export const rigProcedures = ({ yard, clock, newId }: Parts): Procedures<'rigs'> => ({
  'rigs.list': (page) => yard.read((db) => listRigs(db, page)),
  'rigs.get': ({ rigId }) => yard.read((db) => needRig(db, rigId)),
  'rigs.save': ({ rigId, rig }) =>
    yard.write(async (db) => {
      const id = rigId ?? newId()
      if (rigId === undefined) await insertRig(db, id, rig, clock().toISOString())
      else await change(db, id, rig, clock().toISOString())
      return needRig(db, id)
    }),
  'rigs.remove': ({ rigId }) =>
    yard.write(async (db) => {
      await needRig(db, rigId)
      if ((await underWayOfRig(db, rigId)).length > 0) refuse('rig.survey-under-way')
      await removeRig(db, rigId, clock().toISOString())
      return {}
    }),
})
