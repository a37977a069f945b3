import { refuse } from '../../shared-logic/contract/refusal'
import { tieDownPlanOf } from '../../shared-logic/lashing/plan'
import { refuseFaultsOf } from '../../shared-logic/sums/check-input'
import { sumsOf } from '../../shared-logic/sums/sums'
import { sumsFileSchema, type SumsFile } from '../../shared-logic/sums/sums-file'
import { en } from '../../shared-logic/words/en'
import { saySums } from '../../shared-logic/words/sums'
import { sayTieDown } from '../../shared-logic/words/sums/tie-down'
import type { SumsSection } from '../../shared-logic/words/sums/section'
import { say } from '../../shared-logic/words/say'
import { localDate } from '../desk/local-date'
import type { Answer, Command } from './command'
import { withWrittenFile } from './read-written-file'

const sectionLines = ({ title, lines, formula, sources, cautions }: SumsSection): string[] => [
  title,
  ...lines.map(({ text, verdict }) => `  ${verdict === undefined ? '' : `${en.verdicts[verdict]}: `}${text}`),
  ...cautions.map((caution) => `  ${caution}`),
  `  ${say(en.sums.formula, { formula }, 'metric')}`,
  ...sources.map((source) => `  ${say(en.sums.source, { source }, 'metric')}`),
]

const answer = ({ rig, ruleBook, units = ruleBook === 'us' ? 'us' : 'metric', settings }: SumsFile, today: string): Answer => {
  refuseFaultsOf(rig)
  const early = (rig.weighings ?? []).findIndex(({ date }) => date > today)
  if (early >= 0) refuse('sums.not-yet-weighed', undefined, `rig.weighings.${early}.date`)
  const sums = sumsOf(rig, ruleBook, settings)
  const plan = tieDownPlanOf(rig, ruleBook)
  const sections = [...saySums(en, sums, units, today), sayTieDown(en, plan, units)]
  return {
    lines: [rig.name, ...sections.flatMap((section) => ['', ...sectionLines(section)])],
    json: { rig: rig.name, ruleBook, sums: { ...sums, tieDown: plan }, words: sections },
  }
}

/** `sums rig.json` */
export const sums: Command = {
  words: [1, 1],
  options: [],
  run: (given) => withWrittenFile(given.words[0] ?? '', given, { schema: sumsFileSchema, kind: 'sums' }, (file) => answer(file, localDate(given.now(), Intl.DateTimeFormat().resolvedOptions().timeZone))),
}
