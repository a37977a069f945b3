import { cleanup, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it } from 'vitest'
import { ReportPage } from '../../../renderer/report-page/report-page'
import type { ReportRow, Survey } from '../../../shared-logic/survey/records'
import { en } from '../../../shared-logic/words/en'
import { photographOf, surveyAt } from '../survey/desk-of-one-survey'
import { drawWithDesk } from '../window-with-desk'

afterEach(cleanup)
window.scrollTo = () => undefined

const survey: Survey = { ...surveyAt('hubs.oil-condition', 'axle 1 left'), status: 'issued', reportNumber: 'BW-2026-0001', revision: 2 }
const revision = (number: number): ReportRow => ({
  id: `0197d000-0000-7000-8000-00000000000${number}`, surveyId: survey.id, number: 'BW-2026-0001', revision: number, issuedAt: `2026-11-2${number}T12:00:00Z`, date: '2026-11-20', verdict: 'fail', pdfSha256: String(number).repeat(64), pdfByteCount: 2_400_000,
})

const drawReport = (reports: readonly ReportRow[], issued = survey) =>
  drawWithDesk(<ReportPage surveyId={survey.id} />, { 'surveys.get': () => issued, 'reports.list': () => ({ reports: [...reports] }), 'surveys.reopen': () => ({ ...survey, status: 'under way' }) })

describe('the page of a report', { timeout: 30_000 }, () => {
  it('opens the newest revision and keeps the earlier one within reach', async () => {
    drawReport([revision(1), revision(2)])
    expect((await screen.findByRole('link', { name: 'Open the PDF' })).getAttribute('href')).toBe(`reports/${revision(2).id}.pdf`)
    const earlier = within(screen.getByRole('region', { name: 'Earlier revisions' }))
    expect(earlier.getByRole('link', { name: 'Revision 1, issued 21 November 2026' }).getAttribute('href')).toBe(`reports/${revision(1).id}.pdf`)
  })

  it('says of the newest what it says of originals that were not as they came in, and nothing where all were', async () => {
    const harmSaid = 'Of one photograph the original was not found as it came in: see “Method and limits”.'
    drawReport([{ ...revision(1), harmSaid }, revision(2)])
    await screen.findByRole('link', { name: 'Open the PDF' })
    expect(screen.queryByText(harmSaid)).toBeNull()
    cleanup()
    drawReport([revision(1), { ...revision(2), harmSaid }])
    expect(within(await screen.findByRole('region', { name: 'Revision 2' })).getByText(harmSaid)).toBeDefined()
  })

  it('says what reopening does before it reopens', async () => {
    const { asked } = drawReport([revision(2)])
    await userEvent.click(await screen.findByRole('button', { name: 'Reopen as a new revision' }))
    const dialog = within(await screen.findByRole('dialog'))
    expect(dialog.getByText(/the next issue becomes revision 3/)).toBeDefined()
    expect(asked.some(({ name }) => name === 'surveys.reopen')).toBe(false)
    await userEvent.click(dialog.getByRole('button', { name: 'Reopen' }))
    await waitFor(() => expect(asked.some(({ name }) => name === 'surveys.reopen')).toBe(true))
  })

  it('a survey without a report says so and leads to the walk', async () => {
    drawReport([])
    expect((await screen.findByRole('link', { name: 'Go to the walk' })).getAttribute('href')).toBe(`#/surveys/${survey.id}`)
  })

  it('offers to prove the photographs of a survey that is issued', async () => {
    const photograph = photographOf(1, 'hub.jpg', 'hubs.oil-condition', 'axle 1 left')
    const { asked } = drawReport([revision(2)], { ...survey, photographs: [photograph] })
    await userEvent.click(within(await screen.findByRole('region', { name: en.proof.panel.title })).getByRole('button', { name: en.proof.panel.verify }))
    await waitFor(() => expect(asked.find(({ name }) => name === 'proof.verify')?.input).toEqual({ surveyId: survey.id }))
  })

  it('shows beside a photograph with a length where lengths hold, and by whose clock it was taken', async () => {
    const scale = { kind: 'length' as const, from: [0, 20] as [number, number], to: [40, 20] as [number, number], lengthM: 0.1 }
    const photograph = {
      ...photographOf(1, 'hub.jpg', 'hubs.oil-condition', 'axle 1 left'), source: 'camera' as const, addedAt: '2026-11-20T14:20:00Z', widthPx: 40, heightPx: 30,
      marks: { widthPx: 40, heightPx: 30, scale, marks: [{ kind: 'length' as const, from: [0, 10] as [number, number], to: [30, 10] as [number, number] }] },
    }
    drawReport([revision(2)], { ...survey, zone: 'America/New_York', photographs: [photograph] })
    await userEvent.click(await screen.findByText(en.stations.hubs))
    await userEvent.click(screen.getByRole('button', { name: /, view large$/ }))
    const dialog = within(await screen.findByRole('dialog'))
    expect(dialog.getByText(/^Lengths hold where rule and thing lie in one plane, square to the camera; 20° askew is 6 %\./)).toBeDefined()
    // The winter of New York: IANA time zone database, UTC−5.
    expect(dialog.getByText('Taken 20 November 2026, 09:20, by this program’s clock')).toBeDefined()
  })

  it('shows a photograph at its check as it was marked up, to look at and not to change', async () => {
    const photograph = { ...photographOf(1, 'hub.jpg', 'hubs.oil-condition', 'axle 1 left'), marks: { widthPx: 40, heightPx: 30, marks: [{ kind: 'text' as const, at: [20, 15] as [number, number], text: 'milky' }] } }
    drawReport([revision(2)], { ...survey, photographs: [photograph] })
    await userEvent.click(await screen.findByText(en.stations.hubs))
    await userEvent.click(screen.getByRole('button', { name: 'hub.jpg, view large' }))
    const dialog = within(await screen.findByRole('dialog'))
    expect(dialog.getByRole('img', { name: 'hub.jpg; marked: “milky”' })).toBeDefined()
    expect(dialog.queryByRole('button', { name: en.screens.marking.open })).toBeNull()
  })
})
