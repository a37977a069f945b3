import { Refusal } from '../../shared-logic/contract/refusal'
import { newestGoodBackup } from './backups'

/** The refusal for a yard that cannot be read: names the newest good backup, which can be opened instead. */
export const damagedRefusal = (folder: string, code: 'yard.damaged' | 'yard.missing' = 'yard.damaged'): Refusal => {
  const backup = newestGoodBackup(folder)
  return backup === undefined
    ? new Refusal({ code: `${code}-no-backup`, values: { folder } })
    : new Refusal({ code, values: { folder, backup: backup.name, date: backup.date } })
}
