import { mkdirSync, readdirSync, rmSync } from 'node:fs'
import { open, rename } from 'node:fs/promises'
import { join } from 'node:path'

export const reportFolder = (folder: string): string => join(folder, 'reports')
export const reportFile = (folder: string, sha256: string): string => join(reportFolder(folder), `${sha256}.pdf`)
/** Where a report is written before its hash is known. */
export const unnamedReport = (folder: string, id: string): string => join(reportFolder(folder), `${id}.part.pdf`)

const makeReportFolder = (folder: string): void => void mkdirSync(reportFolder(folder), { recursive: true })

/** Gives a written report the name of its hash, safely on the disk. */
export const nameReport = async (folder: string, from: string, sha256: string): Promise<void> => {
  await rename(from, reportFile(folder, sha256))
  if (process.platform === 'win32') return
  const handle = await open(reportFolder(folder), 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}

/** Clears away reports that were written but never recorded: nobody was told of them. A recorded one is never touched. */
export const sweepReports = (folder: string, recorded: ReadonlySet<string>): void => {
  makeReportFolder(folder)
  for (const name of readdirSync(reportFolder(folder))) {
    const sha256 = /^([0-9a-f]{64})\.pdf$/.exec(name)?.[1]
    const stray = sha256 === undefined ? name.endsWith('.part.pdf') || name.includes('.part.pdf') : !recorded.has(sha256)
    if (stray) rmSync(join(reportFolder(folder), name), { force: true })
  }
}
