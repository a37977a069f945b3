import { cleanup, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { catalogueVersion } from '../../../shared-logic/checks/catalogue'
import { drawSheet, layOut } from './a-sheet'
import { fourPhotographs, level, photographOf } from './some-photographs'

beforeEach(layOut)
afterEach(() => {
  cleanup()
  window.localStorage.clear()
  vi.restoreAllMocks()
})
window.scrollTo = () => undefined

const rows = async () => within(await screen.findByRole('grid', { name: 'Photographs' })).getAllByRole('row')
const names = async () => (await rows()).map((row) => /IMG_\d|Level from the side/.exec(row.getAttribute('aria-label') ?? '')?.[0])
const row = async (name: string) => within(await screen.findByRole('grid', { name: 'Photographs' })).findByRole('row', { name: new RegExp(name) })
const press = async (name: string) => userEvent.click(await screen.findByRole('button', { name }))
const chooseFrom = async (field: string, option: string) => {
  await userEvent.click(await screen.findByRole('button', { name: new RegExp(` ${field}$`) }))
  await userEvent.click(await screen.findByRole('option', { name: option }))
}

describe('the contact sheet', { timeout: 30_000 }, () => {
  it('tells of each photograph what it is, where it belongs, how it came and when, and what is to be said of it', async () => {
    drawSheet()
    expect((await rows()).map((each) => each.getAttribute('aria-label'))).toEqual([
      'IMG_3.jpg. Oil condition, left front. Fail. File. Not printed',
      'IMG_4.jpg. Oil condition, left front. Fail. Phone · 19 Nov, 18:00',
      'Level from the side. Oil level, left front. File · 09:10',
      'IMG_1.jpg. No check. File · 09:30',
    ])
    expect(screen.getByText('4 photographs')).toBeDefined()
  })

  it('tells the year of one of another year, and for one this program took when it came in', async () => {
    drawSheet([photographOf(1, { takenAt: '2024-05-16T18:00:00' }), photographOf(2, { source: 'camera', addedAt: '2026-11-20T10:02:00Z' })])
    expect((await rows()).map((each) => each.getAttribute('aria-label'))).toEqual(['IMG_1.jpg. No check. File · 16 May 2024, 18:00', 'IMG_2.jpg. No check. Camera · 10:02'])
  })

  it('keeps of a long file name in sight what tells it from the others of its series; a caption is cut at its end', async () => {
    const series = ['22.15.51.jpg', '22.15.52.jpg', '22.15.52-2.jpg']
    drawSheet([...series.map((time, index) => photographOf(index + 1, { fileName: `seal-left-of-the-hub 2026-11-27 ${time}` })), photographOf(4, { fileName: 'PXL_20261127_221552123.jpg' }), photographOf(5, { caption: 'Seal of the left hub, seen from below' })])
    const grid = within(await screen.findByRole('grid', { name: 'Photographs' }))
    for (const time of series) expect(grid.getByText(time)).toBeDefined()
    expect(grid.getByText('52123.jpg', { exact: false }).textContent.length).toBe(12)
    expect(grid.getByText('Seal of the left hub, seen from below')).toBeDefined()
  })

  it('is put into another order and narrowed, and says how many are shown', async () => {
    drawSheet()
    await chooseFrom('Order', 'Time taken')
    expect(await names()).toEqual(['IMG_4', 'Level from the side', 'IMG_1', 'IMG_3'])
    await chooseFrom('Show', 'Of findings')
    expect(await names()).toEqual(['IMG_4', 'IMG_3'])
    expect(screen.getByText('2 of 4 photographs')).toBeDefined()
    await userEvent.type(screen.getByRole('searchbox', { name: 'Find by caption, file or check' }), 'img_3')
    expect(await names()).toEqual(['IMG_3'])
    await userEvent.type(screen.getByRole('searchbox', { name: 'Find by caption, file or check' }), '77')
    expect(await screen.findByText('No photograph is like that.')).toBeDefined()
    await press('Show all')
    expect(await names()).toHaveLength(4)
  })

  it('moves those chosen to a check that is looked for by name, and takes them back', async () => {
    const { kept, asked } = drawSheet()
    await userEvent.click(await row('IMG_1'))
    await userEvent.click(await row('Level from'))
    expect(screen.getByText('2 chosen')).toBeDefined()
    await press('Move to …')
    const dialog = within(await screen.findByRole('dialog', { name: 'Move 2 photographs to' }))
    const field = dialog.getByRole('searchbox', { name: 'Find a check' })
    await waitFor(() => expect(document.activeElement).toBe(field))
    await userEvent.type(field, 'oil condition right rear')
    await waitFor(() => expect(dialog.getAllByRole('option').map((option) => option.getAttribute('aria-label'))).toEqual(['Oil condition, right rear']))
    await userEvent.keyboard('{Enter}')
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull())
    await waitFor(() => expect(kept().map(({ position }) => position)).toEqual(['axle 2 right', 'axle 2 right', 'axle 1 left', 'axle 1 left']))
    expect(asked.filter(({ name }) => name === 'photographs.assign')).toHaveLength(1)
    expect(await screen.findByText('2 photographs moved to Oil condition, right rear.')).toBeDefined()
    await press('Undo')
    await waitFor(() => expect(kept().map(({ checkId, position }) => [checkId, position])).toEqual(fourPhotographs.map(({ checkId, position }) => [checkId, position])))
  })

  it('moves those chosen by a press in the list of checks beside it, and away from every check', async () => {
    const { kept } = drawSheet()
    await userEvent.click(await row('IMG_1'))
    const checks = within(screen.getByRole('listbox', { name: 'Checks' }))
    await userEvent.click(checks.getByRole('option', { name: /^Oil level, right rear/ }))
    await waitFor(() => expect(kept()[0]).toMatchObject({ checkId: level, position: 'axle 2 right' }))
    expect(screen.queryByText('1 chosen')).toBeNull()
    await userEvent.click(await row('IMG_1'))
    await userEvent.click(checks.getByRole('option', { name: /^No check/ }))
    await waitFor(() => expect(kept()[0]?.checkId).toBeUndefined())
    expect(await screen.findByText('“IMG_1.jpg” belongs to no check now.')).toBeDefined()
  })

  it('shows the photographs of a check that is pressed while none is chosen', async () => {
    drawSheet()
    await rows()
    await userEvent.click(within(screen.getByRole('listbox', { name: 'Checks' })).getByRole('option', { name: /^Oil level, left front/ }))
    await waitFor(async () => expect(await names()).toEqual(['Level from the side']))
  })

  it('says so when the same picture stands at that check already', async () => {
    drawSheet(fourPhotographs, { 'photographs.assign': ({ photographIds }) => ({ photographs: fourPhotographs.filter(({ id }) => photographIds.includes(id)) }) })
    await userEvent.click(await row('IMG_1'))
    await userEvent.click(within(screen.getByRole('listbox', { name: 'Checks' })).getByRole('option', { name: /^Oil level, right rear/ }))
    expect(await screen.findByText('“IMG_1.jpg” stayed where it is: the same picture is there already.')).toBeDefined()
    expect(await row('IMG_1.jpg. No check')).toBeDefined()
  })

  it('leaves out of the report and takes in again, all chosen alike', async () => {
    const { kept } = drawSheet()
    await rows()
    await press('Choose all')
    await press('Leave out')
    await waitFor(() => expect(kept().some(({ isPrinted }) => isPrinted)).toBe(false))
    expect(await row('IMG_1.jpg. No check. File · 09:30. Not printed')).toBeDefined()
    await press('Print')
    await waitFor(() => expect(kept().every(({ isPrinted }) => isPrinted)).toBe(true))
  })

  it('turns by quarters, one after the other, and asks the desk for where that ends', async () => {
    const { kept } = drawSheet()
    await userEvent.click(await row('IMG_4'))
    for (let turn = 0; turn < 3; turn += 1) await press('Turn right')
    await waitFor(() => expect(kept()[3]?.quarterTurns).toBe(3))
    for (let turn = 0; turn < 4; turn += 1) await press('Turn left')
    await waitFor(() => expect(kept()[3]?.quarterTurns).toBe(3))
  })

  it('puts a photograph earlier within its check, and anywhere in the survey’s own order', async () => {
    const { kept } = drawSheet()
    await userEvent.click(await row('IMG_4'))
    await press('Earlier')
    await waitFor(() => expect(kept().map(({ fileName }) => fileName)).toEqual(['IMG_1.jpg', 'IMG_2.jpg', 'IMG_4.jpg', 'IMG_3.jpg']))
    expect(screen.getByRole('button', { name: 'Earlier' })).toHaveProperty('disabled', true)
    await chooseFrom('Order', 'My own order')
    await press('Earlier')
    await press('Earlier')
    await waitFor(() => expect(kept().map(({ fileName }) => fileName)).toEqual(['IMG_4.jpg', 'IMG_1.jpg', 'IMG_2.jpg', 'IMG_3.jpg']))
    await chooseFrom('Order', 'Time taken')
    expect(screen.getByRole('button', { name: 'Later' })).toHaveProperty('disabled', true)
  })

  it('its letters can be turned off, with those of the walk; what is no single letter works on', async () => {
    const { kept } = drawSheet()
    ;(await row('IMG_4')).focus()
    await userEvent.keyboard('r')
    await waitFor(() => expect(kept()[3]?.quarterTurns).toBe(1))
    await press('Keys')
    await userEvent.click(await screen.findByRole('switch', { name: 'Single keys work' }))
    await press('Close')
    ;(await row('IMG_4')).focus()
    await userEvent.keyboard('rxm')
    expect(screen.queryByRole('dialog')).toBeNull()
    await userEvent.keyboard('{F2}')
    expect(await screen.findByRole('textbox', { name: 'Caption' })).toBeDefined()
    expect(kept()[3]).toMatchObject({ quarterTurns: 1, isPrinted: true })
    expect(window.localStorage.getItem('bunkwright.single-keys')).toBe('off')
  })

  it('removes several and brings them back to where they stood', async () => {
    const { kept, asked } = drawSheet()
    await userEvent.click(await row('IMG_3'))
    await userEvent.click(await row('Level from'))
    await press('Remove')
    await waitFor(() => expect(kept().map(({ fileName }) => fileName)).toEqual(['IMG_1.jpg', 'IMG_4.jpg']))
    expect(await screen.findByText('2 photographs removed.')).toBeDefined()
    await press('Undo')
    await waitFor(() => expect(asked.filter(({ name }) => name === 'photographs.restoreAll')).toHaveLength(1))
    expect(asked.filter(({ name }) => name === 'photographs.removeAll')).toHaveLength(1)
    expect(await names()).toEqual(['IMG_3', 'IMG_4', 'Level from the side', 'IMG_1'])
  })

  it('after an undo, and after ×, the focus is on the grid', async () => {
    drawSheet()
    await userEvent.click(await row('IMG_3'))
    await press('Remove')
    await screen.findByText('“IMG_3.jpg” removed.')
    await press('Undo')
    await waitFor(async () => expect((await screen.findByRole('grid', { name: 'Photographs' })).contains(document.activeElement)).toBe(true))
    await waitFor(async () => expect(await names()).toEqual(['IMG_3', 'IMG_4', 'Level from the side', 'IMG_1']))
    await press('Remove')
    await press('Put this line away')
    await waitFor(async () => expect((await screen.findByRole('grid', { name: 'Photographs' })).contains(document.activeElement)).toBe(true))
  })

  it('with every photograph removed the way back is still there, has the focus, and brings it to the grid', async () => {
    const { kept } = drawSheet()
    await rows()
    await press('Choose all')
    await press('Remove')
    expect(await screen.findByRole('heading', { name: 'No photographs yet' })).toBeDefined()
    expect(screen.getByText('4 photographs removed.')).toBeDefined()
    await waitFor(() => expect(document.activeElement).toBe(screen.getByRole('button', { name: 'Undo' })))
    await userEvent.keyboard('{Enter}')
    await waitFor(async () => expect(await names()).toEqual(['IMG_3', 'IMG_4', 'Level from the side', 'IMG_1']))
    await waitFor(async () => expect((await screen.findByRole('grid', { name: 'Photographs' })).contains(document.activeElement)).toBe(true))
    await waitFor(() => expect(kept()).toHaveLength(4))
  })

  it('tells its keys while photographs are chosen, too', async () => {
    drawSheet()
    await userEvent.click(await row('IMG_1'))
    await screen.findByText('1 chosen')
    await press('Keys')
    expect(await screen.findByRole('dialog', { name: 'Keys on the contact sheet' })).toBeDefined()
  })

  it('says in a sentence why the desk refused, and shows what is kept', async () => {
    drawSheet(fourPhotographs, { 'photographs.choose': () => ({ ok: false, refusal: { code: 'survey.issued', values: { number: 'BW-2026-0007' } } }) })
    await userEvent.click(await row('IMG_1'))
    await press('Leave out')
    expect((await screen.findByRole('alert')).textContent).toContain('BW-2026-0007')
    await waitFor(async () => expect((await row('IMG_1')).getAttribute('aria-label')).not.toContain('Not printed'))
  })

  it('removes all or none: what the desk refuses comes back, and no undo is offered for it', async () => {
    drawSheet(fourPhotographs, { 'photographs.removeAll': () => ({ ok: false, refusal: { code: 'survey.issued', values: { number: 'BW-2026-0007' } } }) })
    await userEvent.click(await row('IMG_1'))
    await userEvent.click(await row('IMG_3'))
    await press('Remove')
    expect((await screen.findByRole('alert')).textContent).toContain('BW-2026-0007')
    await waitFor(async () => expect(await names()).toEqual(['IMG_3', 'IMG_4', 'Level from the side', 'IMG_1']))
    expect(screen.queryByRole('button', { name: 'Undo' })).toBeNull()
  })

  it('opens one large, and keeps the caption that is written there', async () => {
    const { kept } = drawSheet()
    await userEvent.click(await screen.findByRole('button', { name: 'View IMG_1.jpg large' }))
    const dialog = within(await screen.findByRole('dialog'))
    await userEvent.type(dialog.getByRole('textbox', { name: 'Caption' }), 'The whole rig')
    await userEvent.click(dialog.getByRole('button', { name: 'Close' }))
    await waitFor(() => expect(kept()[0]?.caption).toBe('The whole rig'))
    expect(await row('The whole rig. No check')).toBeDefined()
  })
})

describe('by keyboard', { timeout: 30_000 }, () => {
  const focus = async (name: string) => {
    const there = await row(name)
    there.focus()
    await waitFor(() => expect(document.activeElement).toBe(there))
  }

  it('the arrows walk, Space chooses, and a key acts on those chosen', async () => {
    const { kept } = drawSheet()
    await focus('IMG_3')
    await userEvent.keyboard(' {ArrowRight} ')
    await screen.findByText('2 chosen')
    await userEvent.keyboard('x')
    await waitFor(() => expect(kept().map(({ isPrinted }) => isPrinted)).toEqual([true, true, false, false]))
    await userEvent.keyboard('{Escape}')
    await waitFor(() => expect(screen.queryByText('2 chosen')).toBeNull())
  })

  it('a key acts on the photograph with the focus where none is chosen', async () => {
    const { kept } = drawSheet()
    await focus('IMG_1')
    await userEvent.keyboard('r')
    await waitFor(() => expect(kept()[0]?.quarterTurns).toBe(1))
    await userEvent.keyboard('{Alt>}{ArrowLeft}{/Alt}')
    expect(kept().map(({ fileName }) => fileName)[0]).toBe('IMG_1.jpg')
    await userEvent.keyboard('{Delete}')
    await waitFor(() => expect(kept()).toHaveLength(3))
  })

  it('a caption is written in its place: Enter keeps it, Escape leaves it, and the focus stays at the photograph', async () => {
    const { kept, asked } = drawSheet()
    await focus('IMG_4')
    await userEvent.keyboard('c')
    await waitFor(() => expect(document.activeElement?.tagName).toBe('TEXTAREA'))
    await userEvent.keyboard('Milky x c r{Enter}')
    await waitFor(() => expect(kept()[3]?.caption).toBe('Milky x c r'))
    expect(kept()[3]).toMatchObject({ isPrinted: true, quarterTurns: 0 })
    await waitFor(async () => expect(document.activeElement).toBe(await row('Milky x c r')))
    await userEvent.keyboard('{F2}')
    await waitFor(() => expect(document.activeElement?.tagName).toBe('TEXTAREA'))
    await userEvent.keyboard('gone{Escape}')
    await waitFor(async () => expect(document.activeElement).toBe(await row('Milky x c r')))
    expect(asked.filter(({ name }) => name === 'photographs.describe')).toHaveLength(1)
  })

  it('M asks where to, and Enter opens the photograph', async () => {
    drawSheet()
    await focus('IMG_1')
    await userEvent.keyboard('m')
    expect(await screen.findByRole('dialog', { name: 'Move “IMG_1.jpg” to' })).toBeDefined()
    await userEvent.keyboard('{Escape}')
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull())
    await focus('IMG_1')
    await userEvent.keyboard('{Enter}')
    expect(within(await screen.findByRole('dialog')).getByRole('textbox', { name: 'Caption' })).toBeDefined()
  })
})

describe('a sheet that is looked at', { timeout: 30_000 }, () => {
  it('of an issued report has the numbers of the report: findings first, then as it was walked, none for what is not printed', async () => {
    drawSheet(fourPhotographs, { survey: { status: 'issued', reportNumber: 'BW-2026-0007', revision: 1, catalogueVersion } })
    const facts = (await rows()).map((each) => each.getAttribute('aria-label') ?? '')
    expect(facts).toEqual([
      'IMG_3.jpg. Oil condition, left front. Fail. File. Not printed',
      'IMG_4.jpg. Oil condition, left front. Fail. Photograph 1 · Phone · 19 Nov, 18:00',
      'Level from the side. Oil level, left front. Photograph 2 · File · 09:10',
      'IMG_1.jpg. No check. Photograph 3 · File · 09:30',
    ])
    await press('View IMG_1.jpg large')
    expect(await within(await screen.findByRole('dialog')).findByText('Photograph 3 in the report.')).toBeDefined()
  })

  it('of a report issued by another catalogue, whose checks may have stood otherwise, has no numbers', async () => {
    drawSheet(fourPhotographs, { survey: { status: 'issued', reportNumber: 'BW-2026-0007', revision: 1, catalogueVersion: 'another' } })
    expect((await rows()).filter((each) => each.getAttribute('aria-label')?.includes('Photograph'))).toEqual([])
  })

  it('of an issued report offers nothing to change, and still opens each large', async () => {
    drawSheet(fourPhotographs, { survey: { status: 'issued', reportNumber: 'BW-2026-0007', revision: 1 } })
    await userEvent.click(await row('IMG_1'))
    const dialog = within(await screen.findByRole('dialog'))
    expect(dialog.queryByRole('textbox')).toBeNull()
    await userEvent.click(dialog.getByRole('button', { name: 'Close' }))
    for (const name of ['Remove', 'Leave out', 'Add photographs', 'Choose all']) expect(screen.queryByRole('button', { name })).toBeNull()
    expect(screen.queryByRole('listbox', { name: 'Checks' })).toBeNull()
    expect(screen.getByText('The report is issued: the photographs stand as they were printed.')).toBeDefined()
  })

  it('without a photograph says what it is for and offers to add some', async () => {
    drawSheet([])
    expect(await screen.findByRole('heading', { name: 'No photographs yet' })).toBeDefined()
    expect(screen.getAllByRole('button', { name: 'Add photographs' }).length).toBeGreaterThan(0)
  })

  it('names a check that is no longer asked', async () => {
    drawSheet([photographOf(3, { checkId: 'hubs.grease', position: 'axle 1 left' })])
    expect((await row('IMG_3')).getAttribute('aria-label')).toMatch(/, no longer asked\./)
  })
})
