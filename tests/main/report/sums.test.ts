import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { tandem } from '../../../main/example/rigs'
import { writeReport } from '../../../main/report/write-report'
import type { Rig } from '../../../shared-logic/rig/rig'
import { defaultSumsSettings } from '../../../shared-logic/sums/settings'
import { sumsOf } from '../../../shared-logic/sums/sums'
import { tieDownPlanOf } from '../../../shared-logic/lashing/plan'
import { formatQuantity } from '../../../shared-logic/units/convert'
import type { Quantity } from '../../../shared-logic/units/quantity'
import { pageTexts, readPdf } from './read-pdf'
import { samplePictureOf, sampleReport } from './sample-report'
import { sampleSurvey } from './sample-survey'

let folder = ''
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sums-'))
})
afterAll(() => rm(folder, { recursive: true, force: true }))

const write = async (rig: Rig, name: string) => {
  const document = sampleReport({}, { survey: { ...sampleSurvey(), rig } })
  const path = join(folder, name)
  await writeReport(document, samplePictureOf, path)
  const pdf = await readPdf(path)
  return { document, pdf, text: (await pageTexts(pdf)).join(' ') }
}
const us = (quantity: Quantity, si: number | undefined): string => formatQuantity(quantity, si ?? NaN, 'us')

describe('a report of a rig with its sums', () => {
  it('prints the numbers of load sheet, balance and tie-down, under bookmarks of their own', async () => {
    const { document, pdf, text } = await write(tandem, 'sums.pdf')
    const { load, balance } = sumsOf(tandem, 'us', defaultSumsSettings)
    const plan = tieDownPlanOf(tandem, 'us')
    for (const line of load.lines) expect(text).toContain(us('mass', line.limit.ratingKg))
    expect(text).toContain(`Total ${us('mass', load.total.massKg)}`)
    expect(text).toContain(`Coupling load ${us('mass', balance.lever?.couplingKg)}, ${us('ratio', Math.round((balance.lever?.share ?? NaN) * 1000) / 1000)} of`)
    for (const { neededN, heldN } of plan.methods.flatMap(({ directions }) => directions)) {
      expect(text).toContain(us('force', neededN))
      expect(text).toContain(us('force', heldN))
    }
    for (const sheet of document.sums?.sheets ?? []) {
      for (const { text: line } of sheet.lines) expect(text).toContain(line.slice(0, 40))
      for (const said of [...sheet.formulas, ...sheet.cautions, sheet.sources[0] ?? '', ...sheet.inputs.map(({ label, value }) => `${label}: ${value}`)]) expect(text).toContain(said.slice(0, 40))
      expect(text).not.toContain('…')
    }
    const outline = (await pdf.getOutline()).map(({ title }) => title)
    expect(outline).toEqual(expect.arrayContaining(['Load sheet', 'Balance', 'Tyres', 'Coupling', 'Brakes', 'Tie-down plan']))
  }, 60_000)

  it('reads its drawings aloud by their alternatives, and its tables by their heads', async () => {
    const { document, pdf } = await write(tandem, 'tagged.pdf')
    const trees: string[] = []
    for (let page = 1; page <= pdf.numPages; page += 1) trees.push(JSON.stringify(await (await pdf.getPage(page)).getStructTree()))
    const tree = trees.join(' ')
    for (const { alternative } of document.sums?.sheets.flatMap(({ figures }) => figures) ?? []) expect(tree).toContain(JSON.stringify(alternative).slice(1, -1))
  }, 60_000)

  it('says what it waits for where the rig is hardly known', async () => {
    const { text } = await write({ name: 'Rig', trailer: { massKg: 500 }, boat: {} }, 'waits.pdf')
    expect(text).toContain('Load sheet')
    expect(text).toContain('Waits for:')
    expect(text).not.toMatch(/NaN|undefined|Infinity/)
  }, 60_000)
})
