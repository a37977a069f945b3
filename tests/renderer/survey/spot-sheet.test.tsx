import { cleanup, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it } from 'vitest'
import type { Spot } from '../../../shared-logic/survey/spot'
import { en } from '../../../shared-logic/words/en'
import { drawWalk, surveyAt } from './desk-of-one-survey'

afterEach(cleanup)
window.scrollTo = () => undefined
Element.prototype.scrollIntoView = () => undefined

const said = en.screens.survey.spots
const sheet = () => screen.findByRole('dialog', { name: /^Corroded spot/ })
const write = async (label: string, text: string): Promise<void> => {
  const field = within(await sheet()).getByRole('textbox', { name: label })
  await userEvent.clear(field)
  await userEvent.type(field, text)
  await userEvent.tab()
}
const grade = async () => within(await sheet()).getByRole('region', { name: said.parts.grade })
const earlierSpot: Spot = { id: 'old', place: 'Left rail, top', material: 'galvanized steel', kind: 'red rust', component: 'rail', areaM2: 0.001, faceAreaM2: 0.3, wallM: 0.004 }

const open = async (position = 'left rail') => {
  const { rig } = surveyAt('frame.corrosion', position)
  const drawn = drawWalk('frame.corrosion', position, {
    'corrosion.history': () => ({ rig, surveys: [{ surveyId: '0197b000-0000-7000-8000-000000000009', date: '2025-10-01', status: 'issued', places: [{ position: 'left rail', spots: [earlierSpot] }] }] }),
  })
  await userEvent.click(await screen.findByRole('button', { name: said.add }))
  return drawn
}

describe('noting a corroded spot', { timeout: 60_000 }, () => {
  it('is graded while it is written: coating and metal apart', async () => {
    await open()
    expect(within(await grade()).getByText(en.verdicts.advisory)).toBeDefined()
    await write(said.area, '30 cm²')
    await write(said.faceArea, '3000 cm²')
    expect(within(await grade()).getByText(/^Coating: /)).toBeDefined()
    expect(within(await grade()).getByText('1 % of the face.')).toBeDefined()
    await write(said.pitDepth, '2 mm')
    await write(said.wall, '4 mm')
    expect(within(await grade()).getByText(en.verdicts.fail)).toBeDefined()
  })

  it('a pit deeper than the wall gets a sentence at its field, no grade, and is not kept', async () => {
    const { kept } = await open()
    await write(said.place, 'Left rail')
    await write(said.pitDepth, '5 mm')
    await write(said.wall, '4 mm')
    expect(within(await sheet()).getByText(/^Deepest pit: a pit cannot be deeper/)).toBeDefined()
    expect(within(await grade()).getByText(said.noGrade)).toBeDefined()
    await userEvent.click(within(await sheet()).getByRole('button', { name: said.keep }))
    expect(kept).toEqual([])
    expect(await sheet()).toBeDefined()
  })

  it('a share over 100 % and a spot larger than its face are told too', async () => {
    await open()
    await write(said.share, '120 %')
    expect(within(await grade()).getByText(said.noGrade)).toBeDefined()
    await write(said.share, '10 %')
    await write(said.area, '20 cm²')
    await write(said.faceArea, '10 cm²')
    expect(within(await sheet()).getByText(/^Area of the spot: the spot cannot be larger/)).toBeDefined()
  })

  it('gauge readings are typed one after the other; mean and least stand there at once', async () => {
    const { kept } = await open()
    await write(said.place, 'Left rail')
    const field = within(await sheet()).getByRole('textbox', { name: said.readings })
    for (const reading of ['80', '60', '70']) await userEvent.type(within(await sheet()).getByRole('textbox', { name: said.readings }), `${reading} µm{Enter}`)
    expect(field.isConnected).toBe(true)
    expect(within(await sheet()).getByText('3 readings: mean 70 µm, least 60 µm')).toBeDefined()
    await userEvent.click(within(await sheet()).getByRole('button', { name: said.keep }))
    await waitFor(() => expect(kept).toHaveLength(1))
    expect(kept[0]).toMatchObject({ answer: { values: { spots: [{ place: 'Left rail', component: 'rail', coatingReadingsM: [80e-6, 60e-6, 70e-6].map((each): unknown => expect.closeTo(each, 9)) }] } } })
  })

  it('a reading typed and not added is not lost: the spot waits for it', async () => {
    const { kept } = await open()
    await write(said.place, 'Left rail')
    await userEvent.type(within(await sheet()).getByRole('textbox', { name: said.readings }), '80 µm')
    const keep = () => userEvent.click(screen.getByRole('button', { name: said.keep }))
    await keep()
    expect(within(await sheet()).getByText(said.readingLeft)).toBeDefined()
    expect(kept).toEqual([])
    await userEvent.type(within(await sheet()).getByRole('textbox', { name: said.readings }), '{Enter}')
    await keep()
    await waitFor(() => expect(kept).toHaveLength(1))
    expect(kept[0]).toMatchObject({ answer: { values: { spots: [{ coatingReadingsM: [expect.closeTo(80e-6, 9)] }] } } })
  })

  it('opened again it has the number it has in the report', async () => {
    await open()
    await write(said.place, 'Left rail, front')
    await userEvent.click(within(await sheet()).getByRole('button', { name: said.keep }))
    await userEvent.click(await screen.findByRole('button', { name: said.add }))
    expect((await sheet()).textContent).toContain(said.titleNumbered.replace('{number}', '2'))
    await write(said.place, 'Left rail, rear')
    await userEvent.click(within(await sheet()).getByRole('button', { name: said.keep }))
    await userEvent.click(await screen.findByRole('button', { name: said.edit.replace('{place}', 'Left rail, front') }))
    expect((await sheet()).textContent).toContain(said.titleNumbered.replace('{number}', '1'))
  })

  it('the place is asked for when the spot is kept', async () => {
    await open()
    await userEvent.click(within(await sheet()).getByRole('button', { name: said.keep }))
    expect(within(await sheet()).getByText(said.needPlace)).toBeDefined()
  })

  it('taken up from last time it keeps its trail, its place and its face, and none of what was measured then', async () => {
    const { kept } = await open()
    await userEvent.click(await screen.findByRole('button', { name: new RegExp(said.earlier) }))
    await userEvent.click(await screen.findByRole('option', { name: /^Left rail, top/ }))
    await userEvent.click(within(await sheet()).getByRole('button', { name: said.keep }))
    await waitFor(() => expect(kept).toHaveLength(1))
    expect(kept[0]).toMatchObject({ answer: { values: { spots: [{ trail: 'old', place: 'Left rail, top', faceAreaM2: 0.3, wallM: 0.004 }] } } })
    expect(JSON.stringify(kept)).not.toContain('"areaM2"')
  })

  it('the board it is measured on offers the camera at this check, and is there again behind it', async () => {
    await open()
    await userEvent.click(within(await sheet()).getByRole('button', { name: said.measure }))
    const board = within(await screen.findByRole('dialog', { name: en.screens.measuring.title }))
    await userEvent.click(board.getByRole('button', { name: en.screens.camera.open }))
    const camera = within(await screen.findByRole('dialog', { name: /^Camera: .*, left rail$/ }))
    await userEvent.click(camera.getByRole('button', { name: en.screens.camera.done }))
    await waitFor(() => expect(screen.queryByRole('dialog', { name: /^Camera: / })).toBeNull())
    expect(await screen.findByRole('dialog', { name: en.screens.measuring.title })).toBeDefined()
  })

  it('the part suggested is the one the check asks about', async () => {
    await open('winch post')
    expect(within(await sheet()).getByRole('button', { name: new RegExp(`${en.corrosion.components['winch post']}`) })).toBeDefined()
  })
})
