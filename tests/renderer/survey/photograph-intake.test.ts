import { describe, expect, it, vi } from 'vitest'
import { lanesFor, PhotographIntake, type Batch, type SendFile } from '../../../renderer/survey/photograph-intake'
import { Refusal } from '../../../shared-logic/contract/refusal'

const files = (...names: string[]): File[] => names.map((name) => new File(['x'], name, { type: 'image/jpeg' }))

/** An intake, all it told, and the way to wait until nothing is on its way. */
const makeIntake = () => {
  const told: (Batch | undefined)[] = []
  const intake = new PhotographIntake((batch) => told.push(batch), 2)
  const settled = async (): Promise<Batch> => {
    await vi.waitUntil(() => told.at(-1)?.state !== 'running', { timeout: 2_000, interval: 1 })
    const last = told.at(-1)
    if (last === undefined) throw new Error('nothing was told')
    return last
  }
  return { intake, told, settled }
}

const diskFull = new Refusal({ code: 'disk.full' })

describe('a batch of photographs', () => {
  it('leaves one core to the window where there are but two', () => {
    expect([1, 2, 3, 8].map(lanesFor)).toEqual([1, 1, 2, 2])
  })

  it('refuses an unreadable one by name while the rest goes in', async () => {
    const { intake, settled } = makeIntake()
    const sent: string[] = []
    intake.add(files('hub.jpg', 'notes.jpg', 'tyre.jpg'), (file) => {
      if (file.name === 'notes.jpg') return Promise.reject(new Error('not a picture'))
      sent.push(file.name)
      return Promise.resolve()
    })
    const batch = await settled()
    expect(sent).toEqual(['hub.jpg', 'tyre.jpg'])
    expect(batch).toMatchObject({ total: 3, done: 3, taken: 2, state: 'finished' })
    expect(batch.refused.map((each) => each.fileName)).toEqual(['notes.jpg'])
  })

  it('never has more than two on the way at once, whatever joins it', async () => {
    const { intake, settled } = makeIntake()
    let under = 0
    let most = 0
    const send = async (): Promise<void> => {
      under += 1
      most = Math.max(most, under)
      await new Promise((done) => setTimeout(done, 2))
      under -= 1
    }
    intake.add(files('1', '2', '3', '4'), send)
    intake.add(files('5', '6', '7'), send)
    expect(await settled()).toMatchObject({ total: 7, taken: 7 })
    expect(most).toBe(2)
  })

  it('hands over nothing further once cancelled, and keeps what is in', async () => {
    const { intake, settled } = makeIntake()
    const sent: string[] = []
    const letGo: string[] = []
    const send: SendFile = async (file) => {
      sent.push(file.name)
      await Promise.resolve()
      if (sent.length === 2) intake.cancel()
    }
    for (const file of files('1', '2', '3', '4', '5', '6')) intake.add([file], send, () => letGo.push(file.name))
    const batch = await settled()
    expect(sent).toEqual(['1', '2'])
    expect(batch.state).toBe('cancelled')
    expect(batch.taken).toBe(2)
    expect(letGo).toEqual(['3', '4', '5', '6'])
  })

  it('one that breaks off by a cancel is no refusal, and is let go', async () => {
    const { intake, settled } = makeIntake()
    const letGo = vi.fn<() => void>()
    intake.add(files('1'), (_file, signal) => new Promise((_done, fail) => { signal.addEventListener('abort', () => fail(new Error('broken off'))) }), letGo)
    intake.cancel()
    expect(await settled()).toMatchObject({ state: 'cancelled', taken: 0, refused: [] })
    expect(letGo).toHaveBeenCalledOnce()
  })

  it('takes in what is added after a cancel', async () => {
    const { intake, settled } = makeIntake()
    intake.add(files('1', '2', '3'), () => new Promise((done) => { setTimeout(done, 2) }))
    intake.cancel()
    const sent: string[] = []
    intake.add(files('after'), (file, signal) => {
      signal.throwIfAborted()
      sent.push(file.name)
      return Promise.resolve()
    })
    await settled()
    expect(sent).toEqual(['after'])
  })

  it('tells of progress after every file', async () => {
    const { intake, told, settled } = makeIntake()
    intake.add(files('1', '2'), () => Promise.resolve())
    await settled()
    expect(told.map((batch) => batch?.done)).toEqual([0, 1, 2, 2])
  })

  it('keeps a refusal in sight when another photograph comes after it, until it is read', async () => {
    const { intake, told, settled } = makeIntake()
    const letGo = vi.fn<() => void>()
    intake.add(files('first.jpg'), () => Promise.reject(diskFull), letGo)
    await settled()
    intake.add(files('second.jpg'), () => Promise.resolve())
    expect(await settled()).toMatchObject({ total: 1, taken: 1, refused: [{ fileName: 'first.jpg' }] })
    expect(letGo).not.toHaveBeenCalled()
    intake.dismiss()
    expect(told.at(-1)).toBeUndefined()
    expect(letGo).toHaveBeenCalledOnce()
  })

  it('counts on while what went in before is still told of: six pictures one after the other are six', async () => {
    const { intake, settled } = makeIntake()
    for (const name of ['1', '2', '3']) {
      intake.add(files(name), () => Promise.resolve())
      await settled()
    }
    intake.add(files('4', '5', '6'), () => Promise.resolve())
    expect(await settled()).toMatchObject({ total: 3, taken: 3, takenBefore: 3 })
    intake.dismiss()
    intake.add(files('7'), () => Promise.resolve())
    expect(await settled()).toMatchObject({ taken: 1, takenBefore: 0 })
  })

  it('counts anew after what was stopped', async () => {
    const { intake, settled } = makeIntake()
    intake.add(files('1', '2'), () => {
      intake.cancel()
      return Promise.resolve()
    })
    expect((await settled()).state).toBe('cancelled')
    intake.add(files('3'), () => Promise.resolve())
    expect(await settled()).toMatchObject({ total: 1, taken: 1, takenBefore: 0 })
  })

  // The yard's database and the shelf of originals each say so in a code of their own.
  it.each(['disk.full', 'photograph.disk-full', 'photograph.read-only', 'door.no-answer'])('what was refused for the moment (%s) goes in when it is tried again; what is no picture does not', async (code) => {
    const { intake, settled } = makeIntake()
    let isFull = true
    const sent: string[] = []
    intake.add(files('hub.jpg', 'notes.jpg'), (file) => {
      if (file.name === 'notes.jpg') return Promise.reject(new Refusal({ code: 'photograph.not-a-picture' }))
      if (isFull) return Promise.reject(new Refusal({ code }))
      sent.push(file.name)
      return Promise.resolve()
    })
    expect((await settled()).refused).toHaveLength(2)
    isFull = false
    intake.tryAgain()
    expect(await settled()).toMatchObject({ total: 1, taken: 1, refused: [{ fileName: 'notes.jpg' }] })
    expect(sent).toEqual(['hub.jpg'])
  })
})
