import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { expect, test } from 'vitest'
import type { OpenedDesk } from '../../../main/desk/open'
import { ask, newFolder, open, picture, placeWith, refusalOf, sha256, signAs, startSurvey, tandem, writePlainReport } from './yard-on-disk'

const place = placeWith('choice')
const at = { checkId: place.checkId, position: place.position }
const option = (index: number) => ({ values: { [place.field.id]: place.field.options[index] ?? '' } })
const plain = { writeReport: writePlainReport }

const pdfs = (folder: string): string[] => (existsSync(join(folder, 'reports')) ? readdirSync(join(folder, 'reports')) : [])

const documentOf = (folder: string, reportId: string): string => {
  const database = new Database(join(folder, 'yard.sqlite'), { readonly: true })
  const text: unknown = database.prepare('SELECT document_json FROM reports WHERE id = ?').pluck().get(reportId)
  database.close()
  return String(text)
}

const signedSurvey = async (opened: OpenedDesk): Promise<string> => {
  await signAs(opened, 'Odile Varga')
  return (await startSurvey(opened)).id
}

test('a report without a surveyor’s name is refused, and nothing is written', async () => {
  const folder = newFolder()
  const opened = await open(folder, plain)
  const { id: surveyId } = await startSurvey(opened)
  expect((await refusalOf(opened, 'reports.issue', { surveyId })).code).toBe('report.no-surveyor')
  expect(pdfs(folder)).toEqual([])
  expect((await ask(opened, 'surveys.get', { surveyId })).status).toBe('under way')
  await opened.close()
})

test('an issued report has its number, its PDF under its hash, and closes the survey', async () => {
  const folder = newFolder()
  const opened = await open(folder, plain)
  const surveyId = await signedSurvey(opened)
  const { report } = await ask(opened, 'reports.issue', { surveyId })
  expect(report).toMatchObject({ surveyId, number: 'BW-2026-0001', revision: 1, date: '2026-06-15', verdict: 'not seen' })
  expect(pdfs(folder)).toEqual([`${report.pdfSha256}.pdf`])
  const pdf = await opened.reportPdf(report.id)
  expect(pdf?.fileName).toBe('BW-2026-0001.pdf')
  expect(sha256(pdf?.bytes ?? '')).toBe(report.pdfSha256)
  expect(await ask(opened, 'surveys.get', { surveyId })).toMatchObject({ status: 'issued', reportNumber: 'BW-2026-0001', revision: 1, reports: [report] })
  expect((await ask(opened, 'surveys.list', { search: 'bw-2026-0001' })).total).toBe(1)
  expect((await ask(opened, 'reports.list', {})).reports).toEqual([report])
  await opened.close()
})

test('an issued survey takes no change until it is opened again', async () => {
  const opened = await open(newFolder(), plain)
  const surveyId = await signedSurvey(opened)
  const { photograph } = await ask(opened, 'photographs.add', { surveyId, fileName: 'a.jpg' }, await picture(1))
  await ask(opened, 'reports.issue', { surveyId })
  const calls: readonly (readonly [string, unknown, Uint8Array?])[] = [
    ['surveys.answer', { surveyId, ...at, answer: option(0) }], ['surveys.clear', { surveyId, ...at }], ['surveys.standAt', { surveyId, here: at }],
    ['photographs.add', { surveyId, fileName: 'b.jpg' }, await picture(2)], ['photographs.remove', { photographId: photograph.id }],
    ['photographs.describe', { photographId: photograph.id, caption: 'x' }], ['reports.issue', { surveyId }],
  ]
  for (const [name, input, bytes] of calls) expect([name, (await refusalOf(opened, name, input, bytes)).code]).toEqual([name, 'survey.issued'])
  expect((await refusalOf(opened, 'surveys.discard', { surveyId })).code).toBe('survey.was-issued')
  await opened.close()
})

test('a later change is a new revision under the same number, and the old report stays as it was', async () => {
  const folder = newFolder()
  const opened = await open(folder, plain)
  const surveyId = await signedSurvey(opened)
  await ask(opened, 'surveys.answer', { surveyId, ...at, answer: option(0) })
  const { report: first } = await ask(opened, 'reports.issue', { surveyId })
  const document = documentOf(folder, first.id)
  const { rigId } = await ask(opened, 'surveys.get', { surveyId })
  await ask(opened, 'rigs.save', { rigId, rig: { ...tandem, name: 'Renamed since', trailer: { axleCount: 1 } } })
  expect((await ask(opened, 'surveys.get', { surveyId })).rig).toEqual(tandem)
  expect((await ask(opened, 'surveys.list', {})).surveys[0]?.rigName).toBe(tandem.name)

  const reopened = await ask(opened, 'surveys.reopen', { surveyId })
  expect(reopened).toMatchObject({ status: 'under way', rigName: 'Renamed since', reportNumber: 'BW-2026-0001', revision: 1 })
  expect((await refusalOf(opened, 'surveys.discard', { surveyId })).code).toBe('survey.was-issued')
  await signAs(opened, 'Somebody Else')
  const { report: second } = await ask(opened, 'reports.issue', { surveyId })
  expect(second).toMatchObject({ number: 'BW-2026-0001', revision: 2 })
  expect((await ask(opened, 'reports.list', { surveyId })).reports.map(({ revision }) => revision)).toEqual([2, 1])
  expect(documentOf(folder, first.id)).toBe(document)
  expect(sha256((await opened.reportPdf(first.id))?.bytes ?? '')).toBe(first.pdfSha256)
  expect((await opened.reportPdf(second.id))?.fileName).toBe('BW-2026-0001 revision 2.pdf')
  await opened.close()
})

test('numbers run on without a gap within a year, and begin anew with the next', async () => {
  const folder = newFolder()
  let now = new Date('2026-06-15T12:00:00Z')
  const opened = await open(folder, { ...plain, clock: () => now })
  await signAs(opened, 'Odile Varga')
  const surveys = [await startSurvey(opened), await startSurvey(opened), await startSurvey(opened)]
  const issued = await Promise.all(surveys.slice(0, 2).map(({ id }) => ask(opened, 'reports.issue', { surveyId: id })))
  expect(issued.map(({ report }) => report.number).toSorted()).toEqual(['BW-2026-0001', 'BW-2026-0002'])
  now = new Date('2027-01-01T00:30:00Z')
  expect((await ask(opened, 'reports.issue', { surveyId: surveys[2]?.id ?? '' })).report).toMatchObject({ number: 'BW-2027-0001', date: '2027-01-01' })
  await opened.close()
})

test('a report that cannot be written leaves the survey under way and takes no number', async () => {
  const folder = newFolder()
  const full = Object.assign(new Error('no space left'), { code: 'ENOSPC' })
  let isFull = true
  const opened = await open(folder, { writeReport: (...given) => (isFull ? Promise.reject(full) : writePlainReport(...given)) })
  const surveyId = await signedSurvey(opened)
  expect((await refusalOf(opened, 'reports.issue', { surveyId })).code).toBe('disk.full')
  expect((await ask(opened, 'surveys.get', { surveyId })).status).toBe('under way')
  isFull = false
  expect((await ask(opened, 'reports.issue', { surveyId })).report.number).toBe('BW-2026-0001')
  await opened.close()
})

test('what is answered while the PDF is being written stands in the report', async () => {
  const folder = newFolder()
  let meanwhile: (() => Promise<unknown>) | undefined
  const opened = await open(folder, {
    writeReport: async (document, pictureOf, file) => {
      const written = await writePlainReport(document, pictureOf, file)
      const once = meanwhile
      meanwhile = undefined
      await once?.()
      return written
    },
  })
  const surveyId = await signedSurvey(opened)
  meanwhile = () => ask(opened, 'surveys.answer', { surveyId, ...at, answer: { values: {}, note: 'said meanwhile' } })
  const { report } = await ask(opened, 'reports.issue', { surveyId })
  expect(documentOf(folder, report.id)).toContain('said meanwhile')
  await opened.close()
  const again = await open(folder, plain)
  await again.missingPhotographs()
  expect(pdfs(folder)).toEqual([`${report.pdfSha256}.pdf`])
  await again.close()
})

test('a PDF changed or gone since it was issued is not handed out as the report', async () => {
  const folder = newFolder()
  const opened = await open(folder, plain)
  const surveyId = await signedSurvey(opened)
  const { report } = await ask(opened, 'reports.issue', { surveyId })
  const file = join(folder, 'reports', `${report.pdfSha256}.pdf`)
  writeFileSync(file, `${readFileSync(file, 'utf8')} and more`)
  await expect(opened.reportPdf(report.id)).rejects.toMatchObject({ data: { code: 'report.file-damaged' } })
  rmSync(file)
  await expect(opened.reportPdf(report.id)).rejects.toMatchObject({ data: { code: 'report.file-damaged' } })
  expect(await opened.reportPdf('01900000-0000-7000-8000-00000000dead')).toBeUndefined()
  await opened.close()
})

test('a report in the file can neither be changed nor deleted', async () => {
  const folder = newFolder()
  const opened = await open(folder, plain)
  const surveyId = await signedSurvey(opened)
  await ask(opened, 'reports.issue', { surveyId })
  await opened.close()
  const database = new Database(join(folder, 'yard.sqlite'))
  expect(() => database.exec("UPDATE reports SET verdict = 'pass'")).toThrow('never changed')
  expect(() => database.exec('DELETE FROM reports')).toThrow('never deleted')
  database.close()
})

test('the program’s own writer makes a PDF of a survey with a photograph', async () => {
  const opened = await open(newFolder())
  const surveyId = await signedSurvey(opened)
  await ask(opened, 'photographs.add', { surveyId, ...at, fileName: 'a.jpg' }, await picture(3))
  const { report } = await ask(opened, 'reports.issue', { surveyId })
  const pdf = await opened.reportPdf(report.id)
  expect(new TextDecoder('latin1').decode(pdf?.bytes.slice(0, 5))).toBe('%PDF-')
  expect(pdf?.bytes.byteLength).toBe(report.pdfByteCount)
  await opened.close()
}, 60_000)
