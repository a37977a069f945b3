import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import type { RecordEnd } from '../../shared-logic/proof/entry'
import type { Problem, Verified } from '../../shared-logic/proof/problem'
import { strangersAmongOriginals, type OriginalFound } from '../photos/shelf-files'
import { listBackups } from '../store/backups'
import { recordedPdfs } from '../store/reports'
import { bytesToProve, originalsToProve, type NamedSurvey } from '../store/to-prove'
import type { KnownCopies } from './look-at-copies'
import { reportFolder } from './report-files'
import { verifyList } from './verify-list'
import { verifySurvey, type VerifyOptions, type YardToVerify } from './verify-survey'

export interface VerifiedYard {
  readonly surveys: readonly { readonly survey: NamedSurvey; readonly verified: Verified }[]
  /** What belongs to no survey. */
  readonly problems: readonly Problem[]
  /** Where the yard's list of surveys ends; undefined while no survey was begun. */
  readonly listEnd: RecordEnd | undefined
  /** Whether earlier states of the yard's file are kept. */
  readonly hasBackups: boolean
}

export interface VerifyYardOptions extends Omit<VerifyOptions, 'known' | 'knownCopies' | 'list'> {
  /** How long a photograph or report that is just being taken in may lie on the disk before its row is written. */
  readonly underWayMs?: number
}

const strangeReports = async (folder: string, recorded: ReadonlySet<string>): Promise<string[]> => {
  const names = await readdir(reportFolder(folder)).catch(() => [])
  return names.filter((name) => name.endsWith('.pdf') && !name.includes('.part') && !recorded.has(name.slice(0, -'.pdf'.length))).toSorted()
}

/** Files that neither a row nor, where its row is gone, a record names. */
const strangers = async ({ read, folder }: YardToVerify, recorded: ReadonlySet<string>): Promise<{ originals: string[]; reports: string[] }> => {
  const { formats, pdfs } = await read(async (db) => ({ formats: (await originalsToProve(db)).formats, pdfs: await recordedPdfs(db) }))
  const hashIn = (file: string): string => /([0-9a-f]{64})\.\w+$/.exec(file)?.[1] ?? ''
  const originals = (await strangersAmongOriginals(join(folder, 'photographs'), formats)).filter((file) => formats.has(hashIn(file)) || !recorded.has(hashIn(file)))
  return { originals, reports: await strangeReports(folder, pdfs) }
}

/** Files no row names. A yard may be at work beside: what its rows name a moment later was no stranger. */
const settledStrangers = async (yard: YardToVerify, recorded: ReadonlySet<string>, underWayMs: number): Promise<Problem[]> => {
  let found = await strangers(yard, recorded)
  if (found.originals.length + found.reports.length > 0) {
    await wait(underWayMs)
    const still = await strangers(yard, recorded)
    found = { originals: found.originals.filter((file) => still.originals.includes(file)), reports: found.reports.filter((file) => still.reports.includes(file)) }
  }
  return [
    ...found.originals.map((file): Problem => ({ code: 'file-added', values: { file: `photographs/originals/${file}` } })),
    ...found.reports.map((file): Problem => ({ code: 'report-added', values: { file: `reports/${file}` } })),
  ]
}

/** Works everything of a yard out again, survey by survey, each original once; and looks for what belongs to none. */
export const verifyYard = async (yard: YardToVerify, { underWayMs = 2_000, onTotal, ...options }: VerifyYardOptions = {}): Promise<VerifiedYard> => {
  const { list, named } = await verifyList(yard, options.signal)
  onTotal?.(await yard.read(bytesToProve))
  const known = new Map<string, OriginalFound>()
  const knownCopies: KnownCopies = new Map()
  const surveys: { survey: NamedSurvey; verified: Verified }[] = []
  const toProve = named.filter(({ id, hasEvidence }) => hasEvidence || list.endsOf(id).length > 0 || list.problemsOf(id).length > 0)
  for (const survey of toProve) surveys.push({ survey, verified: await verifySurvey(yard, survey.id, { ...options, known, knownCopies, list }) })
  const { withoutPhotograph } = await yard.read(originalsToProve)
  const problems: Problem[] = [
    ...list.problems,
    ...(withoutPhotograph.length === 0 ? [] : [{ code: 'original-without-photograph' as const, values: { count: withoutPhotograph.length, hashes: withoutPhotograph.join(' ') } }]),
  ]
  const recorded = new Set([...known].filter(([, { is }]) => is === 'as recorded').map(([key]) => key.slice(0, 64)))
  return { surveys, problems: [...problems, ...(await settledStrangers(yard, recorded, underWayMs))], listEnd: list.end, hasBackups: listBackups(yard.folder).length > 0 }
}
