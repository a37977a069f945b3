import { z } from 'zod'
import { gradeFileSchema } from '../../shared-logic/corrosion/grade-file'
import { sumsFileJsonSchema } from '../../shared-logic/sums/sums-file'
import { surveyFileSchema } from '../../shared-logic/survey/survey-file'
import { withTexts } from '../../shared-logic/units/written-file'
import { en } from '../../shared-logic/words/en'
import { WrongUsage, type Command } from './command'

const schemas: ReadonlyMap<string, () => unknown> = new Map([
  ['survey', () => z.toJSONSchema(surveyFileSchema, { io: 'input' })],
  ['sums', sumsFileJsonSchema],
  ['grade', () => withTexts(z.toJSONSchema(gradeFileSchema, { io: 'input' }))],
])

/** `schema survey`, `schema sums`, `schema grade`: what a file of that kind holds, as JSON Schema of draft 2020-12. */
export const schema: Command = {
  words: [1, 1],
  options: [],
  run: async ({ words }) => {
    const make = schemas.get(words[0] ?? '')
    if (!make) throw new WrongUsage(en.commandLine.wrongUsage.schemaOf)
    const json = make()
    return { lines: JSON.stringify(json, null, 2).split('\n'), json }
  },
}
