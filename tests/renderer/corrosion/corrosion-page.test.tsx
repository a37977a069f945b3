import { cleanup, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { CorrosionPage } from '../../../renderer/corrosion/corrosion-page'
import type { CorrosionSurvey } from '../../../shared-logic/survey/records'
import type { Spot } from '../../../shared-logic/survey/spot'
import { en } from '../../../shared-logic/words/en'
import { drawWithDesk } from '../window-with-desk'

const rigId = '0197a000-0000-7000-8000-000000000001'
const said = en.screens.corrosion
const rig = { name: 'Plover', trailer: { axleCount: 1, lengthM: 5, widthM: 1.9, ballToAxleM: 3.4 } }

const survey = (count: number, date: string, status: CorrosionSurvey['status'], spots: Spot[]): CorrosionSurvey => ({
  surveyId: `0197a000-0000-7000-8000-00000000010${count}`, date, status, places: [{ position: 'left rail', spots }],
})
const rust = (id: string, more: Partial<Spot>): Spot => ({ id, trail: id, place: `by ${id}`, material: 'painted steel', kind: 'red rust', faceAreaM2: 0.35, ...more })

const draw = (surveys: CorrosionSurvey[]) => drawWithDesk(<CorrosionPage rigId={rigId} />, { 'corrosion.history': () => ({ rig, surveys }) }, { units: 'metric' })

beforeEach(() => {
  window.location.hash = `/rigs/${rigId}/corrosion`
  Element.prototype.scrollIntoView = () => undefined
  window.scrollTo = () => undefined
})
afterEach(cleanup)

describe('the corrosion of a rig', { timeout: 30_000 }, () => {
  it('that no survey looked for says what to do first', async () => {
    draw([])
    await screen.findByRole('heading', { name: said.empty.title })
    expect(screen.getByRole('link', { name: said.empty.start }).getAttribute('href')).toContain(`/rigs/${rigId}/survey`)
    expect(screen.queryByText(/Looked at on/)).toBeNull()
  })

  it('that was looked for and not found says when', async () => {
    draw([survey(1, '2025-05-02', 'issued', [])])
    expect(await screen.findByText('Looked at on 2 May 2025, and no corroded spot found.')).toBeDefined()
  })

  it('names what has grown, what is new, what is repaired and what nobody looked at again', async () => {
    draw([
      survey(1, '2024-05-02', 'issued', [rust('spring', { areaM2: 0.001, areaUncertaintyM2: 0.0001 }), rust('weld', { areaM2: 0.001 }), rust('step', { areaM2: 0.001 })]),
      survey(2, '2026-05-02', 'under way', [rust('spring', { areaM2: 0.009, areaUncertaintyM2: 0.0005 }), rust('weld', { state: 'repaired' }), rust('winch', { areaM2: 0.0001 })]),
    ])
    await screen.findByText(/^Grown: \d by spring$/)
    expect(screen.getByText(/^New: \d by winch$/)).toBeDefined()
    expect(screen.getByText(/^Repaired and sound: \d by weld$/)).toBeDefined()
    expect(screen.getByText(/^Not looked at again: \d by step$/)).toBeDefined()
    expect(screen.getByText(/^A survey is under way \(2 May 2026\)/)).toBeDefined()
  })

  it('opens a spot by keyboard, tells its course, and gives the focus back when it is closed', async () => {
    draw([survey(1, '2024-05-02', 'issued', [rust('spring', { areaM2: 0.001, areaUncertaintyM2: 0.0001 })]), survey(2, '2026-05-02', 'issued', [rust('spring', { areaM2: 0.009, areaUncertaintyM2: 0.0005 })])])
    const opener = within(await screen.findByRole('table')).getByRole('button', { name: 'Open spot 1, by spring' })
    opener.focus()
    await userEvent.keyboard('{Enter}')
    const panel = await screen.findByRole('region', { name: 'Spot 1: by spring' })
    expect(document.activeElement).toBe(within(panel).getByRole('heading', { name: 'Spot 1: by spring' }))
    expect(within(panel).getByText(/^Grown since 2 May 2024/)).toBeDefined()
    expect(within(panel).getByRole('img', { name: /^Corroded area over the surveys: 2 May 2024: 10 cm²/ })).toBeDefined()
    expect(within(panel).getByText(said.spot.noPhotographs)).toBeDefined()
    await userEvent.click(within(panel).getByRole('button', { name: said.spot.close }))
    expect(screen.queryByRole('region', { name: 'Spot 1: by spring' })).toBeNull()
    expect(document.activeElement).toBe(opener)
  })
})
