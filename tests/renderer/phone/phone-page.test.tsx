import { cleanup, configure, render, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { Handover } from '../../../renderer/phone/handover'
import { PhonePage } from '../../../renderer/phone/phone-page'
import { memoryShelf, type Shelf } from '../../../renderer/phone/shelf'
import { largestPhotographBytes } from '../../../shared-logic/photographs/limits'
import { phonePageWords as words } from '../../../shared-logic/words/en/screens/phone'
import { say } from '../../../shared-logic/words/say'
import { counting, FakeDoor, pictureFile } from './fake-door'

configure({ asyncUtilTimeout: 8_000 })
beforeEach(() => window.sessionStorage.clear())
afterEach(cleanup)

const lasting = (): Shelf => ({ ...memoryShelf(), isLasting: true })

const drawPage = async (door = new FakeDoor(), { secret = 'right', shelf = lasting(), newId = counting() }: { secret?: string; shelf?: Shelf; newId?: () => string } = {}) => {
  const handover = new Handover({ door, shelf, shrink: async () => undefined, newId, phoneName: '' })
  const drawn = render(<PhonePage handover={handover} />)
  await handover.start(secret === '' ? undefined : secret)
  return { ...drawn, door, handover, shelf, newId, user: userEvent.setup() }
}

const connected = async (...given: Parameters<typeof drawPage>) => {
  const page = await drawPage(...given)
  await screen.findByText(words.states.open)
  return page
}

const fill = (phrase: string, values: Record<string, string | number>): string => say(phrase, values, 'metric')
const checkNames = (): string[] => screen.getAllByRole('radio').filter((radio) => radio.getAttribute('name') === 'check').map((radio) => radio.closest('label')?.textContent.trim() ?? '')
const camera = (): HTMLElement => screen.getByLabelText(words.hand.take)
const openPictures = (user: ReturnType<typeof userEvent.setup>): Promise<void> => user.click(screen.getByRole('button', { name: new RegExp(`^${words.hand.pictures}`) }))

it('open checks stand by station in the order of the walk; no check is the first choice and the one that is chosen', async () => {
  const { user } = await connected()
  expect(screen.getAllByRole('heading', { level: 3 }).map((heading) => heading.textContent)).toEqual(['Hubs 2 open', 'Winch post 1 open'])
  expect(checkNames()).toEqual([`${words.checks.none} ${words.checks.noneHint}`, 'Oil level left', 'Dust cap left'])
  expect(screen.getByRole<HTMLInputElement>('radio', { name: new RegExp(words.checks.none) }).checked).toBe(true)
  await user.click(screen.getByRole('button', { name: /Winch post/ }))
  expect(checkNames()).toContain('Winch strap')
})

it('all checks are shown when wanted, the answered ones marked so; a quick find goes by title, place and station', async () => {
  const { user } = await connected()
  await user.click(screen.getByRole('radio', { name: words.checks.all }))
  await user.type(screen.getByRole('searchbox', { name: words.checks.find }), 'oil RIGHT')
  expect(checkNames().slice(1)).toEqual([`Oil level right  ${words.checks.checkDone}`])
  await user.clear(screen.getByRole('searchbox'))
  await user.type(screen.getByRole('searchbox'), 'lights')
  expect(checkNames().slice(1)).toEqual([`Plug   ${words.checks.checkDone}`])
  await user.type(screen.getByRole('searchbox'), ' nowhere')
  expect(screen.getByText(words.checks.nothingFound)).toBeDefined()
})

it('a picture goes to the check that is chosen, is counted there, and its arrival is said', async () => {
  const { user, door } = await connected()
  await user.click(screen.getByRole('radio', { name: /Dust cap/ }))
  await user.upload(camera(), pictureFile('cap.jpg'))
  await screen.findByText(fill(words.pictures.arrivedOf, { arrived: 1, total: 1 }))
  expect(door.kept.map(({ about }) => [about.fileName, about.checkId, about.position])).toEqual([['cap.jpg', 'hubs.dust-cap', 'axle 1 left']])
  expect(checkNames()).toContain(`Dust cap left ${words.checks.pictures.one}`)
})

it('the camera is asked for, and pictures taken before can be chosen, several at once', async () => {
  const { user, door } = await connected()
  expect(camera().getAttribute('capture')).toBe('environment')
  expect(camera().getAttribute('accept')).toBe('image/*')
  const choose = screen.getByLabelText(words.hand.chooseLong)
  expect(choose.hasAttribute('capture')).toBe(false)
  await user.upload(choose, [pictureFile('a.jpg'), pictureFile('b.jpg'), pictureFile('c.jpg')])
  await screen.findByText(fill(words.pictures.arrivedOf, { arrived: 3, total: 3 }))
  expect(door.kept.map(({ about }) => about.checkId)).toEqual([undefined, undefined, undefined])
})

it('the choice outlives a tab that was discarded while its camera was open', async () => {
  const first = await connected()
  await first.user.click(screen.getByRole('radio', { name: /Dust cap/ }))
  first.unmount()
  await connected(first.door, { secret: '', shelf: first.shelf, newId: first.newId })
  expect(screen.getByRole<HTMLInputElement>('radio', { name: /Dust cap/ }).checked).toBe(true)
})

it('what is wrong with a picture is said at once; taking it again goes to the same check, keeping it puts the word away', async () => {
  const { user, door } = await connected()
  door.warnings = ['Blurred: hold still.']
  await user.click(screen.getByRole('radio', { name: /Dust cap/ }))
  await user.upload(camera(), pictureFile('blurred.jpg'))
  const warning = await screen.findByRole('alert')
  await waitFor(() => expect(within(warning).getByText('Blurred: hold still.')).toBeDefined())
  await user.click(screen.getByRole('radio', { name: /Oil level/ }))
  door.warnings = []
  await user.upload(within(warning).getByLabelText(words.pictures.takeAgain), pictureFile('sharp.jpg'))
  await screen.findByText(fill(words.pictures.arrivedOf, { arrived: 2, total: 2 }))
  expect(door.kept.map(({ about }) => about.checkId)).toEqual(['hubs.dust-cap', 'hubs.dust-cap'])
  expect(within(warning).queryByText('Blurred: hold still.')).toBeNull()
  door.warnings = ['Too dark.']
  await user.upload(camera(), pictureFile('dark.jpg'))
  await within(warning).findByText('Too dark.')
  await user.click(within(warning).getByRole('button', { name: words.pictures.keep }))
  expect(within(warning).queryByText('Too dark.')).toBeNull()
  expect(door.kept).toHaveLength(3)
})

it('what is not taken is said at once with the way to it, and counts neither as a picture of the check nor as one to come', async () => {
  const { user, door } = await connected()
  door.trouble = (request, about) => (request === 'send' && about?.fileName === 'notes.jpg' ? { status: 422, code: 'photograph.not-a-photograph' } : undefined)
  await user.click(screen.getByRole('radio', { name: /Dust cap/ }))
  await user.upload(camera(), pictureFile('cap.jpg'))
  await user.upload(camera(), pictureFile('notes.jpg'))
  const alert = screen.getByRole('alert')
  await within(alert).findByText(words.pictures.notTaken.one)
  expect(within(alert).getByText('Because of photograph.not-a-photograph.')).toBeDefined()
  expect(checkNames()).toContain(`Dust cap left ${words.checks.pictures.one}`)
  await user.upload(screen.getByLabelText(words.hand.chooseLong), pictureFile('empty.jpg', ''))
  await within(alert).findByText(fill(words.pictures.notTaken.many, { count: 2 }))
  const way = screen.getByRole('button', { name: new RegExp(`^${words.hand.pictures}`) })
  expect(way.textContent).toBe(`${words.hand.pictures} ${fill(words.hand.count, { arrived: 1, total: 1 })} ${fill(words.hand.notTaken, { count: 2 })}`)
  await user.click(within(alert).getByRole('button', { name: words.pictures.look }))
  expect(document.activeElement?.textContent).toBe(words.pictures.title)
  expect(alert.textContent).toBe('')
  expect(screen.getAllByText(words.pictures.states.refused)).toHaveLength(2)
})

it('of what holds no picture nothing is sent again or saved; an empty file can only be let go', async () => {
  const { user, door } = await connected()
  door.trouble = (request) => (request === 'send' ? { status: 422, code: 'photograph.not-a-photograph' } : undefined)
  await user.upload(screen.getByLabelText(words.hand.chooseLong), [pictureFile('notes.jpg'), pictureFile('empty.jpg', '')])
  await openPictures(user)
  const lineOf = (number: number): Promise<HTMLElement> => screen.findByRole('listitem', { name: fill(words.pictures.name, { number }) })
  const [notes, empty] = [await lineOf(1), await lineOf(2)]
  await within(notes).findByText(words.pictures.states.refused)
  expect(within(notes).getByLabelText(words.pictures.takeAgain)).toBeDefined()
  expect(within(notes).getAllByRole('button').map(({ textContent }) => textContent)).toEqual([words.pictures.remove])
  expect(within(empty).getByText(words.pictures.why.empty)).toBeDefined()
  expect(within(empty).queryByLabelText(words.pictures.takeAgain)).toBeNull()
  expect(within(empty).getAllByRole('button').map(({ textContent }) => textContent)).toEqual([words.pictures.remove])
  await user.click(within(empty).getByRole('button', { name: words.pictures.remove }))
  expect(screen.getAllByRole('listitem')).toEqual([notes])
  expect(document.activeElement?.textContent).toBe(words.pictures.title)
})

it('the same picture sent twice is said to be there already, and is one picture', async () => {
  const { user, door } = await connected()
  await user.click(screen.getByRole('radio', { name: /Dust cap/ }))
  await user.upload(camera(), pictureFile('cap.jpg', 'the cap'))
  await screen.findByText(fill(words.pictures.arrivedOf, { arrived: 1, total: 1 }))
  await user.upload(screen.getByLabelText(words.hand.chooseLong), pictureFile('copy.jpg', 'the cap'))
  await within(screen.getByRole('alert')).findByText(words.pictures.alreadyThere.one)
  expect(screen.getByText(fill(words.hand.count, { arrived: 1, total: 1 }))).toBeDefined()
  expect(checkNames()).toContain(`Dust cap left ${words.checks.pictures.one}`)
  await user.click(within(screen.getByRole('alert')).getByRole('button', { name: words.pictures.understood }))
  expect(screen.getByRole('alert').textContent).toBe('')
  await openPictures(user)
  const line = screen.getByRole('listitem', { name: fill(words.pictures.name, { number: 2 }) })
  expect(within(line).getByText(words.pictures.states['already there'])).toBeDefined()
  expect(door.kept).toHaveLength(1)
})

it('keeping one blurred picture does not put away the word on the next, still on its way', async () => {
  const { user, door } = await connected()
  door.warnings = ['Blurred.']
  let isCut = false
  door.trouble = () => (isCut ? 'cut before' : undefined)
  await user.upload(camera(), pictureFile('first.jpg'))
  const alert = screen.getByRole('alert')
  await within(alert).findByText('Blurred.')
  isCut = true
  await user.upload(camera(), pictureFile('second.jpg'))
  await screen.findByText(words.notices.silent)
  await user.click(within(alert).getByRole('button', { name: words.pictures.keep }))
  expect(alert.textContent).toBe('')
  isCut = false
  await within(alert).findByText('Blurred.')
})

it('a refused picture says why and what to do; it is removed only after being asked', async () => {
  const { user, door } = await connected()
  door.trouble = (request) => (request === 'send' ? { status: 422, code: 'photograph.damaged' } : undefined)
  await user.upload(camera(), pictureFile('bad.jpg'))
  await openPictures(user)
  const line = await screen.findByRole('listitem', { name: fill(words.pictures.name, { number: 1 }) })
  await within(line).findByText('Because of photograph.damaged.')
  expect(within(line).getByText(words.pictures.states.refused)).toBeDefined()
  await user.click(within(line).getByRole('button', { name: words.pictures.remove }))
  await user.click(within(line).getByRole('button', { name: words.pictures.removeNo }))
  door.trouble = () => undefined
  await user.click(within(line).getByRole('button', { name: words.pictures.sendAgain }))
  await within(line).findByText(words.pictures.states.arrived)
  expect(door.kept).toHaveLength(1)
  door.trouble = (request) => (request === 'send' ? { status: 422, code: 'photograph.takes-too-much' } : undefined)
  await user.upload(camera(), pictureFile('worse.jpg'))
  const second = await screen.findByRole('listitem', { name: fill(words.pictures.name, { number: 2 }) })
  await user.click(await within(second).findByRole('button', { name: words.pictures.remove }))
  await user.click(within(second).getByRole('button', { name: words.pictures.removeYes }))
  expect(screen.getAllByRole('listitem')).toEqual([line])
})

it('a picture too large for the desktop is told before it is sent', async () => {
  const { user, door } = await connected()
  const large = pictureFile('large.jpg')
  Object.defineProperty(large, 'size', { value: largestPhotographBytes + 1 })
  await user.upload(camera(), large)
  expect(await within(screen.getByRole('alert')).findByText(fill(words.pictures.why['too large'], { megabytes: 100 }))).toBeDefined()
  expect(door.asked).not.toContain('send')
})

it('turning to the pictures and back brings the focus to the list that is shown', async () => {
  const { user } = await connected()
  await openPictures(user)
  expect(document.activeElement?.textContent).toBe(words.pictures.title)
  await user.click(screen.getByRole('button', { name: words.hand.checks }))
  expect(document.activeElement?.textContent).toBe(words.checks.title)
})

it('without signal it says so, keeps what is taken, and says how many wait', async () => {
  const { user, door } = await connected()
  door.trouble = () => 'cut before'
  await user.upload(camera(), pictureFile('one.jpg'))
  expect(await screen.findByText(words.notices.silent)).toBeDefined()
  expect(screen.getByText(words.notices.waitHere.one)).toBeDefined()
  expect(screen.getByText(words.states.silent)).toBeDefined()
})

it('pictures that break off again and again while the desktop answers are spoken of, and tried again', async () => {
  const { user, door, handover } = await connected()
  door.trouble = (request) => (request === 'send' ? 'cut before' : undefined)
  await user.upload(camera(), pictureFile('one.jpg'))
  expect(await screen.findByText(words.notices.breaking.one)).toBeDefined()
  door.trouble = () => undefined
  handover.wake()
  await waitFor(() => expect(screen.queryByText(words.notices.breaking.one)).toBeNull())
  expect(door.kept).toHaveLength(1)
})

it('a used code, a missing one and a closed door each get their sentence and the way on', async () => {
  const used = new FakeDoor()
  used.secret = undefined
  const first = await drawPage(used)
  expect(await screen.findByText('This code has been used.')).toBeDefined()
  expect(screen.getByText(words.notices.newCode)).toBeDefined()
  first.unmount()

  const second = await drawPage(new FakeDoor(), { secret: '' })
  expect(await screen.findByText(words.notices.noCode)).toBeDefined()
  second.unmount()

  const { door, handover, user } = await connected()
  door.isClosed = true
  await user.upload(camera(), pictureFile('late.jpg'))
  handover.beat()
  expect(await screen.findByText('The door is closed.')).toBeDefined()
  await screen.findByText(words.notices.notArrived.one)
  await openPictures(user)
  expect(screen.getByRole('button', { name: words.pictures.save })).toBeDefined()
})

it('a browser that keeps nothing, and a phone that is full, are told of with what follows from it', async () => {
  const first = await connected(new FakeDoor(), { shelf: memoryShelf() })
  expect(screen.getByText(words.notices.onlyThisPage)).toBeDefined()
  first.unmount()
  const { door, user } = await connected(new FakeDoor(), { shelf: { ...lasting(), add: () => Promise.reject(new DOMException('full', 'QuotaExceededError')) } })
  door.trouble = () => 'cut before'
  await user.upload(camera(), pictureFile('one.jpg'))
  expect(await screen.findByText(words.notices.storageFull.one)).toBeDefined()
})

it('pictures from an earlier connection wait for the person’s word', async () => {
  const first = await connected()
  first.door.isClosed = true
  await first.user.upload(camera(), pictureFile('left.jpg'))
  first.unmount()
  const { door, user } = await connected(new FakeDoor(), { shelf: first.shelf, newId: first.newId })
  await user.click(await screen.findByRole('button', { name: words.earlier.send }))
  await screen.findByText(fill(words.pictures.arrivedOf, { arrived: 1, total: 1 }))
  expect(door.kept.map(({ text }) => text)).toEqual(['left.jpg'])
})
