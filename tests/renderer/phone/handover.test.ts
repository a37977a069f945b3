import fc from 'fast-check'
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { Handover } from '../../../renderer/phone/handover'
import { memoryShelf, type Shelf } from '../../../renderer/phone/shelf'
import { largestPhotographBytes } from '../../../shared-logic/photographs/limits'
import { pictureIdSchema } from '../../../shared-logic/phone/phone-door'
import { counting, FakeDoor, pictureFile } from './fake-door'

const leftHub = { checkId: 'hubs.oil-level', position: 'axle 1 left', title: 'Oil level, left' }

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

const makeHandover = (door: FakeDoor, shelf: Shelf = memoryShelf(), newId = counting()) => new Handover({ door, shelf, shrink: async () => undefined, newId, phoneName: 'test' })

/** Lets everything under way come to rest, and time pass. */
const pass = (ms = 0): Promise<unknown> => vi.advanceTimersByTimeAsync(ms)

const joined = async (door = new FakeDoor(), shelf: Shelf = memoryShelf(), newId = counting()) => {
  const handover = makeHandover(door, shelf, newId)
  await handover.start('right')
  await pass()
  return { door, shelf, newId, handover }
}

it('a phone with the right secret is let in, hears the checks, and its pictures arrive in order at their check', async () => {
  const { door, handover } = await joined()
  expect(handover.view().link).toEqual({ state: 'open' })
  expect(handover.view().stations).toHaveLength(3)
  await handover.add([pictureFile('one.jpg'), pictureFile('two.jpg')], leftHub)
  await handover.add([pictureFile('three.jpg')], undefined)
  await pass()
  expect(door.kept.map(({ about }) => [about.fileName, about.checkId, about.position])).toEqual([['one.jpg', 'hubs.oil-level', 'axle 1 left'], ['two.jpg', 'hubs.oil-level', 'axle 1 left'], ['three.jpg', undefined, undefined]])
  expect(handover.view().pictures.map(({ state }) => state)).toEqual(['arrived', 'arrived', 'arrived'])
  for (const { about } of door.kept) expect(pictureIdSchema.safeParse(about.pictureId).success).toBe(true)
})

it('a used or wrong secret is refused with the door’s own sentence, and asked no further', async () => {
  const door = new FakeDoor()
  door.secret = undefined
  const { handover } = await joined(door)
  expect(handover.view().link).toEqual({ state: 'not let in', sentence: 'This code has been used.' })
  const asked = door.asked.length
  await pass(600_000)
  handover.wake()
  await pass(600_000)
  expect(door.asked).toHaveLength(asked)
})

it('the same phone reading its own code twice stays let in', async () => {
  const door = new FakeDoor()
  const shelf = memoryShelf()
  const { newId } = await joined(door, shelf)
  const again = makeHandover(door, shelf, newId)
  await again.start('right')
  await pass()
  expect(again.view().link).toEqual({ state: 'open' })
})

it('the code’s address opened again on the paired phone goes on with what waits there, and with what was refused', async () => {
  const { door, shelf, newId, handover } = await joined()
  door.trouble = (request, about) => (request === 'send' && about?.fileName === 'bad.jpg' ? { status: 422, code: 'photograph.damaged' } : undefined)
  await handover.add([pictureFile('first.jpg'), pictureFile('bad.jpg')], leftHub)
  await pass()
  door.trouble = () => 'cut before'
  await handover.add([pictureFile('one.jpg'), pictureFile('two.jpg'), pictureFile('three.jpg')], leftHub)
  await pass()
  door.trouble = () => undefined
  const again = makeHandover(door, shelf, newId)
  await again.start('right')
  await pass()
  expect(door.kept.map(({ text }) => text)).toEqual(['first.jpg', 'one.jpg', 'two.jpg', 'three.jpg'])
  expect(again.view().earlier).toEqual([])
  expect(again.view().pictures.map(({ state }) => state)).toEqual(['arrived', 'refused', 'arrived', 'arrived', 'arrived'])
})

it('and in the same tab, too', async () => {
  const { door, handover } = await joined()
  door.trouble = () => 'cut before'
  await handover.add([pictureFile('one.jpg')], leftHub)
  await pass()
  handover.join('right')
  await pass(60_000)
  expect(handover.view()).toMatchObject({ link: { state: 'silent' }, isPaired: false })
  door.trouble = () => undefined
  await pass(60_000)
  expect(door.kept.map(({ text }) => text)).toEqual(['one.jpg'])
  expect(handover.view().earlier).toEqual([])
})

it('of two tabs in one connection the one that joined last hands over; what the other took in since goes, too', async () => {
  const { door, shelf, newId, handover } = await joined()
  const again = makeHandover(door, shelf, newId)
  await again.start('right')
  await pass()
  await handover.add([pictureFile('behind.jpg')], leftHub)
  await pass()
  expect(handover.view().link).toEqual({ state: 'closed', why: 'elsewhere' })
  expect(door.kept).toEqual([])
  again.wake()
  await pass()
  expect(door.kept.map(({ text }) => text)).toEqual(['behind.jpg'])
})

it('a picture whose file the other tab has put away, since it heard it arrive, is no picture lost', async () => {
  const shelf = memoryShelf()
  const { door, newId, handover } = await joined(new FakeDoor(), shelf)
  door.trouble = (request) => (request === 'send' ? { status: 503, code: 'door.busy' } : undefined)
  await handover.add([pictureFile('one.jpg')], leftHub)
  await pass()
  const again = makeHandover(door, shelf, newId)
  await again.start('right')
  await pass()
  const [picture] = again.view().pictures
  door.same.push(picture?.id ?? '')
  await shelf.dropFile(picture?.id ?? '')
  door.trouble = () => undefined
  await pass(60_000)
  expect(again.view().pictures.map(({ state, why }) => [state, why])).toEqual([['arrived', undefined]])
})

it.each([true, false])('nothing goes to the survey that another tab has connected to since, though no tab can see the other’s storage; asked first: %s', async (isAsked) => {
  const { door, handover } = await joined()
  door.connectionId = 'another-tab-has-paired'
  if (isAsked) handover.wake()
  await handover.add([pictureFile('one.jpg')], leftHub)
  await pass(60_000)
  expect(handover.view().link).toEqual({ state: 'closed', why: 'elsewhere' })
  expect(handover.view().pictures.map(({ state }) => state)).toEqual(['waiting'])
  expect(door.kept).toEqual([])
})

it('a door too busy to let anybody in is asked again', async () => {
  const door = new FakeDoor()
  let isBusy = true
  door.trouble = () => (isBusy ? { status: 503, code: 'door.busy' } : undefined)
  const { handover } = await joined(door)
  expect(handover.view().link).toEqual({ state: 'joining' })
  isBusy = false
  await pass(1_000)
  expect(handover.view().link).toEqual({ state: 'open' })
})

it('the same picture sent twice is one, and said to be there already without the warnings it was given before', async () => {
  const { door, handover } = await joined()
  door.warnings = ['Blurred.']
  await handover.add([pictureFile('one.jpg', 'the hub'), pictureFile('copy.jpg', 'the hub')], leftHub)
  await pass()
  expect(door.kept).toHaveLength(1)
  expect(handover.view().pictures).toMatchObject([{ state: 'arrived', warnings: ['Blurred.'], isAlreadyThere: false }, { state: 'arrived', warnings: [], isAlreadyThere: true }])
})

it('an empty file is told at once and not sent', async () => {
  const { door, handover } = await joined()
  await handover.add([pictureFile('empty.jpg', '')], leftHub)
  await pass()
  expect(handover.view().pictures).toMatchObject([{ state: 'refused', why: 'empty' }])
  expect(door.asked).not.toContain('send')
})

it('a page opened without a code and without a session says that it is not connected', async () => {
  const door = new FakeDoor()
  const handover = makeHandover(door)
  await handover.start(undefined)
  await pass()
  expect(handover.view().link).toEqual({ state: 'no code' })
})

it('a code read while there is no signal lets the phone in once there is', async () => {
  const door = new FakeDoor()
  let isCut = true
  door.trouble = () => (isCut ? 'cut before' : undefined)
  const { handover } = await joined(door)
  expect(handover.view().link).toEqual({ state: 'silent' })
  isCut = false
  await pass(1_000)
  expect(handover.view().link).toEqual({ state: 'open' })
})

it('after a cut the door is asked what arrived before anything is sent again: what arrived unheard is not sent twice', async () => {
  const { door, handover } = await joined()
  let cuts = 1
  door.trouble = (request) => (request === 'send' && cuts-- > 0 ? 'cut after' : undefined)
  await handover.add([pictureFile('one.jpg'), pictureFile('two.jpg')], leftHub)
  await pass(5_000)
  expect(door.kept.map(({ text }) => text)).toEqual(['one.jpg', 'two.jpg'])
  expect(door.doubled).toBe(0)
  expect(handover.view().pictures.map(({ state }) => state)).toEqual(['arrived', 'arrived'])
})

it('what was said of a picture whose reply was cut is heard all the same', async () => {
  const { door, handover } = await joined()
  door.warnings = ['Blurred.']
  door.trouble = (request) => (request === 'send' ? 'cut after' : undefined)
  await handover.add([pictureFile('one.jpg', 'the hub'), pictureFile('copy.jpg', 'the hub')], leftHub)
  await pass(5_000)
  expect(door.doubled).toBe(0)
  expect(handover.view().pictures).toMatchObject([{ state: 'arrived', warnings: ['Blurred.'], isAlreadyThere: false }, { state: 'arrived', isAlreadyThere: true }])
})

it('without signal the pauses grow to half a minute and no further; a network that is back is used at once', async () => {
  const { door, handover } = await joined()
  door.trouble = () => 'cut before'
  await handover.add([pictureFile('one.jpg')], undefined)
  await pass()
  expect(handover.view().link).toEqual({ state: 'silent' })
  const tries: number[] = []
  const since = Date.now()
  const count = (): number => door.asked.length
  for (let seconds = 1, before = count(); seconds <= 150; seconds += 1) {
    await pass(1_000)
    if (count() > before) tries.push((Date.now() - since) / 1_000)
    before = count()
  }
  expect(tries).toEqual([1, 3, 7, 15, 30, 60, 90, 120, 150])
  door.trouble = () => undefined
  handover.wake()
  await pass()
  expect(door.kept).toHaveLength(1)
})

it('survives a reload: what waits is sent by the page that comes after, under the same id', async () => {
  const { door, shelf, newId, handover } = await joined()
  door.trouble = (request) => (request === 'pair' ? undefined : 'cut before')
  await handover.add([pictureFile('one.jpg'), pictureFile('two.jpg')], leftHub)
  await pass()
  const ids = handover.view().pictures.map(({ id }) => id)
  const after = makeHandover(door, shelf, newId)
  door.trouble = () => undefined
  await after.start(undefined)
  await pass()
  expect(door.kept.map(({ about }) => about.pictureId)).toEqual(ids)
  expect(door.kept.map(({ about }) => about.checkId)).toEqual([leftHub.checkId, leftHub.checkId])
})

it('a closed door is told at the next beat; pictures taken after are kept and not sent', async () => {
  const { door, handover } = await joined()
  door.isClosed = true
  handover.beat()
  await pass()
  expect(handover.view().link).toEqual({ state: 'closed', why: 'told', sentence: 'The door is closed.' })
  await handover.add([pictureFile('late.jpg')], leftHub)
  await pass(120_000)
  expect(door.kept).toHaveLength(0)
  expect(handover.view().pictures.map(({ state }) => state)).toEqual(['waiting'])
})

it('a door closed by time is told even when nothing answers', async () => {
  const door = new FakeDoor()
  door.closesAt = new Date(Date.now() + 60_000).toISOString()
  const { handover } = await joined(door)
  door.trouble = () => 'cut before'
  handover.beat()
  await pass(62_000)
  handover.beat()
  expect(handover.view().link).toEqual({ state: 'closed', why: 'time' })
})

it('pictures left from one connection are not sent over the next until the person says so; a check not asked there is left out', async () => {
  const { door, shelf, newId, handover } = await joined()
  door.isClosed = true
  await handover.add([pictureFile('left.jpg')], leftHub)
  await handover.add([pictureFile('right.jpg')], { checkId: 'brakes.pads', position: 'axle 1 left', title: 'Pads' })
  await pass()
  const next = new FakeDoor()
  const after = makeHandover(next, shelf, newId)
  await after.start('right')
  await pass(60_000)
  expect(next.kept).toHaveLength(0)
  expect(after.view().earlier).toHaveLength(2)
  await after.adoptEarlier()
  await pass()
  expect(next.kept.map(({ about }) => [about.fileName, about.checkId])).toEqual([['left.jpg', 'hubs.oil-level'], ['right.jpg', undefined]])
  expect(after.view().earlier).toEqual([])
})

it('a tab left behind sends nothing over the session another tab has made since', async () => {
  const { door, shelf, newId, handover } = await joined()
  const second = new FakeDoor()
  const other = makeHandover(second, shelf, newId)
  await other.start('right')
  await pass()
  await handover.add([pictureFile('behind.jpg')], leftHub)
  await pass()
  expect(handover.view().link).toEqual({ state: 'closed', why: 'elsewhere' })
  expect(door.kept).toEqual([])
})

it('a picture that is refused says why and the rest goes on; it can be sent again', async () => {
  const { door, handover } = await joined()
  let isBad = true
  door.trouble = (request, about) => (request === 'send' && about?.fileName === 'bad.jpg' && isBad ? { status: 422, code: 'photograph.damaged' } : undefined)
  await handover.add([pictureFile('good.jpg'), pictureFile('bad.jpg'), pictureFile('better.jpg')], leftHub)
  await pass()
  expect(door.kept.map(({ text }) => text)).toEqual(['good.jpg', 'better.jpg'])
  const bad = handover.view().pictures[1]
  expect(bad).toMatchObject({ state: 'refused', sentence: 'Because of photograph.damaged.' })
  isBad = false
  await handover.sendAgain(bad?.id ?? '')
  await pass()
  expect(door.kept.map(({ text }) => text)).toEqual(['good.jpg', 'better.jpg', 'bad.jpg'])
})

it('a full disk on the desktop refuses nothing for good: it is said, and tried until there is room', async () => {
  const { door, handover } = await joined()
  let isFull = true
  door.trouble = (request) => (request === 'send' && isFull ? { status: 422, code: 'photograph.disk-full' } : undefined)
  await handover.add([pictureFile('one.jpg')], leftHub)
  await pass(20_000)
  expect(handover.view().putOff).toBe('Because of photograph.disk-full.')
  expect(handover.view().pictures[0]?.state).toBe('waiting')
  isFull = false
  await pass(31_000)
  expect(door.kept).toHaveLength(1)
  expect(handover.view().putOff).toBeUndefined()
})

it('a picture that breaks off each time while others go through holds none of them up, and is given up after five times', async () => {
  const { door, handover } = await joined()
  door.trouble = (request, about) => (request === 'send' && about?.fileName === 'odd.jpg' ? 'cut before' : undefined)
  await handover.add([pictureFile('odd.jpg'), pictureFile('one.jpg'), pictureFile('two.jpg')], leftHub)
  await pass(0)
  expect(door.kept.map(({ text }) => text)).toEqual(['one.jpg', 'two.jpg'])
  await pass(120_000)
  expect(handover.view().pictures[0]).toMatchObject({ state: 'refused', why: 'broke off', tries: 5 })
})

it('where the line carries no picture at all none is given up: each goes once it does', async () => {
  const { door, handover } = await joined()
  door.trouble = (request) => (request === 'send' ? 'cut before' : undefined)
  await handover.add([pictureFile('one.jpg'), pictureFile('two.jpg')], leftHub)
  await pass(600_000)
  expect(handover.view().pictures.map(({ state }) => state)).toEqual(['waiting', 'waiting'])
  expect(handover.view().pictures.every(({ tries }) => tries > 5)).toBe(true)
  door.trouble = () => undefined
  await pass(31_000)
  expect(door.kept.map(({ text }) => text).toSorted()).toEqual(['one.jpg', 'two.jpg'])
})

it('a picture larger than the desktop takes is told at once and not sent', async () => {
  const { door, handover } = await joined()
  const large = pictureFile('large.jpg')
  Object.defineProperty(large, 'size', { value: largestPhotographBytes + 1 })
  await handover.add([large], leftHub)
  await pass()
  expect(handover.view().pictures[0]).toMatchObject({ state: 'refused', why: 'too large' })
  expect(door.asked).not.toContain('send')
})

it('a phone that is full keeps the picture in the page, says so, and sends it all the same', async () => {
  const shelf: Shelf = { ...memoryShelf(), isLasting: true, add: () => Promise.reject(new DOMException('full', 'QuotaExceededError')) }
  const { door, handover } = await joined(new FakeDoor(), shelf)
  door.trouble = () => 'cut before'
  await handover.add([pictureFile('one.jpg')], leftHub)
  await pass()
  expect(handover.view().pictures[0]).toMatchObject({ state: 'waiting', isOnlyHere: true })
  door.trouble = () => undefined
  handover.wake()
  await pass()
  expect(door.kept.map(({ text }) => text)).toEqual(['one.jpg'])
})

it('a file gone from the phone’s storage is told, and the rest goes on', async () => {
  const shelf = memoryShelf()
  const { door, handover } = await joined(new FakeDoor(), { ...shelf, file: async (id) => (id.endsWith('2') ? undefined : shelf.file(id)) })
  await handover.add([pictureFile('gone.jpg'), pictureFile('there.jpg')], leftHub)
  await pass()
  expect(handover.view().pictures.map(({ state, why }) => [state, why])).toEqual([['refused', 'gone'], ['arrived', undefined]])
  expect(door.kept).toHaveLength(1)
})

const never = new Promise<never>(() => undefined)

/** A page that can be closed: what it had under way still reaches the door, and it hears no more of it. */
const closable = (door: FakeDoor, shelf: Shelf, newId: () => string) => {
  let isOpen = true
  const heard = async <Reply>(ask: () => Promise<Reply>): Promise<Reply> => {
    if (!isOpen) return never
    try {
      const reply = await ask()
      return await (isOpen ? reply : never)
    } catch (error) {
      if (!isOpen) return never
      throw error
    }
  }
  const handover = new Handover({
    door: { pair: (...given) => heard(() => door.pair(...given)), checks: () => heard(door.checks), send: (...given) => heard(() => door.send(...given)), arrived: () => heard(door.arrived) },
    shelf, shrink: async () => undefined, newId, phoneName: 'test',
  })
  return { handover, close: () => { isOpen = false } }
}

it('over any course of cuts, full desks and reloads no picture is lost and none is sent twice', async () => {
  const trouble = fc.constantFrom<'none' | 'cut before' | 'cut after' | 'busy'>('none', 'none', 'none', 'cut before', 'cut after', 'busy')
  const acts = fc.array(fc.oneof(fc.constant('picture' as const), fc.constant('reload' as const), fc.constant('wake' as const), fc.constant('beat' as const), fc.integer({ min: 1, max: 40 })), { minLength: 5, maxLength: 40 })
  await fc.assert(
    fc.asyncProperty(acts, fc.array(trouble, { minLength: 1, maxLength: 60 }), async (course, troubles) => {
      const door = new FakeDoor()
      const shelf = memoryShelf()
      const newId = counting()
      let page = closable(door, shelf, newId)
      await page.handover.start('right')
      await pass()
      let turn = 0
      door.trouble = (request) => {
        const next = troubles[turn++ % troubles.length]
        if (next === undefined || next === 'none') return undefined
        return next === 'busy' ? (request === 'send' ? { status: 503, code: 'door.busy' } : undefined) : next
      }
      let taken = 0
      for (const act of course) {
        if (act === 'picture') {
          taken += 1
          await page.handover.add([pictureFile(`${taken}.jpg`)], leftHub)
        } else if (act === 'reload') {
          page.close()
          page = closable(door, shelf, newId)
          await page.handover.start(undefined)
        } else if (act === 'wake') page.handover.wake()
        else if (act === 'beat') page.handover.beat()
        else await pass(act * 1_000)
      }
      door.trouble = () => undefined
      for (let round = 0; round < 8; round += 1) {
        page.handover.wake()
        for (const { id, state } of page.handover.view().pictures) if (state === 'refused') await page.handover.sendAgain(id)
        await pass(60_000)
      }
      expect(door.kept.map(({ text }) => text).toSorted()).toEqual(Array.from({ length: taken }, (_, index) => `${index + 1}.jpg`).toSorted())
      expect(door.doubled).toBe(0)
      expect(page.handover.view().pictures.every(({ state }) => state === 'arrived')).toBe(true)
    }),
    { numRuns: 300 },
  )
})
