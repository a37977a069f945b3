import type { Locator, Page } from 'playwright-core'
import { en } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { sayField } from '../../shared-logic/words/say-refusal'

const { screens: { sums: said }, sums, report } = en
const axlePath = 'trailer.ballToAxleM'

/** One of the figures that stand above the sheet, with its verdict. */
export const figure = (page: Page, name: string): Locator => page.getByRole('term').filter({ hasText: new RegExp(`^${name}$`) }).locator('xpath=..')

/** The figures of the sheet of the sums, letter by letter as the screen shows them. */
interface ShownSums {
  readonly total: string
  readonly tightest: string
  /** What rests on the tightest limit, and its rating. */
  readonly load: string
  readonly rating: string
  readonly axle: string
  /** The whole sentence of the balance, in which share, coupling load and total stand as in the headline. */
  readonly reckoned: string
}

const firstOf = (page: Page, name: string): Promise<string> => figure(page, name).getByRole('definition').first().innerText()

export const readSheet = async (page: Page): Promise<ShownSums> => {
  const [share = '', coupling = ''] = (await firstOf(page, said.share)).split(', ')
  const [total, tightest] = [await firstOf(page, said.total), await firstOf(page, said.tightest)]
  const limit = page.getByRole('region', { name: said.sheets.load }).getByRole('listitem').filter({ has: page.getByText(tightest, { exact: true }) })
  const [load = '', rating = ''] = (await limit.getByText(/ of /).innerText()).split(' of ')
  const [reckonedUntilAxles = ''] = say(sums.balance.reckoned, { coupling, share, total }, 'us').split('{axles}')
  return {
    total, tightest, load, rating,
    axle: await page.getByRole('textbox', { name: en.fields[axlePath] ?? '', exact: true }).inputValue(),
    reckoned: await page.getByRole('region', { name: said.sheets.balance }).getByText(reckonedUntilAxles).innerText(),
  }
}

/** What a report must print when it is worked from the same rig. */
export const printedOf = ({ total, tightest, load, rating, axle, reckoned }: ShownSums): readonly string[] => [
  reckoned,
  `${report.sums.total} ${total}`, say(sums.load.governing, { limit: tightest }, 'us'), `${tightest} ${load} ${rating}`, `${sayField(en, axlePath)} ${axle}`,
]
