import { corrosionOf } from '../store/corrosion'
import type { Parts, Procedures } from './parts'
import { needRig } from './rigs'

export const corrosionProcedures = ({ yard }: Parts): Procedures<'corrosion'> => ({
  'corrosion.history': ({ rigId }) =>
    yard.read(async (db) => {
      const { rig } = await needRig(db, rigId)
      return { rig, surveys: await corrosionOf(db, rigId) }
    }),
})
