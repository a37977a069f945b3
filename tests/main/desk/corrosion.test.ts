import { expect, test } from 'vitest'
import type { Spot } from '../../../shared-logic/survey/spot'
import { reportDocumentSchema, type ReportDocument } from '../../../shared-logic/report/document'
import { ask, keepTandem, newFolder, open, refusalOf, signAs, writePlainReport } from './yard-on-disk'

const spot: Spot = { id: 'a', place: 'left rail', material: 'galvanized steel', kind: 'red rust', areaM2: 0.001 }
const checkId = 'frame.corrosion'

test('the spots of a rig come back survey by survey, the oldest first, with the places where none was found', async () => {
  const opened = await open(newFolder())
  const rigId = await keepTandem(opened)
  for (const [surveyDate, areaM2] of [['2026-05-01', 0.002], ['2025-05-01', 0.001]] as const) {
    const { id: surveyId } = await ask(opened, 'surveys.start', { rigId, purpose: 'yearly', surveyDate, ruleBook: 'us' })
    await ask(opened, 'surveys.answer', { surveyId, checkId, position: 'left rail', answer: { values: { spots: [{ ...spot, areaM2 }] } } })
    await ask(opened, 'surveys.answer', { surveyId, checkId, position: 'right rail', answer: { values: { spots: [] } } })
    await ask(opened, 'surveys.answer', { surveyId, checkId, position: 'tongue', answer: { values: {}, aside: { as: 'not seen', reason: 'under the cover' } } })
  }
  const { rig, surveys } = await ask(opened, 'corrosion.history', { rigId })
  expect(rig.name).toBe('Tandem of the north slip')
  expect(surveys.map(({ date }) => date)).toEqual(['2025-05-01', '2026-05-01'])
  expect(surveys[0]?.places).toEqual([{ position: 'left rail', spots: [spot] }, { position: 'right rail', spots: [] }])
  await opened.close()
})

test('a discarded survey leaves no trace in it, and an unknown rig is refused', async () => {
  const opened = await open(newFolder())
  const rigId = await keepTandem(opened)
  const { id: surveyId } = await ask(opened, 'surveys.start', { rigId, purpose: 'yearly', surveyDate: '2026-05-01', ruleBook: 'us' })
  await ask(opened, 'surveys.answer', { surveyId, checkId, position: 'left rail', answer: { values: { spots: [spot] } } })
  await ask(opened, 'surveys.discard', { surveyId })
  expect((await ask(opened, 'corrosion.history', { rigId })).surveys).toEqual([])
  expect(await refusalOf(opened, 'corrosion.history', { rigId: '01900000-0000-7000-8000-000000000000' })).toMatchObject({ code: 'rig.not-found' })
  await opened.close()
})

test('a report follows its spots from the surveys issued before, and from no other', async () => {
  const documents: ReportDocument[] = []
  const opened = await open(newFolder(), { writeReport: (document, pictureOf, path) => { documents.push(reportDocumentSchema.parse(document)); return writePlainReport(document, pictureOf, path) } })
  const rigId = await keepTandem(opened)
  await signAs(opened, 'Odile Varga')
  const looked = async (surveyDate: string, areaM2: number, isIssued: boolean): Promise<void> => {
    const { id: surveyId } = await ask(opened, 'surveys.start', { rigId, purpose: 'yearly', surveyDate, ruleBook: 'us' })
    await ask(opened, 'surveys.answer', { surveyId, checkId, position: 'left rail', answer: { values: { spots: [{ ...spot, areaM2, areaUncertaintyM2: 0.0001, faceAreaM2: 0.5 }] } } })
    if (isIssued) await ask(opened, 'reports.issue', { surveyId })
  }
  await looked('2024-05-01', 0.001, true)
  await looked('2025-05-01', 0.0015, false)
  await looked('2026-05-01', 0.002, true)
  const linesOf = (document: ReportDocument | undefined): string => document?.corrosion?.spots[0]?.lines.map(({ text }) => text).join(' ') ?? ''
  expect(linesOf(documents[0])).not.toContain('since')
  expect(linesOf(documents[1])).toContain('Grown since 1 May 2024.')
  expect(linesOf(documents[1])).not.toContain('1 May 2025')
  await opened.close()
})
