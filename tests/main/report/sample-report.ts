import sharp from 'sharp'
import { composeReport, type ReportInput } from '../../../shared-logic/report/compose'
import type { ReportDocument } from '../../../shared-logic/report/document'
import { settingsSchema, type Settings } from '../../../shared-logic/survey/settings'
import { en } from '../../../shared-logic/words/en'
import { sampleSurvey, type SampleWishes } from './sample-survey'

export const sampleSettings: Settings = settingsSchema.parse({
  surveyorName: 'Aslaug Renn', surveyorAddress: '12 Ropewalk\nHollowmere', surveyorContact: 'aslaug@ropewalk.example', ruleBook: 'us', units: 'us', paper: 'Letter',
})

export const sampleReport = (wishes: SampleWishes = {}, more: Partial<ReportInput> = {}): ReportDocument =>
  composeReport({ survey: sampleSurvey(wishes), settings: sampleSettings, number: 'BW-2026-0007', revision: 1, issuedAt: '2026-11-25T13:05:00Z', programVersion: '0.1.0', words: en, ...more })

/** A flat picture with a horizon, the size of a preview; each number has its own colour. */
export const samplePicture = async (number: number, width = 1600, height = 1200): Promise<Uint8Array> => {
  const sky = { r: 120 + ((number * 37) % 120), g: 140 + ((number * 53) % 100), b: 170 }
  const ground = await sharp({ create: { width, height: Math.round(height * 0.4), channels: 3, background: { r: 70, g: 74, b: 60 + ((number * 11) % 60) } } }).png().toBuffer()
  return sharp({ create: { width, height, channels: 3, background: sky } }).composite([{ input: ground, top: Math.round(height * 0.6), left: 0 }]).jpeg({ quality: 80, progressive: true }).toBuffer()
}

/** Pictures by the hashes of `sampleSurvey`; every fifth stands upright. */
export const samplePictureOf = (sha256: string): Promise<Uint8Array> => {
  const number = Number.parseInt(sha256.slice(0, 2), 16)
  return number % 5 === 4 ? samplePicture(number, 1200, 1600) : samplePicture(number)
}
