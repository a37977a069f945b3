import { mkdtemp, rm } from 'node:fs/promises'
import { networkInterfaces, tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { networkAddresses } from '../../main/phone/network'
import { contract, type ProcedureName } from '../../shared-logic/contract/contract'
import { deskChannel, replySchema, type Reply } from '../../shared-logic/contract/reply'
import { phoneStateSchema } from '../../shared-logic/phone/phone-state'
import { plainRig } from '../main/host/running-host'
import { hasWindow, leave, startShell, type StandIn } from './start-shell'

let folder: string
let standIn: StandIn
let surveyId: string
const call = async (name: ProcedureName, input: unknown): Promise<Reply> =>
  replySchema.parse(await standIn.record.handlers.get(deskChannel)?.({ senderFrame: { url: 'app://bunkwright/', parent: null } }, name, input))
/** What it answered; a refusal fails the test. */
const valueOf = async (name: ProcedureName, input: unknown): Promise<unknown> => {
  const reply = await call(name, input)
  return reply.ok ? reply.value : expect.fail(JSON.stringify(reply.refusal))
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bunkwright-shell-phone-'))
  standIn = await startShell(join(folder, 'yard'), hasWindow)
  const { id: rigId } = contract['rigs.save'].output.parse(await valueOf('rigs.save', { rig: plainRig('A rig') }))
  const { today } = contract['yard.about'].output.parse(await valueOf('yard.about', {}))
  surveyId = contract['surveys.start'].output.parse(await valueOf('surveys.start', { rigId, purpose: 'sale', surveyDate: today, ruleBook: 'us' })).id
})
afterAll(() => rm(folder, { recursive: true, force: true }))

const [likeliest] = networkAddresses(networkInterfaces())

it.runIf(likeliest === undefined)('the desktop program on a machine that is on no local network says so', async () => {
  expect(await call('phone.open', { surveyId })).toMatchObject({ ok: false, refusal: { code: 'phone.no-network' } })
})

it.runIf(likeliest !== undefined)('the desktop program opens its door on the local network, with and without encryption, and closes it when it is left', async () => {
  const secure = phoneStateSchema.parse(await valueOf('phone.open', { surveyId, isSecure: true }))
  expect(secure.certificateFingerprint).toMatch(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/)
  const open = phoneStateSchema.parse(await valueOf('phone.open', { surveyId }))
  expect(new URL(open.address).hostname.replaceAll(/[[\]]/g, '')).toBe(likeliest?.address)
  const page = await fetch(open.address)
  expect(page.status).toBe(200)
  expect(await page.text()).toMatch(/<script type="module"[^>]* src="\.\/assets\/phone-/)
  await leave(standIn)
  await expect(fetch(open.address)).rejects.toMatchObject({ cause: { code: 'ECONNREFUSED' } })
})
