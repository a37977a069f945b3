import { QueryClient } from '@tanstack/react-query'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { standAt, stoodAt } from '../../../renderer/survey/stood-at'

const surveyId = '0197b000-0000-7000-8000-000000000001'
const place = (checkId: string) => ({ checkId, position: 'rig' })

/** A desk that answers when told to; `asked` are the checks it heard of, in order. */
const slowDesk = () => {
  const asked: string[] = []
  const waiting: ((ok: boolean) => void)[] = []
  vi.stubGlobal('fetch', (_: string, request: { body: string }) => {
    asked.push(/"checkId":"([^"]+)"/.exec(request.body)?.[1] ?? '')
    return new Promise((resolve, reject) => {
      waiting.push((ok) => { if (ok) resolve({ json: () => Promise.resolve({ ok: true, value: {} }) }); else reject(new Error('no line')) })
    })
  })
  return { asked, answer: (ok = true) => waiting.shift()?.(ok) }
}

afterEach(() => vi.unstubAllGlobals())

describe('where the surveyor stands', () => {
  it('is told to the desk step after step, so that the last one told is the last one taken, also after one that was lost', async () => {
    const desk = slowDesk()
    const client = new QueryClient()
    const first = standAt(client, surveyId, place('papers.registration'))
    const second = standAt(client, surveyId, place('brakes.kind'))
    await vi.waitFor(() => expect(desk.asked).toEqual(['papers.registration']))
    desk.answer(false)
    await expect(first).rejects.toMatchObject({ data: { code: 'door.no-answer' } })
    await vi.waitFor(() => expect(desk.asked).toEqual(['papers.registration', 'brakes.kind']))
    desk.answer()
    await second
  })

  it('is known in the window at once, survey by survey', () => {
    slowDesk()
    const client = new QueryClient()
    standAt(client, surveyId, place('brakes.kind')).catch(() => undefined)
    expect(stoodAt(client, surveyId)).toBe('brakes.kind @ rig')
    expect(stoodAt(client, '0197b000-0000-7000-8000-000000000002')).toBeUndefined()
  })
})
