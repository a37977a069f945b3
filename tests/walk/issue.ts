import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { en } from '../../shared-logic/words/en'
import { readReport, type ReadReport } from './pdf-tallies'
import type { Person } from './person'

const { survey: { review }, reportPage } = en.screens

export interface Surveyor {
  readonly name: string
  readonly address: string
}

/** From the review by mouse to the PDF on disk, read back; who signs is asked, for this yard has issued nothing yet. */
export const issueFirstReport = async (person: Person, { name, address }: Surveyor, folder: string): Promise<ReadReport> => {
  const { page } = person
  await person.press(review.issue)
  await person.write(review.name, name)
  await person.write(review.address, address)
  await person.press(review.whoConfirm)
  await page.getByRole('alertdialog').getByRole('button', { name: review.confirm, exact: true }).click()
  const download = page.waitForEvent('download')
  await page.getByRole('link', { name: reportPage.download }).click()
  const path = join(folder, 'report.pdf')
  await (await download).saveAs(path)
  return readReport(new Uint8Array(await readFile(path)))
}
