import { z } from 'zod'
import { surveyFileSchema } from '../../shared-logic/survey/survey-file'
import { en } from '../../shared-logic/words/en'
import { WrongUsage, type Command } from './command'

/** `schema survey`: what a survey file holds, as JSON Schema of draft 2020-12. */
export const schema: Command = {
  words: [1, 1],
  options: [],
  run: async ({ words }) => {
    if (words[0] !== 'survey') throw new WrongUsage(en.commandLine.wrongUsage.schemaOf)
    const json = z.toJSONSchema(surveyFileSchema, { io: 'input' })
    return { lines: JSON.stringify(json, null, 2).split('\n'), json }
  },
}
