import { cleanup, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { useState } from 'react'
import { afterEach, expect, it, vi } from 'vitest'
import { ContactSheetPage } from '../../../renderer/contact-sheet/contact-sheet-page'
import { ReviewPage } from '../../../renderer/review/review-page'
import { SurveyWalk } from '../../../renderer/survey/survey-walk'
import type { Photograph } from '../../../shared-logic/survey/records'
import { layOut } from '../contact-sheet/a-sheet'
import { drawWithDesk } from '../window-with-desk'
import { photographOf, surveyAt } from './desk-of-one-survey'

afterEach(() => {
  cleanup()
  vi.restoreAllMocks()
})
window.scrollTo = () => undefined
Element.prototype.scrollIntoView = () => undefined

const oil = 'hubs.oil-level'
const survey = surveyAt(oil, 'axle 1 left')

const Screens = () => {
  const [shown, show] = useState(0)
  const screens = [<ContactSheetPage key="sheet" surveyId={survey.id} />, <SurveyWalk key="walk" surveyId={survey.id} />, <ReviewPage key="review" surveyId={survey.id} />]
  return (
    <>
      <button type="button" onClick={() => show((shown + 1) % screens.length)}>Other screen</button>
      {screens[shown]}
    </>
  )
}

/** The screens of one survey, one after the other, over a desk that takes a photograph in when it is let. */
const drawScreens = () => {
  layOut()
  const waiting: (() => void)[] = []
  let number = 0
  const drawn = drawWithDesk(<Screens />, {
    'surveys.get': () => survey,
    'surveys.standAt': () => ({}),
    'photographs.add': ({ fileName }) =>
      new Promise((resolve) => {
        number += 1
        const photograph = photographOf(number, fileName)
        waiting.push(() => resolve({ photograph, alreadyThere: false }))
      }),
  })
  const add = async (...names: string[]): Promise<void> => {
    await screen.findByText('No photographs yet')
    const input = drawn.container.querySelector<HTMLInputElement>('input[type=file]')
    if (!input) throw new Error('no picker')
    await userEvent.upload(input, names.map((name) => new File(['x'], name, { type: 'image/jpeg' })))
    await waitFor(() => expect(waiting.length).toBeGreaterThan(0))
  }
  const letOneIn = (): void => waiting.shift()?.()
  const changeScreen = () => userEvent.click(screen.getByRole('button', { name: 'Other screen' }))
  return { ...drawn, add, letOneIn, changeScreen, waiting }
}

it('photographs on their way are told of on the walk, before the report is issued, and on the sheet again', { timeout: 30_000 }, async () => {
  const { add, letOneIn, changeScreen, waiting } = drawScreens()
  await add('a.jpg', 'b.jpg', 'c.jpg', 'd.jpg', 'e.jpg')
  expect(await screen.findByText('Taking in 0 of 5')).toBeDefined()
  await changeScreen()
  await screen.findByRole('heading', { level: 3 })
  expect(screen.getByText('Taking in 0 of 5')).toBeDefined()
  letOneIn()
  expect(await screen.findByText('Taking in 1 of 5')).toBeDefined()
  await changeScreen()
  await screen.findByRole('button', { name: 'Issue the report' })
  expect(screen.getByText('Taking in 1 of 5')).toBeDefined()
  await changeScreen()
  expect(await screen.findByText('Taking in 1 of 5')).toBeDefined()
  for (let left = 4; left > 0; left -= 1) {
    await waitFor(() => expect(waiting.length).toBeGreaterThan(0))
    letOneIn()
  }
  expect(await screen.findByText('5 photographs added.')).toBeDefined()
})

const isAskedBeforeClosing = (): boolean => !window.dispatchEvent(new Event('beforeunload', { cancelable: true }))

it('while photographs are on their way the window asks before it is closed, on whatever screen; not after', { timeout: 30_000 }, async () => {
  const { add, letOneIn, changeScreen } = drawScreens()
  await screen.findByText('No photographs yet')
  expect(isAskedBeforeClosing()).toBe(false)
  await add('a.jpg')
  expect(isAskedBeforeClosing()).toBe(true)
  await changeScreen()
  await screen.findByRole('heading', { level: 3 })
  expect(isAskedBeforeClosing()).toBe(true)
  letOneIn()
  await waitFor(() => expect(isAskedBeforeClosing()).toBe(false))
})

it('what may be wrong with a photograph is told when the walk is come back to, until it is noted, and then not again', { timeout: 30_000 }, async () => {
  layOut()
  let photographs: Photograph[] = []
  const { client } = drawWithDesk(<Screens />, { 'surveys.get': () => ({ ...survey, photographs }), 'surveys.standAt': () => ({}) })
  const changeScreen = () => userEvent.click(screen.getByRole('button', { name: 'Other screen' }))
  const about = { name: 'Look again at these photographs' }
  const news = () => screen.getByRole('status', about)
  const toWalk = async (): Promise<void> => {
    for (let step = 0; step < 2 && screen.queryByRole('status', about) === null; step += 1) await changeScreen()
    await screen.findByRole('heading', { level: 3 })
  }
  await screen.findByText('No photographs yet')
  await toWalk()
  await waitFor(() => expect(news().textContent).toBe(''))
  photographs = [{ ...photographOf(1, 'hub.jpg', oil, 'axle 1 left'), widthPx: 320, heightPx: 240 }]
  await client.invalidateQueries()
  await within(news()).findByText(/^Small for this/)
  await changeScreen()
  await screen.findByRole('button', { name: 'Issue the report' })
  await toWalk()
  expect(await within(news()).findByText(/^Small for this/)).toBeDefined()
  await userEvent.click(within(news()).getByRole('button', { name: 'Noted' }))
  await changeScreen()
  await toWalk()
  expect(news().textContent).toBe('')
})
