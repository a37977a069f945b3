import type { Problem, Verified } from '../../shared-logic/proof/problem'
import { en } from '../../shared-logic/words/en'
import { sayBytes } from '../../shared-logic/words/say-bytes'
import { sayBeside, sayEnd, sayListEnd, sayOutcome, sayProblem, sayReportEnds, sayToDo } from '../../shared-logic/words/say-proof'
import type { VerifiedYard, VerifyYardOptions } from '../desk/verify-yard'
import type { NamedSurvey } from '../store/to-prove'
import { fill } from './columns'
import { WrongUsage, type Answer, type Command, type Given } from './command'
import { pickNamed } from './find-named'
import { readYard } from './read-yard'

const words = en.commandLine.verify

/** Work that lasts longer than this says how far it is, and then as often again. */
const sayEveryMs = 2_000

/** Counts what is read, and tells of it when it takes long. */
const counting = ({ tell, now }: Given): Pick<VerifyYardOptions, 'onTotal' | 'onBytes'> => {
  let total = 0
  let done = 0
  let told = now().getTime()
  return {
    onTotal: (byteCount) => (total = byteCount),
    onBytes: (byteCount) => {
      done += byteCount
      const at = now().getTime()
      if (at - told < sayEveryMs) return
      told = at
      tell(fill(words.progress, { done: sayBytes(done), total: sayBytes(total) }))
    },
  }
}

const nameOf = ({ id, rigName, surveyDate, reportNumbers }: NamedSurvey): string => {
  const number = reportNumbers.join(', ')
  if (rigName === undefined || surveyDate === undefined) return number === '' ? fill(words.surveyGone, { id }) : fill(words.surveyGoneWithReport, { number })
  return fill(number === '' ? words.survey : words.surveyWithReport, { rig: rigName, date: surveyDate, number })
}

const saySurvey = (name: string, verified: Verified): string[] => [
  name,
  ...[
    sayOutcome(en, verified),
    ...verified.problems.map((problem) => sayProblem(en, problem)),
    ...sayBeside(en, verified),
    ...(verified.end ? [sayEnd(en, verified.end)] : []),
    ...sayReportEnds(en, verified),
  ].map((line) => `  ${line}`),
]

const inWords = (verified: Verified) => ({ ...verified, problems: verified.problems.map((problem) => ({ ...problem, sentence: sayProblem(en, problem) })) })

const advice = (problems: readonly Problem[], hasBackups: boolean | undefined): string[] => {
  const toDo = sayToDo(en, problems, hasBackups)
  return toDo === undefined ? [] : [toDo, '']
}

/** Neither an id nor a report's number has a stroke in it. */
const isPath = (named: string): boolean => /[/\\]/.test(named)

const ofSurvey = async (given: Given, named: string): Promise<Answer> => {
  if (isPath(named)) throw new WrongUsage(fill(words.pathAsSurvey, { written: named }))
  return readYard(given, async (_desk, opened) => {
    const survey = pickNamed(await opened.surveysToVerify(), named, ({ id }) => id, ({ reportNumbers }) => reportNumbers)
    const verified = await opened.verifySurvey(survey.id, counting(given))
    return {
      lines: [...saySurvey(nameOf(survey), verified), '', ...advice(verified.problems, verified.hasBackups), en.proof.meaning],
      json: { surveyId: survey.id, ...inWords(verified), asRecorded: verified.problems.length === 0 },
      exitCode: verified.problems.length === 0 ? 0 : 1,
    }
  })
}

const sayYard = ({ surveys, problems, listEnd, hasBackups }: VerifiedYard): Answer => {
  const found = [...problems, ...surveys.flatMap(({ verified }) => verified.problems)]
  const count = found.length
  const photographs = surveys.reduce((sum, { verified }) => sum + verified.photographCount + verified.removedCount, 0)
  const outcome = count === 0 ? fill(words.allRight, { photographs, surveys: surveys.length }) : fill(count === 1 ? words.wrong.one : words.wrong.many, { count })
  return {
    lines: [
      ...surveys.flatMap(({ survey, verified }) => [...saySurvey(nameOf(survey), verified), '']),
      ...(problems.length > 0 ? [words.ofNoSurvey, ...problems.map((problem) => `  ${sayProblem(en, problem)}`), ''] : []),
      ...(listEnd === undefined ? [] : [sayListEnd(en, listEnd), '']),
      ...(surveys.length === 0 && problems.length === 0 ? [words.nothing] : [outcome, '', ...advice(found, hasBackups), en.proof.meaning]),
    ],
    json: {
      asRecorded: count === 0,
      surveys: surveys.map(({ survey, verified }) => ({ surveyId: survey.id, ...inWords(verified) })),
      problems: problems.map((problem) => ({ ...problem, sentence: sayProblem(en, problem) })),
      listEnd,
    },
    exitCode: count === 0 ? 0 : 1,
  }
}

const ofYard = (given: Given): Promise<Answer> => readYard(given, async (_desk, opened) => sayYard(await opened.verifyYard(counting(given))))

/** `verify`: of one survey, by id or report number, or of the whole yard. Answers 1 where anything is not as it was recorded. */
export const verify: Command = {
  words: [0, 1],
  options: ['folder'],
  run: (given) => (given.words[0] === undefined ? ofYard(given) : ofSurvey(given, given.words[0])),
}
