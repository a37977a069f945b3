import { cleanup, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it } from 'vitest'
import { ProofPanel } from '../../../renderer/proof/proof-panel'
import type { Reply } from '../../../shared-logic/contract/reply'
import type { Verified } from '../../../shared-logic/proof/problem'
import type { Survey } from '../../../shared-logic/survey/records'
import { photographOf, surveyAt } from '../survey/desk-of-one-survey'
import { drawWithDesk, type Answers } from '../window-with-desk'

afterEach(cleanup)

const survey: Survey = { ...surveyAt('hubs.oil-condition', 'axle 1 left'), photographs: [1, 2, 3].map((number) => ({ ...photographOf(number, `${number}.jpg`), byteCount: 4_000_000 })) }
const end = { entryCount: 7, lastSha256: 'c'.repeat(64) }
const right: Verified = { photographCount: 3, removedCount: 0, byteCount: 12_000_000, end, reports: [{ number: 'BW-2026-0001', revision: 1, end }], problems: [] }
const draw = (answers: Answers, of = survey) => drawWithDesk(<ProofPanel survey={of} />, answers, { surveyorName: 'A. Surveyor' })
const press = async (name: string): Promise<void> => userEvent.click(await screen.findByRole('button', { name }))

describe('the proof of the photographs', { timeout: 30_000 }, () => {
  it('says when asked that all are as they came in, and holds the last hash ready', async () => {
    const { asked } = draw({ 'proof.verify': () => right })
    expect(await screen.findByRole('heading', { name: 'Proof of the photographs' })).toBeDefined()
    expect(asked.some(({ name }) => name === 'proof.verify')).toBe(false)
    await press('Verify photographs')
    expect(within(await screen.findByRole('status')).getByText('3 photographs, all as they came in.')).toBeDefined()
    expect(screen.queryByText(/^What to do/)).toBeNull()
    await userEvent.click(screen.getByText('What this proves'))
    expect(screen.getByText(`Report BW-2026-0001, revision 1, prints 7 entries; SHA-256 of the last: ${end.lastSha256}`)).toBeDefined()
    expect(screen.getByRole('button', { name: 'Verify again' })).toBeDefined()
  })

  it('names what is not as it was recorded, the first few at once and the rest when asked', async () => {
    const problems = Array.from({ length: 11 }, (_, index) => ({ code: 'file-missing' as const, values: { name: `${index}.jpg` } }))
    draw({ 'proof.verify': () => ({ ...right, problems }) })
    await press('Verify photographs')
    expect(await screen.findByText('11 things are not as they were recorded.')).toBeDefined()
    expect(screen.getByText('“0.jpg”: the original is missing.')).toBeDefined()
    expect(screen.getByText(/^What to do: change nothing in this yard.*where the camera or phone kept it/).textContent).not.toContain('backups')
    expect(screen.getAllByRole('listitem')).toHaveLength(8)
    await press('Show all 11')
    expect(screen.getAllByRole('listitem')).toHaveLength(11)
  })

  it('names the folder of earlier states where there are any', async () => {
    draw({ 'proof.verify': () => ({ ...right, problems: [{ code: 'order-changed', values: {} }], hasBackups: true }) })
    await press('Verify photographs')
    expect(await screen.findByText(/^What to do.*lie in its folder “backups”\.$/)).toBeDefined()
  })

  it('says how much it reads, and stops when told; nothing is then said of the photographs', async () => {
    const { promise, resolve } = Promise.withResolvers<Reply>()
    const { asked } = draw({
      'proof.verify': () => promise,
      'proof.stop': () => {
        resolve({ ok: false, refusal: { code: 'proof.stopped' } })
        return {}
      },
    })
    await press('Verify photographs')
    expect(await screen.findByText('Reading 3 photographs, 12.0 MB in all.')).toBeDefined()
    await press('Stop')
    await waitFor(() => expect(screen.queryByText(/Reading 3/)).toBeNull())
    expect(asked.find(({ name }) => name === 'proof.stop')?.input).toEqual({ surveyId: survey.id })
    expect(screen.queryByRole('alert')).toBeNull()
    expect(screen.getByRole('status').textContent).toBe('')
  })

  it('is stopped when its page is left', async () => {
    const { asked, unmount } = draw({ 'proof.verify': () => new Promise<Reply>(() => undefined), 'proof.stop': () => ({}) })
    await press('Verify photographs')
    await screen.findByText(/Reading 3/)
    unmount()
    await waitFor(() => expect(asked.some(({ name }) => name === 'proof.stop')).toBe(true))
  })

  it('says in a sentence what kept it from verifying', async () => {
    draw({ 'proof.verify': () => ({ ok: false, refusal: { code: 'survey.not-found' } }) })
    await press('Verify photographs')
    expect((await screen.findByRole('alert')).textContent).not.toBe('')
  })

  it('is not there while there is nothing to prove', () => {
    draw({}, { ...survey, photographs: [] })
    expect(screen.queryByRole('heading')).toBeNull()
  })
})
