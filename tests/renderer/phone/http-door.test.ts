import { afterEach, expect, it, vi } from 'vitest'
import { NoAnswer, TurnedAway } from '../../../renderer/phone/door'
import { httpDoor } from '../../../renderer/phone/http-door'

afterEach(() => vi.unstubAllGlobals())

const answering = (status: number, body: string, headers: Record<string, string> = {}): unknown =>
  vi.stubGlobal('fetch', () => Promise.resolve(new Response(body, { status, headers })))

/** A network that asks for a sign-in answers everything with a page of its own; a gateway that is out of order, with an error of its own. */
it.each([[200, '<!doctype html><title>Sign in</title>'], [200, '{"pictureIds":"none"}'], [502, 'Bad gateway'], [503, '']])('what is not the door’s is no answer: %i “%s”', async (status, body) => {
  answering(status, body)
  await expect(httpDoor.arrived()).rejects.toBeInstanceOf(NoAnswer)
})

it('a network that fails, or leads to another page, is no answer', async () => {
  const asked: RequestInit[] = []
  vi.stubGlobal('fetch', (_path: string, request: RequestInit) => {
    asked.push(request)
    return Promise.reject(new TypeError('failed'))
  })
  await expect(httpDoor.checks()).rejects.toBeInstanceOf(NoAnswer)
  expect(asked[0]).toMatchObject({ redirect: 'error', cache: 'no-store' })
})

it('a refusal is the door’s, with its code and sentence, busy or for good', async () => {
  answering(503, JSON.stringify({ refusal: { code: 'door.busy' }, sentence: 'Too much at once.' }))
  const busy: unknown = await httpDoor.arrived().catch((error: unknown) => error)
  expect(busy).toBeInstanceOf(TurnedAway)
  expect(busy).toMatchObject({ status: 503, code: 'door.busy', sentence: 'Too much at once.' })
  answering(401, 'no')
  expect(await httpDoor.arrived().catch((error: unknown) => error)).toMatchObject({ status: 401, code: '', sentence: undefined })
})

it('a phone whose clock is wrong still knows when the door closes: the desktop tells its time', async () => {
  const theirs = new Date(Date.now() + 3_600_000)
  answering(200, JSON.stringify({ closesAt: theirs.toISOString(), connectionId: 'a-connection' }), { date: theirs.toUTCString() })
  const { clockAheadMs } = await httpDoor.pair('secret', 'phone')
  expect(Math.abs(clockAheadMs - 3_600_000)).toBeLessThan(2_000)
})
