import { cleanup, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it } from 'vitest'
import { en } from '../../../shared-logic/words/en'
import type { Answers } from '../window-with-desk'
import { drawWalk, photographOf, surveyAt } from './desk-of-one-survey'

afterEach(cleanup)
window.scrollTo = () => undefined
Element.prototype.scrollIntoView = () => undefined

const oil = 'hubs.oil-level'
const at = 'axle 1 left'
const said = en.screens.survey.photographs
const names = ['one.jpg', 'two.jpg', 'three.jpg']
const photographs = names.map((name, index) => photographOf(index + 1, name, oil, at))

/** The walk at a check with three photographs, over a desk that has removed ones back. */
const walk = (more: Answers = {}) =>
  drawWalk(oil, at, {
    'surveys.get': () => ({ ...surveyAt(oil, at), photographs }),
    'photographs.remove': () => ({}),
    'photographs.restore': ({ photographId }) => ({ photograph: photographs.find(({ id }) => id === photographId) ?? photographOf(9, 'another.jpg') }),
    'photographs.restoreAll': ({ photographIds }) => ({ photographs: photographs.filter(({ id }) => photographIds.includes(id)) }),
    ...more,
  })

const thumbnail = (name: string) => screen.queryByRole('button', { name: new RegExp(`^${name.replace('.', '\\.')}.*view large$`) })
const remove = async (name: string): Promise<void> => {
  await screen.findByRole('heading', { level: 3 })
  await userEvent.click(await screen.findByRole('button', { name: new RegExp(`^${name.replace('.', '\\.')}.*view large$`) }))
  const dialog = within(await screen.findByRole('dialog'))
  await userEvent.click(dialog.getByRole('button', { name: said.remove }))
  await waitFor(() => expect(thumbnail(name)).toBeNull())
  const left = screen.queryByRole('dialog')
  if (left) await userEvent.keyboard('{Escape}')
  await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull())
}
const press = (name: string) => userEvent.click(screen.getByRole('button', { name }))

describe('photographs removed one after the other', { timeout: 30_000 }, () => {
  it('are had back one after the other, the latest first, and it is said which is next', async () => {
    walk()
    await remove('one.jpg')
    expect(await screen.findByText('one.jpg removed.')).toBeDefined()
    expect(screen.queryByRole('button', { name: said.undoAll })).toBeNull()
    await remove('two.jpg')
    expect(await screen.findByText('two.jpg and 1 more removed.')).toBeDefined()
    await press(said.undo)
    await waitFor(() => expect(thumbnail('two.jpg')).not.toBeNull())
    expect(screen.getByText('one.jpg removed.')).toBeDefined()
    expect(thumbnail('one.jpg')).toBeNull()
    await press(said.undo)
    await waitFor(() => expect(thumbnail('one.jpg')).not.toBeNull())
    expect(screen.queryByRole('button', { name: said.undo })).toBeNull()
  })

  it('are had back all at once, in one call', async () => {
    const { asked } = walk()
    for (const name of names) await remove(name)
    expect(await screen.findByText('three.jpg and 2 more removed.')).toBeDefined()
    await press(said.undoAll)
    for (const name of names) await waitFor(() => expect(thumbnail(name)).not.toBeNull())
    expect(asked.filter(({ name }) => name.startsWith('photographs.restore')).map(({ name }) => name)).toEqual(['photographs.restoreAll'])
    expect(screen.queryByText(/removed\.$/)).toBeNull()
  })

  it('one press of × puts the offer for all of them away', async () => {
    const { asked } = walk()
    for (const name of ['one.jpg', 'two.jpg']) await remove(name)
    await press(said.putAway)
    expect(screen.queryByText(/removed\.$/)).toBeNull()
    expect(screen.queryByRole('button', { name: said.undo })).toBeNull()
    expect(asked.filter(({ name }) => name.startsWith('photographs.restore'))).toEqual([])
  })

  it('two quick presses mean two photographs, not the same twice', async () => {
    const { asked } = walk()
    for (const name of ['one.jpg', 'two.jpg']) await remove(name)
    const undo = screen.getByRole('button', { name: said.undo })
    await userEvent.dblClick(undo)
    for (const name of ['one.jpg', 'two.jpg']) await waitFor(() => expect(thumbnail(name)).not.toBeNull())
    expect(asked.filter(({ name }) => name === 'photographs.restore')).toHaveLength(2)
  })

  it('one that the desk does not give back is offered again, in its place, and why is said', async () => {
    walk({ 'photographs.restore': () => ({ ok: false, refusal: { code: 'photograph.damaged', values: { name: 'two.jpg' } } }) })
    for (const name of ['one.jpg', 'two.jpg']) await remove(name)
    await press(said.undo)
    expect(await screen.findByText(/^“two.jpg” breaks off/)).toBeDefined()
    expect(await screen.findByText('two.jpg and 1 more removed.')).toBeDefined()
    expect(thumbnail('two.jpg')).toBeNull()
  })
})

it('a refused file with folders in its name is named once, as the desk calls it', async () => {
  const { container } = walk({ 'photographs.add': () => ({ ok: false, refusal: { code: 'photograph.damaged', values: { name: 'evil.jpg' } } }) })
  await screen.findByRole('heading', { level: 3 })
  const input = container.querySelector<HTMLInputElement>('input[type=file]')
  if (!input) throw new Error('no picker')
  await userEvent.upload(input, new File(['x'], '../../evil.jpg', { type: 'image/jpeg' }))
  const line = await screen.findByText(/breaks off/)
  expect(line.textContent).toBe('“evil.jpg” breaks off or is damaged, so it was not taken. Copy it from the camera again.')
})
