import { catalogue as checks, catalogueVersion } from '../../shared-logic/checks/catalogue'
import type { Check } from '../../shared-logic/checks/check'
import { ruleBooks } from '../../shared-logic/rules/rule-book'
import { criterionOf, saySource, sourcesOf, wordsOf } from '../../shared-logic/words/check-sentences'
import { en } from '../../shared-logic/words/en'
import type { Command } from './command'

const words = en.commandLine

interface Criterion {
  readonly criterion: string
  readonly sources: readonly string[]
}

const criteriaOf = (check: Check): Record<(typeof ruleBooks)[number], Criterion> => {
  const of = (ruleBook: (typeof ruleBooks)[number]): Criterion => ({ criterion: criterionOf(en, check, ruleBook), sources: sourcesOf(check, ruleBook).map(saySource) })
  return { us: of('us'), eu: of('eu') }
}

const same = (a: Criterion, b: Criterion): boolean => a.criterion === b.criterion && a.sources.join('\n') === b.sources.join('\n')

const criterionLines = (heading: string, { criterion, sources }: Criterion): string[] => [
  `  ${heading}`,
  `    ${words.criterion}: ${criterion}`,
  ...sources.map((source) => `    ${words.source}: ${source}`),
]

const linesOf = (check: Check): string[] => {
  const { us, eu } = criteriaOf(check)
  const { title, question } = wordsOf(en, check)
  const criteria = same(us, eu) ? criterionLines(words.bothRuleBooks, us) : [...criterionLines(en.ruleBooks.us, us), ...criterionLines(en.ruleBooks.eu, eu)]
  return [`${check.id}  ${en.stations[check.station]}: ${title}`, `  ${question}`, ...criteria, '']
}

/** `catalogue` */
export const catalogue: Command = {
  words: [0, 0],
  options: [],
  run: async () => ({
    lines: checks.flatMap(linesOf),
    json: {
      catalogueVersion,
      checks: checks.map((check) => ({
        id: check.id,
        station: check.station,
        positions: check.positions,
        title: wordsOf(en, check).title,
        question: wordsOf(en, check).question,
        how: wordsOf(en, check).how,
        fields: check.fields,
        outcomes: check.outcomes,
        ruleBooks: criteriaOf(check),
      })),
    },
  }),
}
