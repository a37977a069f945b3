import { cleanup, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it } from 'vitest'
import { ReviewPage } from '../../../renderer/review/review-page'
import type { ReportRow, Survey } from '../../../shared-logic/survey/records'
import { settingsSchema } from '../../../shared-logic/survey/settings'
import { photographOf, surveyAt } from '../survey/desk-of-one-survey'
import { drawWithDesk } from '../window-with-desk'

afterEach(cleanup)
window.scrollTo = () => undefined

const oil = 'hubs.oil-condition'
const answered = (position: string, condition: string) => ({ checkId: oil, position, answer: { values: { condition } }, answeredAt: '2026-11-20T10:00:00Z' })
const survey: Survey = {
  ...surveyAt(oil, 'axle 1 left'),
  answers: [
    answered('axle 1 left', 'dark'),
    answered('axle 1 right', 'milky'),
    { checkId: oil, position: 'axle 2 left', answer: { values: {}, aside: { as: 'not seen', reason: 'Under the boat' } }, answeredAt: '2026-11-20T10:00:00Z' },
  ],
}
const report: ReportRow = { id: '0197d000-0000-7000-8000-000000000001', surveyId: survey.id, number: 'BW-2026-0001', revision: 1, issuedAt: '2026-11-20T12:00:00Z', date: '2026-11-20', verdict: 'fail', pdfSha256: 'a'.repeat(64), pdfByteCount: 1000 }

const drawReview = (surveyorName: string) =>
  drawWithDesk(
    <ReviewPage surveyId={survey.id} />,
    { 'surveys.get': () => survey, 'reports.issue': () => ({ report }), 'settings.save': ({ settings }) => ({ settings: settingsSchema.parse({ units: 'metric', paper: 'A4', theme: 'day', ...settings }) }) },
    { surveyorName },
  )

describe('the review', { timeout: 30_000 }, () => {
  it('puts the fail before the advisory, each with its reason, remedy and by when', async () => {
    drawReview('A. Surveyor')
    const findings = within(await screen.findByRole('region', { name: /^Findings/ })).getAllByRole('heading', { level: 3 })
    expect(findings.map((each) => each.textContent)).toEqual(['Oil condition, right front', 'Oil condition, left front'])
    expect(screen.getByText('The oil is milky: water has got in.')).toBeDefined()
    expect(screen.getByText('Before it is towed')).toBeDefined()
  })

  it('names what was not seen with its reason, apart from what is open', async () => {
    drawReview('A. Surveyor')
    const unseen = within(await screen.findByRole('region', { name: /^Not seen/ }))
    expect(unseen.getByText('Under the boat')).toBeDefined()
    expect(unseen.getAllByRole('listitem')).toHaveLength(1)
  })

  it('numbers the findings that want a photograph, and names a photograph whose file is gone', async () => {
    const taken = photographOf(1, 'IMG_0001.jpg', oil, 'axle 1 right')
    const answers = { 'surveys.get': () => ({ ...survey, photographs: [taken, photographOf(2, 'IMG_0002.jpg')] }), 'photographs.missing': () => ({ missing: [taken.sha256] }) }
    drawWithDesk(<ReviewPage surveyId={survey.id} />, answers, { surveyorName: 'A. Surveyor' })
    expect(await screen.findByText('Findings that want a photograph and have none: 2.')).toBeDefined()
    expect((await screen.findByText(/Not in the yard’s folder any more/)).textContent).toContain('without them: IMG_0001.jpg.')
  })

  it('says beside a small picture what may be wrong with it, before it is printed', async () => {
    const blurred = { ...photographOf(1, 'IMG_0001.jpg', oil, 'axle 1 right'), quality: { edgeWidthPx: 30, burntShare: 0, blackShare: 0, medianLuminance: 0.2 } }
    drawWithDesk(<ReviewPage surveyId={survey.id} />, { 'surveys.get': () => ({ ...survey, photographs: [blurred] }), 'photographs.missing': () => ({ missing: [] }) }, { surveyorName: 'A. Surveyor' })
    await userEvent.click(await screen.findByRole('button', { name: 'IMG_0001.jpg (blurred), view large' }))
    expect(await within(await screen.findByRole('dialog')).findByText(/^Blurred:/)).toBeDefined()
  })

  it('says before issuing that open checks are reported as not seen, and issues only when confirmed', async () => {
    const { asked } = drawReview('A. Surveyor')
    await userEvent.click(await screen.findByRole('button', { name: 'Issue the report' }))
    const dialog = within(await screen.findByRole('alertdialog', { name: /^Issue with \d+ checks open/ }))
    expect(dialog.getByText('What is still open is reported as not seen.')).toBeDefined()
    expect(asked.some(({ name }) => name === 'reports.issue')).toBe(false)
    await userEvent.click(dialog.getByRole('button', { name: 'Issue' }))
    await waitFor(() => expect(asked.some(({ name }) => name === 'reports.issue')).toBe(true))
  })

  it('offers to print places only where a photograph that prints has one, off until it is wanted', async () => {
    const located = { ...photographOf(1, 'IMG_0001.jpg', oil, 'axle 1 right'), latitude: 38.7, longitude: -9.1 }
    const draw = (photographs: Survey['photographs']) =>
      drawWithDesk(<ReviewPage surveyId={survey.id} />, { 'surveys.get': () => ({ ...survey, photographs }), 'reports.issue': () => ({ report }) }, { surveyorName: 'A. Surveyor' })
    const dialogOf = async () => {
      await userEvent.click(await screen.findByRole('button', { name: 'Issue the report' }))
      return within(await screen.findByRole('alertdialog'))
    }
    for (const photographs of [[], [photographOf(2, 'IMG_0002.jpg')], [{ ...located, isPrinted: false }]]) {
      draw(photographs)
      expect((await dialogOf()).queryByRole('switch')).toBeNull()
      cleanup()
    }
    const { asked } = draw([located])
    const first = await dialogOf()
    const places = first.getByRole<HTMLInputElement>('switch', { name: 'Print where the photographs were taken' })
    expect(places.checked).toBe(false)
    await userEvent.click(places)
    expect(places.checked).toBe(true)
    await userEvent.click(first.getByRole('button', { name: 'Not yet' }))
    const again = await dialogOf()
    expect(again.getByRole<HTMLInputElement>('switch').checked).toBe(false)
    await userEvent.click(again.getByRole('switch'))
    await userEvent.click(again.getByRole('button', { name: 'Issue' }))
    await waitFor(() => expect(asked.find(({ name }) => name === 'reports.issue')?.input).toEqual({ surveyId: survey.id, withPlaces: true }))
  })

  it('names originals that are not as they came in before it issues, and issues all the same only when told to', async () => {
    const harmed = 'Original missing: “hub.jpg”'
    const { asked } = drawWithDesk(
      <ReviewPage surveyId={survey.id} />,
      { 'surveys.get': () => survey, 'reports.issue': ({ isHarmKnown }) => (isHarmKnown ? { report } : { ok: false, refusal: { code: 'report.originals-harmed', values: { harmed } } }) },
      { surveyorName: 'A. Surveyor' },
    )
    const issues = () => asked.filter(({ name }) => name === 'reports.issue').map(({ input }) => input)
    const begin = async () => {
      await userEvent.click(await screen.findByRole('button', { name: 'Issue the report' }))
      await userEvent.click(within(await screen.findByRole('alertdialog', { name: /^Issue with/ })).getByRole('button', { name: 'Issue' }))
      return within(await screen.findByRole('alertdialog', { name: 'Issue it as it is?' }))
    }
    const first = await begin()
    expect(first.getByText(/Not every original is as it came in\. Original missing: “hub\.jpg”\./)).toBeDefined()
    expect(first.getByText(/^Add these photographs again from where the camera or phone kept them/)).toBeDefined()
    await userEvent.click(first.getByRole('button', { name: 'Not yet' }))
    await waitFor(() => expect(screen.queryByRole('alertdialog')).toBeNull())
    expect(screen.getByRole('alert').textContent).toContain(harmed)
    const again = await begin()
    await userEvent.click(again.getByRole('button', { name: 'Issue all the same' }))
    const asIs = { surveyId: survey.id, withPlaces: false }
    await waitFor(() => expect(issues()).toEqual([asIs, asIs, { ...asIs, isHarmKnown: true }]))
  })

  it('asks who signs where no surveyor is known, and does not go on without a name', async () => {
    const { asked } = drawReview('')
    await screen.findByRole('button', { name: 'Issue the report' })
    await waitFor(() => expect(asked.some(({ name }) => name === 'settings.get')).toBe(true))
    await userEvent.click(screen.getByRole('button', { name: 'Issue the report' }))
    const dialog = within(await screen.findByRole('dialog', { name: 'Who signs the report?' }))
    await userEvent.click(dialog.getByRole('button', { name: 'Keep and go on' }))
    expect(await dialog.findByText('A report needs the surveyor’s name.')).toBeDefined()
    await userEvent.type(dialog.getByRole('textbox', { name: 'Your name' }), 'Ada Quillfeather')
    await userEvent.click(dialog.getByRole('button', { name: 'Keep and go on' }))
    expect(await screen.findByRole('alertdialog')).toBeDefined()
    expect(asked.find(({ name }) => name === 'settings.save')?.input).toMatchObject({ settings: { surveyorName: 'Ada Quillfeather' } })
  })
})
