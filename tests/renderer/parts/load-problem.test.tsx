import { cleanup, screen } from '@testing-library/react'
import type { ReactNode } from 'react'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { ReportPage } from '../../../renderer/report-page/report-page'
import { ReviewPage } from '../../../renderer/review/review-page'
import { RigFormPage } from '../../../renderer/rig/rig-form-page'
import { RigPage } from '../../../renderer/rig/rig-page'
import { StartSurvey } from '../../../renderer/survey/start-survey'
import { SurveyWalk } from '../../../renderer/survey/survey-walk'
import { drawWithDesk } from '../window-with-desk'

const id = '0197a000-0000-7000-8000-000000000001'
const refused = (code: string) => () => ({ ok: false as const, refusal: { code } })
const about = { version: '1', catalogueVersion: '1', folder: 'yard', today: '2026-11-25', zone: 'UTC', rigCount: 0, surveyCount: 0 }
const desk = (code: string) => ({
  'rigs.get': refused(code.replace('survey.', 'rig.')), 'surveys.get': refused(code), 'surveys.ofRig': () => [], 'reports.list': () => ({ reports: [] }), 'yard.about': () => about,
})

beforeEach(() => {
  window.location.hash = '/'
  window.scrollTo = () => undefined
})
afterEach(cleanup)

const pages: readonly [string, () => ReactNode, string][] = [
  ['a rig', () => <RigPage rigId={id} />, 'This rig is not in the yard'],
  ['the form of a rig', () => <RigFormPage rigId={id} />, 'This rig is not in the yard'],
  ['a survey to be started', () => <StartSurvey rigId={id} />, 'Start a survey'],
  ['a survey', () => <SurveyWalk surveyId={id} />, 'Survey not opened'],
  ['a review', () => <ReviewPage surveyId={id} />, 'Review'],
  ['a report', () => <ReportPage surveyId={id} />, 'Report'],
]

describe('what is not in the yard', () => {
  it.each(pages)('%s has a title, a reason and the way back, and does not ask to try again', async (_of, page, title) => {
    drawWithDesk(page(), desk('survey.not-found'))
    expect((await screen.findByRole('alert')).textContent).toMatch(/^This (rig|survey) is not in the yard; it may have been/)
    expect(screen.getByRole('link', { name: 'Back to the yard' }).getAttribute('href')).toBe('#/')
    expect(screen.getByRole('heading', { level: 1 }).textContent).toMatch(title)
    expect(screen.queryByRole('button', { name: 'Try again' })).toBeNull()
  })
  it('what failed otherwise can be tried again, or left', async () => {
    drawWithDesk(<SurveyWalk surveyId={id} />, desk('door.busy'))
    expect(await screen.findByRole('button', { name: 'Try again' })).toBeDefined()
    expect(screen.getByRole('link', { name: 'Back to the yard' })).toBeDefined()
  })
})
