import { Refusal, refuse, type RefusalData } from '../../shared-logic/contract/refusal'
import { tieDownPlanOf } from '../../shared-logic/lashing/plan'
import { refuseFaultsOf } from '../../shared-logic/sums/check-input'
import { sumsOf } from '../../shared-logic/sums/sums'
import { readUnits, sumsFileSchema, unknownField, type SumsFile } from '../../shared-logic/sums/sums-file'
import { en } from '../../shared-logic/words/en'
import { saySums } from '../../shared-logic/words/sums'
import { sayTieDown } from '../../shared-logic/words/sums/tie-down'
import type { SumsSection } from '../../shared-logic/words/sums/section'
import { sayField } from '../../shared-logic/words/say-refusal'
import { say } from '../../shared-logic/words/say'
import { refusalOfIssues } from '../desk/input-refusal'
import { localDate } from '../desk/local-date'
import type { Answer, Command, Given } from './command'
import { readJsonFile } from './read-json-file'

/** Names the field by its label and by where it stands in the file. */
const naming = ({ code, values, field }: RefusalData, file: string): RefusalData => {
  const named = field === undefined ? file : `${sayField(en, field)} (${field})`
  return { code, values: { ...values, field: named }, ...(field !== undefined && { field }) }
}

const checked = (value: unknown): SumsFile => {
  const read = readUnits(value)
  const result = sumsFileSchema.safeParse(read, { reportInput: true })
  if (!result.success) {
    const [issue] = result.error.issues
    if (issue?.code !== 'unrecognized_keys') throw new Refusal(refusalOfIssues(result.error.issues))
    return refuse('sums.unknown-field', undefined, [...issue.path.map(String), issue.keys[0] ?? ''].join('.'))
  }
  const unknown = unknownField(read, result.data)
  if (unknown !== undefined) return refuse('sums.unknown-field', undefined, unknown)
  refuseFaultsOf(result.data.rig)
  return result.data
}

const readSumsFile = async (named: string, given: Given): Promise<SumsFile> => {
  const value = await readJsonFile(named, given)
  try {
    return checked(value)
  } catch (fault) {
    if (fault instanceof Refusal) throw new Refusal(naming(fault.data, named), { cause: fault })
    throw fault
  }
}

const sectionLines = ({ title, lines, formula, sources, cautions }: SumsSection): string[] => [
  title,
  ...lines.map(({ text, verdict }) => `  ${verdict === undefined ? '' : `${en.verdicts[verdict]}: `}${text}`),
  ...cautions.map((caution) => `  ${caution}`),
  `  ${say(en.sums.formula, { formula }, 'metric')}`,
  ...sources.map((source) => `  ${say(en.sums.source, { source }, 'metric')}`),
]

const answer = ({ rig, ruleBook, units = ruleBook === 'us' ? 'us' : 'metric', settings }: SumsFile, today: string): Answer => {
  const sums = sumsOf(rig, ruleBook, settings)
  const plan = tieDownPlanOf(rig, ruleBook)
  const sections = [...saySums(en, sums, units, today), sayTieDown(en, plan, units)]
  return {
    lines: [rig.name, ...sections.flatMap((section) => ['', ...sectionLines(section)])],
    json: { rig: rig.name, ruleBook, sums: { ...sums, tieDown: plan }, words: sections },
  }
}

/** `sums rig.json` */
export const sums: Command = { words: [1, 1], options: [], run: async (given) => answer(await readSumsFile(given.words[0] ?? '', given), localDate(given.now(), Intl.DateTimeFormat().resolvedOptions().timeZone)) }
