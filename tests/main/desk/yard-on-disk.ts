import { createHash } from 'node:crypto'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { v7 } from 'uuid'
import { afterAll } from 'vitest'
import sharp from 'sharp'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import type { Field } from '../../../shared-logic/checks/check'
import { contract, type InputOf, type OutputOf, type ProcedureName } from '../../../shared-logic/contract/contract'
import type { RefusalData } from '../../../shared-logic/contract/refusal'
import { askedChecks } from '../../../shared-logic/survey/assess'
import type { Survey } from '../../../shared-logic/survey/records'
import { en } from '../../../shared-logic/words/en'
import { sayRefusal } from '../../../shared-logic/words/say-refusal'
import { answerCall } from '../../../main/desk/answer-call'
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
  const text = JSON.stringify(document)
  mkdirSync(dirname(filePath), { recursive: true })
  writeFileSync(filePath, text)
  return { sha256: sha256(text), byteCount: Buffer.byteLength(text) }
}

/** One call as a door makes it; the answer is held to the contract's output. Throws when it is refused. */
export const ask = async <Name extends ProcedureName>(opened: OpenedDesk, name: Name, input: InputOf<Name>, bytes?: Uint8Array): Promise<OutputOf<Name>> => {
  const reply = await answerCall(opened.desk, name, input, bytes)
  if (!reply.ok) throw new Error(`${name} was refused: ${JSON.stringify(reply.refusal)}`)
  return contract[name].output.parse(reply.value) as OutputOf<Name>
}

/** What a call is refused with; its sentence is there and has no gap left. */
export const refusalOf = async (opened: OpenedDesk, name: string, input: unknown, bytes?: Uint8Array): Promise<RefusalData & { readonly sentence: string }> => {
  const reply = await answerCall(opened.desk, name, input, bytes)
  if (reply.ok) throw new Error(`${name} was not refused`)
  const sentence = sayRefusal(en, reply.refusal)
  if (en.refusals[reply.refusal.code] === undefined || /[{}]/.test(sentence)) throw new Error(`no whole sentence for ${JSON.stringify(reply.refusal)}: ${sentence}`)
  return { ...reply.refusal, sentence }
}

export const keepTandem = async (opened: OpenedDesk): Promise<string> => (await ask(opened, 'rigs.save', { rig: tandem })).id

export const startSurvey = async (opened: OpenedDesk, rigId?: string): Promise<Survey> =>
  ask(opened, 'surveys.start', { rigId: rigId ?? (await keepTandem(opened)), purpose: 'yearly', surveyDate: '2026-06-15', ruleBook: 'us', place: 'Lisboa' })

export const signAs = (opened: OpenedDesk, surveyorName: string) => ask(opened, 'settings.save', { settings: { surveyorName, units: 'metric' } })

/** The first place of the tandem's walk whose check has a field of this kind. */
export const placeWith = <Kind extends Field['kind']>(kind: Kind): { checkId: string; position: string; field: Extract<Field, { kind: Kind }> } => {
  for (const { check, position } of askedChecks(catalogue, { rig: tandem, ruleBook: 'us', purpose: 'yearly' })) {
    const field = check.fields.find((each): each is Extract<Field, { kind: Kind }> => each.kind === kind)
    if (field) return { checkId: check.id, position, field }
  }
  throw new Error(`no check of the tandem records a ${kind}`)
}

/** A photograph of one colour. */
export const picture = async (red: number): Promise<Uint8Array> =>
  new Uint8Array(await sharp({ create: { width: 48, height: 32, channels: 3, background: { r: red, g: 90, b: 120 } } }).jpeg().toBuffer())
