import type { RigRow, SurveyRow } from '../../shared-logic/survey/records'
import type { ReadingDesk } from '../desk/open-to-read'

/** As many rows as the contract hands over at once; a larger yard is read page by page. */
const limit = 200

interface Rows<Row> {
  readonly rows: readonly Row[]
  readonly total: number
}

const everything = async <Row>(page: (offset: number) => Promise<Rows<Row>>): Promise<Row[]> => {
  const all: Row[] = []
  for (;;) {
    const { rows, total } = await page(all.length)
    all.push(...rows)
    if (rows.length === 0 || all.length >= total) return all
  }
}

export const everyRig = (desk: ReadingDesk): Promise<RigRow[]> =>
  everything(async (offset) => {
    const { rigs, total } = await desk['rigs.list']({ offset, limit })
    return { rows: rigs, total }
  })

/** Newest first. */
export const everySurvey = (desk: ReadingDesk, rigId?: string): Promise<SurveyRow[]> =>
  everything(async (offset) => {
    const { surveys, total } = await desk['surveys.list']({ offset, limit, ...(rigId !== undefined && { rigId }) })
    return { rows: surveys, total }
  })
