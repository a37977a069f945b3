/** What backups are called, so that names sort by date: 'yard-2026-11-25T09-21-09Z.sqlite', '…-before-0060.sqlite'. */
const form = /^yard-(\d{4}-\d{2}-\d{2})T(\d{2})-(\d{2})-(\d{2})Z(-before-\d{4})?\.sqlite$/

export interface BackupName {
  readonly name: string
  /** UTC date, ISO. */
  readonly date: string
  readonly beforeMigration: boolean
}

export const backupName = (at: Date, beforeMigration?: number): string => {
  const stamp = `${at.toISOString().slice(0, 19).replaceAll(':', '-')}Z`
  return `yard-${stamp}${beforeMigration === undefined ? '' : `-before-${String(beforeMigration).padStart(4, '0')}`}.sqlite`
}

/** undefined for a file that is no backup. */
export const readBackupName = (name: string): BackupName | undefined => {
  const match = form.exec(name)
  return match ? { name, date: match[1] ?? '', beforeMigration: match[5] !== undefined } : undefined
}
