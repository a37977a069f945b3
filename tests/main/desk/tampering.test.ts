import fc from 'fast-check'
import { beforeAll, expect, test } from 'vitest'
import { openDeskToRead } from '../../../main/desk/open-to-read'
import type { VerifiedYard } from '../../../main/desk/verify-yard'
import type { Problem } from '../../../shared-logic/proof/problem'
import { evenly } from '../../shared-logic/evenly'
import { makeProvenYard, remember, type ProvenYard } from './proven-yard'
import { onRecord } from './attacks/on-record'
import { attacks, disarm, tamper } from './tampering'

let yard: ProvenYard
let bringBack: () => void
beforeAll(async () => {
  yard = await makeProvenYard()
})

const verify = async (): Promise<VerifiedYard> => {
  const opened = openDeskToRead(yard.folder)
  try {
    return await opened.verifyYard({ underWayMs: 0 })
  } finally {
    await opened.close()
  }
}
const problemsOf = ({ surveys, problems }: VerifiedYard): Problem[] => [...surveys.flatMap(({ verified }) => verified.problems), ...problems]

/** Says that the record was altered, or that it and something else differ. */
const accusesTheRecord = (code: string): boolean => /^(record|entry)-|-(in-record|differs?)$|^survey-unknown$/.test(code)

const alterations = 1_000

test('nothing is found on a yard that nobody touched, nor once triggers, checks and references are out of force, nor once it was brought back to the byte', async () => {
  expect(problemsOf(await verify())).toEqual([])
  disarm(yard.folder)
  expect(problemsOf(await verify())).toEqual([])
  bringBack = remember(yard.folder)
  for (const attack of attacks) {
    tamper(yard.folder, attack, [0.3, 0.6, 0.9])
    bringBack()
  }
  const again = await verify()
  expect(problemsOf(again)).toEqual([])
  expect(new Set(again.surveys.map(({ verified }) => verified.photographCount + verified.removedCount))).toEqual(new Set([2, 6]))
})

test(`each of ${alterations} random alterations is found and named: entries, rows, originals, copies, reports, issued surveys, the list of surveys; where the record alone was altered nothing else is accused`, async () => {
  const numRuns = Math.ceil(alterations / attacks.length)
  let found = 0
  for (const attack of attacks)
    await fc.assert(fc.asyncProperty(fc.array(evenly(0, 1), { minLength: 8, maxLength: 8 }), async (draws) => {
      try {
        fc.pre(tamper(yard.folder, attack, draws))
        const codes = problemsOf(await verify()).map(({ code }) => code)
        expect(codes, attack.name).not.toEqual([])
        expect(codes.some((code) => attack.found.includes(code)), `${attack.name}: ${codes.join(', ')}`).toBe(true)
        expect(onRecord.includes(attack) ? codes.filter((code) => !accusesTheRecord(code)) : [], attack.name).toEqual([])
        found += 1
      } finally {
        bringBack()
      }
    }), { numRuns })
  expect(found).toBeGreaterThanOrEqual(alterations)
}, 300_000)
