import { cleanup, screen, waitFor } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it } from 'vitest'
import { YardPage } from '../../../renderer/yard/yard-page'
import type { RigRow } from '../../../shared-logic/survey/records'
import { drawWithDesk } from '../window-with-desk'

afterEach(cleanup)
window.scrollTo = () => undefined

const tallies = { pass: 30, advisory: 2, fail: 1, 'not seen': 65, 'not applicable': 0 }
const row = (number: number, rest: Partial<RigRow> = {}): RigRow => ({ id: `0197a000-0000-7000-8000-${String(number).padStart(12, '0')}`, rig: { name: `Hire ${number}`, trailer: { axleCount: 1, brakes: 'none' } }, surveyCount: 0, ...rest })
const underWay = (rigId: string): RigRow['latest'] => ({
  id: '0197b000-0000-7000-8000-000000000001', rigId, rigName: 'Hire 1', purpose: 'hire out', surveyDate: '2026-11-20', status: 'under way', revision: 0,
  summary: { verdict: 'fail', tallies, asked: 98, open: 65 },
})

describe('the yard', { timeout: 30_000 }, () => {
  it('an empty yard says what it is for and offers two ways to begin', async () => {
    const { asked } = drawWithDesk(<YardPage />, { 'rigs.list': () => ({ rigs: [], total: 0 }), 'yard.openExample': () => ({ rigCount: 3 }) })
    expect((await screen.findByRole('link', { name: 'Register a rig' })).getAttribute('href')).toBe('#/rigs/new')
    await userEvent.click(await screen.findByRole('button', { name: 'Open the example yard' }))
    await waitFor(() => expect(asked.some(({ name }) => name === 'yard.openExample')).toBe(true))
  })

  it('a survey under way shows how far it is and leads back to it; it shows no verdict yet', async () => {
    const rig = row(1)
    drawWithDesk(<YardPage />, { 'rigs.list': () => ({ rigs: [{ ...rig, surveyCount: 1, latest: underWay(rig.id) }], total: 1 }) })
    expect((await screen.findByRole('link', { name: /^Go on/ })).getAttribute('href')).toBe('#/surveys/0197b000-0000-7000-8000-000000000001')
    expect(screen.getByText('33 of 98 checks answered')).toBeDefined()
    expect(screen.queryByText('Fail')).toBeNull()
  })

  it('searches when typing pauses, and says when nothing matches', async () => {
    const { asked } = drawWithDesk(<YardPage />, { 'rigs.list': ({ search }) => (search === undefined ? { rigs: [row(1)], total: 1 } : { rigs: [], total: 0 }) })
    await userEvent.type(await screen.findByRole('searchbox'), 'skiff')
    expect(await screen.findByText(/Nothing matches “skiff”/)).toBeDefined()
    const searches = asked.filter(({ name }) => name === 'rigs.list').map(({ input }) => (input as { search?: string }).search)
    expect(searches.length).toBeLessThan(4)
    expect(searches.at(-1)).toBe('skiff')
  })

  it('walks a long list page by page', async () => {
    const { asked } = drawWithDesk(<YardPage />, { 'rigs.list': ({ offset = 0 }) => ({ rigs: Array.from({ length: Math.min(50, 120 - offset) }, (_, index) => row(offset + index + 1)), total: 120 }) })
    expect(await screen.findByText('1 to 50 of 120')).toBeDefined()
    await userEvent.click(screen.getByRole('button', { name: 'Further down the list' }))
    expect(await screen.findByRole('link', { name: 'Hire 51' })).toBeDefined()
    expect(asked.at(-1)?.input).toMatchObject({ offset: 50, limit: 50 })
  })

  it('a desk that does not answer is said, with a way to try again', async () => {
    drawWithDesk(<YardPage />, {})
    expect((await screen.findByRole('alert')).textContent).toMatch(/does not answer/)
    expect(screen.getByRole('button', { name: 'Try again' })).toBeDefined()
  })
})
