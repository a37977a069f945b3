import { catalogue, catalogueVersion } from '../checks/catalogue'
import { assess, summarize, type Assessed } from './assess'
import { placeKey } from './keys'
import type { Photograph, Survey } from './records'
import { defaultSettings, type Settings } from './settings'
import type { FileAnswer, SurveyFile } from './survey-file'
import type { Answer } from './answer'

const answerOf = ({ check: _check, position: _position, ...answer }: FileAnswer): Answer => answer

/** Every check this rig is asked, judged from the file's answers. */
export const assessFile = (file: SurveyFile): Assessed[] =>
  assess(catalogue, { ...file, answers: new Map(file.answers.map((each) => [placeKey(each.check, each.position), answerOf(each)])) })

/** Settings as the file names them, the rest by its rule book. */
export const settingsOfFile = (file: SurveyFile): Settings => ({
  ...defaultSettings,
  surveyorName: file.surveyor?.name ?? '',
  surveyorAddress: file.surveyor?.address ?? '',
  surveyorContact: file.surveyor?.contact ?? '',
  ruleBook: file.ruleBook,
  units: file.units ?? (file.ruleBook === 'us' ? 'us' : 'metric'),
  paper: file.paper ?? (file.ruleBook === 'us' ? 'Letter' : 'A4'),
})

/** What the file itself cannot know. `at`: UTC instant, ISO with Z. */
export interface FileCircumstances {
  readonly surveyId: string
  readonly rigId: string
  readonly zone: string
  readonly at: string
  readonly photographs: readonly Photograph[]
}

/** The file as a survey, the shape a report is made from. */
export const surveyOfFile = (file: SurveyFile, { surveyId, rigId, zone, at, photographs }: FileCircumstances): Survey => ({
  id: surveyId,
  rigId,
  rigName: file.rig.name,
  purpose: file.purpose,
  surveyDate: file.surveyDate,
  status: 'issued',
  summary: summarize(assessFile(file)),
  revision: 1,
  ruleBook: file.ruleBook,
  catalogueVersion,
  zone,
  ...(file.place !== undefined && { place: file.place }),
  rig: file.rig,
  answers: file.answers.map((each) => ({ checkId: each.check, position: each.position, answer: answerOf(each), answeredAt: at })),
  photographs: [...photographs],
  reports: [],
})
