import { cleanup, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { useState } from 'react'
import { afterEach, expect, it } from 'vitest'
import { PhoneCorner } from '../../../renderer/phone-panel/phone-corner'
import { useQueryOf } from '../../../renderer/client/use-procedure'
import type { PhoneState } from '../../../shared-logic/phone/phone-state'
import type { Photograph } from '../../../shared-logic/survey/records'
import { en } from '../../../shared-logic/words/en'
import { say } from '../../../shared-logic/words/say'
import { photographOf, surveyAt } from '../survey/desk-of-one-survey'
import { drawWithDesk, type Answers } from '../window-with-desk'

const said = en.screens.phone.panel
afterEach(cleanup)

const base = surveyAt('hubs.oil-level', 'axle 1 left')
const fill = (phrase: string, values: Record<string, string | number>): string => say(phrase, values, 'metric')

/** A desk with a door that stands as the test says. */
const makeDesk = (more: Answers = {}) => {
  const desk = { door: undefined as PhoneState | undefined, photographs: [] as Photograph[], opened: [] as unknown[] }
  const shut: PhoneState = {
    surveyId: base.id, pairingAddress: 'http://192.0.2.7:41234/#a-secret', address: 'http://192.0.2.7:41234/', isSecure: false,
    otherAddresses: [{ name: 'wlan0', address: '198.51.100.4' }], closesAt: new Date(Date.now() + 3_600_000).toISOString(), arrived: [],
  }
  const answers: Answers = {
    'surveys.get': () => ({ ...base, photographs: desk.photographs }),
    'phone.state': () => ({ door: desk.door }),
    'phone.open': (input) => {
      desk.opened.push(input)
      desk.door = { ...shut, ...(input.address !== undefined && { address: `http://${input.address}:41234/` }), ...(input.isSecure === true && { isSecure: true, certificateFingerprint: 'AB:CD' }) }
      return desk.door
    },
    'phone.close': () => {
      desk.door = undefined
      return {}
    },
    ...more,
  }
  return { desk, answers, shut }
}

const Screen = () => {
  const [isOpen, setOpen] = useState(false)
  const { data: survey } = useQueryOf('surveys.get', { surveyId: base.id })
  return (
    <>
      <button type="button" onClick={() => setOpen(true)}>call</button>
      {survey && <PhoneCorner survey={survey} isPanelOpen={isOpen} onPanel={setOpen} />}
      {survey && <p>{survey.photographs.length} in the survey</p>}
    </>
  )
}

const draw = (answers: Answers) => ({ ...drawWithDesk(<Screen />, answers), user: userEvent.setup() })

const openDoor = async (answers: Answers) => {
  const drawn = draw(answers)
  await drawn.user.click(await screen.findByRole('button', { name: 'call' }))
  await drawn.user.click(await screen.findByRole('button', { name: said.openDoor }))
  await screen.findByRole('img', { name: said.code })
  return drawn
}

it('the door is opened on purpose only, for an hour unless another time is chosen, and shows code, address, steps and cautions', async () => {
  const { desk, answers } = makeDesk()
  await openDoor(answers)
  expect(desk.opened).toEqual([{ surveyId: base.id, minutes: 60, isSecure: false }])
  const dialog = screen.getByRole('dialog', { name: said.title })
  expect(within(dialog).getByText('http://192.0.2.7:41234/')).toBeDefined()
  expect(within(dialog).getAllByRole('listitem').map((step) => step.textContent)).toEqual([...said.steps])
  expect(within(dialog).getByText(said.cautions.plain)).toBeDefined()
  expect(within(dialog).queryByText('a-secret')).toBeNull()
})

it('encrypted, the fingerprint stands there to be compared', async () => {
  const { desk, answers } = makeDesk()
  const { user } = draw(answers)
  await user.click(await screen.findByRole('button', { name: 'call' }))
  await user.click(screen.getByRole('switch', { name: said.encrypt }))
  await user.click(screen.getByRole('button', { name: said.openDoor }))
  expect(await screen.findByText('AB:CD')).toBeDefined()
  expect(screen.queryByText(said.cautions.plain)).toBeNull()
  expect(desk.opened).toMatchObject([{ isSecure: true }])
})

it('where the machine is on several networks another can be chosen, and the door opens there', async () => {
  const { desk, answers } = makeDesk()
  const { user } = await openDoor(answers)
  await user.click(screen.getByRole('button', { name: new RegExp(said.network) }))
  await user.click(await screen.findByRole('option', { name: '198.51.100.4 (wlan0)' }))
  await screen.findByText('http://198.51.100.4:41234/')
  expect(desk.opened).toMatchObject([{}, { address: '198.51.100.4' }])
})

it('once a phone is in, its name stands there with what it sent, and the pictures stand in the survey', async () => {
  const { desk, answers, shut } = makeDesk()
  await openDoor(answers)
  const now = new Date().toISOString()
  const { pairingAddress: _used, ...paired } = shut
  desk.door = { ...paired, phone: { name: 'Slipway 14', pairedAt: now, lastHeardAt: now } }
  await screen.findByText(fill(said.connected, { phone: 'Slipway 14' }), { selector: 'strong' })
  expect(screen.queryByRole('img', { name: said.code })).toBeNull()
  desk.photographs = [photographOf(1, 'hub.jpg', 'hubs.oil-level', 'axle 1 left')]
  desk.door = { ...desk.door, arrived: [{ photographId: desk.photographs[0]?.id ?? '', at: now }] }
  expect(await screen.findByRole('img', { name: 'hub.jpg' })).toBeDefined()
  await screen.findByText('1 in the survey')
})

it('a phone that gives no name is called a phone, and one not heard for a while says since when', async () => {
  const { desk, answers, shut } = makeDesk()
  const { pairingAddress: _used, ...paired } = shut
  desk.door = { ...paired, phone: { name: '', pairedAt: new Date(Date.now() - 600_000).toISOString(), lastHeardAt: new Date(Date.now() - 185_000).toISOString() } }
  draw(answers)
  const line = await screen.findByRole('region', { name: said.line })
  expect(line.textContent).toContain(fill(said.connected, { phone: said.unnamed }))
  expect(line.textContent).toContain(fill(said.heardMinutes, { minutes: 3 }))
})

it('the focus goes to how the door stands when it has been opened, and back to where the panel was called from', async () => {
  const { answers } = makeDesk()
  const { user } = await openDoor(answers)
  await waitFor(() => expect(document.activeElement?.textContent).toContain(said.waitingForPhone))
  await user.click(screen.getByRole('button', { name: said.back }))
  await waitFor(() => expect(document.activeElement?.textContent).toBe('call'))
})

it('a phone that comes is said inside the open panel, where it is heard', async () => {
  const { desk, answers, shut } = makeDesk()
  await openDoor(answers)
  const now = new Date().toISOString()
  desk.door = { ...shut, phone: { name: '', pairedAt: now, lastHeardAt: now } }
  const dialog = screen.getByRole('dialog')
  await waitFor(() => expect(within(dialog).getAllByRole('status').map((status) => status.textContent).join('')).toContain(fill(said.connected, { phone: said.unnamed })))
})

it('a door closed by time while the panel is open says so there', async () => {
  const { desk, answers } = makeDesk()
  await openDoor(answers)
  desk.door = undefined
  const dialog = screen.getByRole('dialog')
  await within(dialog).findByText(said.closedNews.none)
  expect(within(dialog).getByRole('button', { name: said.openDoor })).toBeDefined()
})

it('a line stays in the survey while the door is open; closing it says what came', async () => {
  const { desk, answers } = makeDesk()
  const { user } = await openDoor(answers)
  await user.click(screen.getByRole('button', { name: said.back }))
  const line = await screen.findByRole('region', { name: said.line })
  expect(line.textContent).toContain(said.waitingForPhone)
  await user.click(within(line).getByRole('button', { name: said.show }))
  await user.click(await screen.findByRole('button', { name: said.closeDoor }))
  expect(await screen.findByText(said.closedNews.none)).toBeDefined()
  expect(desk.door).toBeUndefined()
  expect(screen.queryByRole('dialog')).toBeNull()
  await user.click(screen.getByRole('button', { name: said.understood }))
  expect(screen.queryByText(said.closedNews.none)).toBeNull()
})

it('the desk is asked every second while the door is open, and not otherwise', async () => {
  const { answers } = makeDesk()
  const drawn = draw(answers)
  const asks = (): number => drawn.asked.filter(({ name }) => name === 'phone.state').length
  await screen.findByText('0 in the survey')
  await new Promise((resolve) => { setTimeout(resolve, 2_300) })
  expect(asks()).toBe(1)
  await drawn.user.click(screen.getByRole('button', { name: 'call' }))
  await drawn.user.click(screen.getByRole('button', { name: said.openDoor }))
  await screen.findByRole('img', { name: said.code })
  const before = asks()
  await waitFor(() => expect(asks()).toBeGreaterThanOrEqual(before + 2))
})

it('a door that cannot be opened says why, and the panel stays', async () => {
  const { answers } = makeDesk({ 'phone.open': () => ({ ok: false, refusal: { code: 'phone.no-door' } }) })
  const { user } = draw(answers)
  await user.click(await screen.findByRole('button', { name: 'call' }))
  await user.click(screen.getByRole('button', { name: said.openDoor }))
  expect((await screen.findByRole('alert')).textContent).toContain(en.refusals['phone.no-door'])
  expect(screen.getByRole('button', { name: said.openDoor })).toBeDefined()
})

it('a code withdrawn after wrong guesses is replaced by a new one when asked', async () => {
  const { desk, answers, shut } = makeDesk()
  const { user } = await openDoor(answers)
  const { pairingAddress: _withdrawn, ...rest } = shut
  desk.door = rest
  await user.click(await screen.findByRole('button', { name: said.newCode }))
  await screen.findByRole('img', { name: said.code })
  expect(desk.opened).toHaveLength(2)
})
