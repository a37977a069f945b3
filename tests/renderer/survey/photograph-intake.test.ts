import { describe, expect, it } from 'vitest'
import { takeIn, type Batch } from '../../../renderer/survey/photograph-intake'

const files = (...names: string[]): File[] => names.map((name) => new File(['x'], name, { type: 'image/jpeg' }))
const ignore = () => undefined

describe('a batch of photographs', () => {
  it('refuses an unreadable one by name while the rest goes in', async () => {
    const sent: string[] = []
    const batch = await takeIn({
      files: files('hub.jpg', 'notes.jpg', 'tyre.jpg'),
      send: (file) => {
        if (file.name === 'notes.jpg') return Promise.reject(new Error('not a picture'))
        sent.push(file.name)
        return Promise.resolve()
      },
      signal: new AbortController().signal,
      report: ignore,
    })
    expect(sent).toEqual(['hub.jpg', 'tyre.jpg'])
    expect(batch).toMatchObject({ total: 3, done: 3, taken: 2, state: 'finished' })
    expect(batch.refused.map((each) => each.fileName)).toEqual(['notes.jpg'])
  })

  it('never has more than two on the way at once', async () => {
    let under = 0
    let most = 0
    await takeIn({
      files: files('1', '2', '3', '4', '5', '6', '7'),
      send: async () => {
        under += 1
        most = Math.max(most, under)
        await new Promise((done) => setTimeout(done, 2))
        under -= 1
      },
      signal: new AbortController().signal,
      report: ignore,
    })
    expect(most).toBe(2)
  })

  it('hands over nothing further once cancelled, and keeps what is in', async () => {
    const cancel = new AbortController()
    const sent: string[] = []
    const batch = await takeIn({
      files: files('1', '2', '3', '4', '5', '6'),
      send: async (file) => {
        sent.push(file.name)
        await Promise.resolve()
        if (sent.length === 2) cancel.abort()
      },
      signal: cancel.signal,
      report: ignore,
    })
    expect(sent).toEqual(['1', '2'])
    expect(batch.state).toBe('cancelled')
    expect(batch.taken).toBe(2)
  })

  it('tells of progress after every file', async () => {
    const seen: Batch[] = []
    await takeIn({ files: files('1', '2'), send: () => Promise.resolve(), signal: new AbortController().signal, report: (batch) => seen.push(batch) })
    expect(seen.map((batch) => batch.done)).toEqual([0, 1, 2, 2])
  })
})
