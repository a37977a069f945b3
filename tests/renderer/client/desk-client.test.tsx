import { afterEach, describe, expect, it, vi } from 'vitest'
import { call } from '../../../renderer/client/desk-client'
import { sentenceOf } from '../../../renderer/client/sentence-of'
import { Refusal } from '../../../shared-logic/contract/refusal'
import { inputHeader } from '../../../shared-logic/contract/reply'
import { en } from '../../../shared-logic/words/en'

const rigId = '0197a000-0000-7000-8000-000000000001'
const surveyId = '0197a000-0000-7000-8000-000000000002'

const answerOverHttp = (answer: unknown) => {
  const request = vi.fn<(address: string, init: RequestInit) => Promise<Response>>(() => Promise.resolve(new Response(JSON.stringify(answer))))
  vi.stubGlobal('fetch', request)
  return request
}
const bridge = (reply: (...asked: unknown[]) => unknown): void => {
  Object.defineProperty(window, 'bunkwright', { value: { call: (...asked: unknown[]) => Promise.resolve(reply(...asked)) }, configurable: true })
}

afterEach(() => {
  vi.unstubAllGlobals()
  Object.defineProperty(window, 'bunkwright', { value: undefined, configurable: true })
})

const refusalOf = async (asking: Promise<unknown>): Promise<Refusal> => {
  const error: unknown = await asking.then(() => undefined, (thrown: unknown) => thrown)
  if (!(error instanceof Refusal)) throw new Error('it was not refused')
  return error
}

describe('the window asks the desk through either door', () => {
  it('posts to the host at an address relative to the page', async () => {
    const request = answerOverHttp({ ok: true, value: { id: rigId } })
    expect(await call('rigs.get', { rigId })).toEqual({ id: rigId })
    expect(request.mock.calls[0]?.[0]).toBe('api/rigs.get')
    expect(request.mock.calls[0]?.[1]).toMatchObject({ method: 'POST', body: JSON.stringify({ rigId }) })
  })

  it('carries a photograph’s bytes as the body and its input in the header', async () => {
    const request = answerOverHttp({ ok: true, value: {} })
    const bytes = new Uint8Array([1, 2, 3])
    await call('photographs.add', { surveyId, fileName: 'Nabe größer.jpg' }, { bytes })
    const init = request.mock.calls[0]?.[1]
    expect(init?.body).toBe(bytes)
    const header = new Headers(init?.headers).get(inputHeader) ?? ''
    expect(JSON.parse(decodeURIComponent(header))).toEqual({ surveyId, fileName: 'Nabe größer.jpg' })
  })

  it('prefers the desktop’s bridge where there is one', async () => {
    const request = answerOverHttp({ ok: true, value: {} })
    const asked: unknown[][] = []
    bridge((...each) => { asked.push(each); return { ok: true, value: { id: rigId } } })
    expect(await call('rigs.get', { rigId })).toEqual({ id: rigId })
    expect(asked).toEqual([['rigs.get', { rigId }, undefined]])
    expect(request).not.toHaveBeenCalled()
  })

  it('turns a refusal into its sentence, with the gaps filled', async () => {
    bridge(() => ({ ok: false, refusal: { code: 'photograph.empty', field: 'fileName', values: { name: 'hub.jpg' } } }))
    const refusal = await refusalOf(call('rigs.get', { rigId }))
    expect(refusal.data).toEqual({ code: 'photograph.empty', field: 'fileName', values: { name: 'hub.jpg' } })
    expect(sentenceOf(en, refusal)).toMatch(/^“hub\.jpg” is empty/)
  })

  it.each([
    ['a desk that is gone', () => { vi.stubGlobal('fetch', () => Promise.reject(new TypeError('failed to fetch'))) }],
    ['an answer that is no reply', () => { answerOverHttp({ hello: 'there' }) }],
    ['an answer that is no JSON', () => { vi.stubGlobal('fetch', () => Promise.resolve(new Response('<html>'))) }],
  ])('%s is said as a sentence', async (_what, arrange) => {
    arrange()
    const refusal = await refusalOf(call('rigs.get', { rigId }))
    expect(refusal.data.code).toBe('door.no-answer')
    expect(sentenceOf(en, refusal)).toMatch(/does not answer/)
  })

  it('gives way to a cancel, which is no refusal', async () => {
    const stop = new AbortController()
    vi.stubGlobal('fetch', (_address: string, init: RequestInit) => new Promise((_done, failed) => { init.signal?.addEventListener('abort', () => failed(new Error('aborted'))) }))
    const asking = call('rigs.get', { rigId }, { signal: stop.signal })
    stop.abort()
    await expect(asking).rejects.toMatchObject({ name: 'AbortError' })
  })
})
