import type { Page } from 'playwright-core'
import { en } from '../../shared-logic/words/en'

/** How many checks are answered and asked, as the walk counts them. */
export const progressOn = async (page: Page): Promise<readonly [done: number, asked: number]> => {
  const text = await page.getByRole('navigation', { name: en.screens.survey.walk.stations }).getByRole('paragraph').first().innerText()
  const [done = 0, asked = 0] = (text.match(/\d+/g) ?? []).map(Number)
  return [done, asked]
}
