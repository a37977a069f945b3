import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { v7 } from 'uuid'
import { afterAll } from 'vitest'
import type { ReportDocument } from '../../../shared-logic/report/document'
import type { Rig } from '../../../shared-logic/rig/rig'
import { openDesk, type OpenedDesk, type OpenOptions } from '../../../main/desk/open'

const made: string[] = []

/** A folder of its own for one test; cleared away when the file is done. */
export const newFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'yard-'))
  made.push(folder)
  return folder
}
afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true })
})

export const tandem: Rig = {
  name: 'Tandem of the north slip',
  owner: { name: 'Odile Varga', contact: '+00 555 0101' },
  trailer: {
    axleCount: 2, frame: 'galvanized steel', supports: 'bunks', hubLubrication: 'oil bath', brakes: 'surge', brakeForm: 'disc', brakedAxleCount: 2,
    identificationNumber: '1M8GDM9AXKP042788', massKg: 900, maximumMassKg: 3200, spareWheel: true,
  },
  boat: { name: 'Élan', hullIdentificationNumber: 'ABC12345D404', dryMassKg: 1800 },
}

export const noon = new Date('2026-06-15T12:00:00Z')
export const options: OpenOptions = { clock: () => noon, newId: v7, zone: 'Europe/Lisbon', version: '0.1.0' }

export const open = (folder: string, more: OpenOptions = {}): Promise<OpenedDesk> => openDesk(folder, { ...options, ...more })

export const sha256 = (text: string | Uint8Array): string => createHash('sha256').update(text).digest('hex')

/** A report writer that writes the document's own JSON: for tests of what is kept, not of how it looks. */
export const writePlainReport = async (document: ReportDocument, _pictureOf: unknown, filePath: string): Promise<{ sha256: string; byteCount: number }> => {
  const { writeFileSync } = await import('node:fs')
  const text = JSON.stringify(document)
  writeFileSync(filePath, text)
  return { sha256: sha256(text), byteCount: text.length }
}
