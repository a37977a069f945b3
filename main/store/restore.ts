import { closeSync, copyFileSync, existsSync, fsyncSync, mkdirSync, openSync, readdirSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { refuse } from '../../shared-logic/contract/refusal'
import { backupFolder, isGoodBackup } from './backups'
import { readBackupName } from './backup-name'
import { lockYard } from './lock'
import { asYardRefusal, openMarker, yardFile } from './yard'

const setAside = (folder: string, at: Date): void => {
  const home = join(folder, 'damaged')
  mkdirSync(home, { recursive: true })
  const stamp = `yard-${at.toISOString().slice(0, 19).replaceAll(':', '-')}Z`
  const aside = join(home, `${stamp}-${readdirSync(home).length}.sqlite`)
  for (const ending of ['', '-wal', '-shm']) {
    const file = `${yardFile(folder)}${ending}`
    if (existsSync(file)) renameSync(file, `${aside}${ending}`)
  }
}

const putInPlace = (backup: string, file: string): void => {
  const part = `${file}.part`
  copyFileSync(backup, part)
  const descriptor = openSync(part, 'r+')
  fsyncSync(descriptor)
  closeSync(descriptor)
  renameSync(part, file)
}

/**
 * Puts a backup in the place of a damaged yard. The damaged file is kept under `damaged/`; photographs newer than the
 * backup are laid aside by the shelf's sweep, not deleted.
 * Refused when the yard is open elsewhere, or the backup is not there or not whole.
 */
export const openBackup = (folder: string, name: string, { clock }: { readonly clock: () => Date }): void => {
  try {
    const backup = join(backupFolder(folder), readBackupName(name)?.name ?? '')
    if (readBackupName(name) === undefined || !isGoodBackup(backup)) refuse('backup.not-good', { name })
    const lock = lockYard(folder)
    try {
      setAside(folder, clock())
      putInPlace(backup, yardFile(folder))
      rmSync(openMarker(folder), { force: true })
    } finally {
      lock.release()
    }
  } catch (error) {
    throw asYardRefusal(error, folder)
  }
}
