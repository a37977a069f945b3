import { defaultSettings, settingsSchema, type Settings } from '../../shared-logic/survey/settings'
import type { ReadableDb, WritableDb } from './database'

/** The kept settings, or the defaults while none were saved. */
export const readSettings = async (db: ReadableDb): Promise<{ readonly settings: Settings; readonly saved: boolean }> => {
  const row = await db.selectFrom('settings').select('settings_json').where('only', '=', 1).executeTakeFirst()
  return row === undefined ? { settings: defaultSettings, saved: false } : { settings: settingsSchema.parse(JSON.parse(row.settings_json)), saved: true }
}

export const keepSettings = async (db: WritableDb, settings: Settings, at: string): Promise<void> => {
  const kept = { settings_json: JSON.stringify(settings), saved_at: at }
  await db.insertInto('settings').values({ only: 1, ...kept }).onConflict((conflict) => conflict.column('only').doUpdateSet(kept)).execute()
}
