import { keepSettings, readSettings } from '../store/settings'
import type { Parts, Procedures } from './parts'

export const settingsProcedures = ({ yard, clock }: Parts): Procedures<'settings'> => ({
  'settings.get': () => yard.read(readSettings),
  'settings.save': ({ settings }) =>
    yard.write(async (db) => {
      await keepSettings(db, settings, clock().toISOString())
      return { settings }
    }),
})
