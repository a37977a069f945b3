import { createHash } from 'node:crypto'
import { writeFileSync, writeSync } from 'node:fs'
import sharp from 'sharp'
import type { ProcedureName } from '../../../shared-logic/contract/contract'
import { surveySchema, type Survey } from '../../../shared-logic/survey/records'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import { askedChecks } from '../../../shared-logic/survey/assess'
import { answerCall } from '../../../main/desk/answer-call'
import { openDesk } from '../../../main/desk/open'

/**
 * A surveyor at work, without end: started as a process of its own by `kill.test.ts`, which ends it at any moment.
 * One line on standard output before each call and one after its answer, written at once.
 */
const [folder = '', from = '0'] = process.argv.slice(2)
const say = (...words: readonly (string | number)[]): void => void writeSync(1, `${words.join('\t')}\n`)

const rig = { name: 'Tandem', trailer: { axleCount: 2, frame: 'galvanized steel', brakes: 'surge', hubLubrication: 'oil bath', spareWheel: true } } as const

const opened = await openDesk(folder, {
  writeReport: async (document, _pictureOf, filePath) => {
    const text = JSON.stringify(document)
    writeFileSync(filePath, text, { flush: true })
    return { sha256: createHash('sha256').update(text).digest('hex'), byteCount: Buffer.byteLength(text) }
  },
})

const ask = async (name: ProcedureName, input: unknown, bytes?: Uint8Array): Promise<unknown> => {
  const reply = await answerCall(opened.desk, name, input, bytes)
  if (!reply.ok) throw new Error(`${name}: ${JSON.stringify(reply.refusal)}`)
  return reply.value
}

const beginSurvey = async (): Promise<Survey> => {
  await ask('settings.save', { settings: { surveyorName: 'Odile Varga' } })
  const { id } = await opened.desk['rigs.save']({ rig: { ...rig, trailer: { ...rig.trailer } } })
  return surveySchema.parse(await ask('surveys.start', { rigId: id, purpose: 'yearly', surveyDate: '2026-06-15', ruleBook: 'us' }))
}

const goOn = async (): Promise<Survey> => {
  const { surveys } = await opened.desk['surveys.list']({ offset: 0, limit: 1 })
  const [latest] = surveys
  if (!latest) return beginSurvey()
  const survey = await opened.desk['surveys.get']({ surveyId: latest.id })
  return survey.status === 'issued' ? surveySchema.parse(await ask('surveys.reopen', { surveyId: survey.id })) : survey
}

const survey = await goOn()
const places = askedChecks(catalogue, survey).map(({ check, position }) => ({ checkId: check.id, position }))

const answer = async (count: number): Promise<void> => {
  const place = places[(count * 7) % places.length]
  if (!place) return
  say('asking', count)
  await ask('surveys.answer', { surveyId: survey.id, ...place, answer: { values: {}, note: String(count) } })
  say('answered', place.checkId, place.position, count)
}

const photograph = async (count: number): Promise<void> => {
  const background = { r: count % 256, g: (count >> 8) % 256, b: (count >> 16) % 256 }
  const bytes = new Uint8Array(await sharp({ create: { width: 24, height: 16, channels: 3, background } }).png().toBuffer())
  say('asking', count)
  await ask('photographs.add', { surveyId: survey.id, fileName: `${count}.png` }, bytes)
  say('photographed', createHash('sha256').update(bytes).digest('hex'))
}

const issue = async (count: number): Promise<void> => {
  say('asking', count)
  const { report } = await opened.desk['reports.issue']({ surveyId: survey.id, withPlaces: false, isHarmKnown: false })
  say('issued', report.id, report.pdfSha256)
  await ask('surveys.reopen', { surveyId: survey.id })
}

say('ready', survey.id)
for (let count = Number(from) + 1; ; count += 1) {
  await answer(count)
  if (count % 3 === 0) await photograph(count)
  if (count % 8 === 0) await issue(count)
}
