import { catalogue } from '../../shared-logic/checks/catalogue'
import type { RigRow, Survey } from '../../shared-logic/survey/records'
import { assess } from '../../shared-logic/survey/assess'
import { factsOf } from '../../shared-logic/survey/facts'
import { en } from '../../shared-logic/words/en'
import { columns } from './columns'
import type { Answer, Command } from './command'
import { everySurvey } from './everything'
import { findNamed } from './find-named'
import { sayAssessed } from './judge'
import { section, surveyCells } from './list'
import { readYard } from './read-yard'

const words = en.commandLine

/** A rig's known data as dotted names and values; what is not known is not there. */
const facts = (value: unknown, name: string): string[][] => {
  if (Array.isArray(value)) return value.flatMap((each: unknown, index) => facts(each, `${name}.${index}`))
  if (typeof value === 'object' && value !== null) return Object.entries(value).flatMap(([key, each]) => facts(each, name === '' ? key : `${name}.${key}`))
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? [[name, `${value}`]] : []
}

const showRig = async (row: RigRow, surveys: Awaited<ReturnType<typeof everySurvey>>): Promise<Answer> => ({
  lines: [...columns(facts({ id: row.id, ...row.rig }, '')), '', ...section(words.surveysHeading, words.noSurveys, surveys.map(surveyCells))],
  json: { ...row, surveys },
})

const showSurvey = (survey: Survey): Answer => {
  const assessed = assess(catalogue, factsOf(survey))
  const said = sayAssessed(assessed, { units: survey.ruleBook === 'us' ? 'us' : 'metric', axleCount: survey.rig.trailer.axleCount })
  return { lines: [surveyCells(survey).join('  '), '', ...said.lines], json: { ...survey, assessed: said.json } }
}

/** `show`: a rig with its surveys, or a survey with its findings. */
export const show: Command = {
  words: [1, 1],
  options: ['folder'],
  run: (given) =>
    readYard(given, async (desk) => {
      const named = await findNamed(desk, given.words[0] ?? '', ['rig', 'survey'])
      if (named.kind === 'survey') return showSurvey(await desk['surveys.get']({ surveyId: named.survey.id }))
      return showRig(named.rig, await everySurvey(desk, named.rig.id))
    }),
}
