import { assessFile, settingsOfFile } from '../../shared-logic/survey/file-to-survey'
import { findingsOf, notSeenOf } from '../../shared-logic/survey/findings'
import { summarize, summarizeByStation, type Assessed, type Summary } from '../../shared-logic/survey/assess'
import type { UnitSystem } from '../../shared-logic/units/quantity'
import { becauseOf, remedyOf, wordsOf } from '../../shared-logic/words/check-sentences'
import { en } from '../../shared-logic/words/en'
import { sayPosition } from '../../shared-logic/words/position'
import { fill } from './columns'
import type { Answer, Command } from './command'
import { readSurveyFile } from './read-survey-file'

const words = en.commandLine

/** Tallies in one line. */
export const tallyLine = ({ tallies, asked, open }: Summary): string =>
  fill(words.tallies, { ...tallies, notSeen: tallies['not seen'], notApplicable: tallies['not applicable'], asked, open })

interface Reader {
  readonly units: UnitSystem
  readonly axleCount: number | undefined
}

const titleAt = (each: Assessed, axleCount: number | undefined): string => {
  const { title } = wordsOf(en, each.check)
  const place = sayPosition(each.position, axleCount)
  return place === '' ? title : `${title}, ${place}`
}

const findingLines = (finding: Assessed, { units, axleCount }: Reader): string[] => {
  const remedy = remedyOf(en, finding, units)
  const overrule = finding.answer?.overrule
  return [
    `${en.verdicts[finding.verdict]}: ${en.stations[finding.check.station]}: ${titleAt(finding, axleCount)}. ${becauseOf(en, finding, units) ?? ''}`.trimEnd(),
    ...(overrule ? [`  ${fill(words.overruled, { judged: finding.judged === undefined ? '-' : en.verdicts[finding.judged], reason: overrule.reason })}`] : []),
    ...(remedy !== undefined && finding.by !== undefined ? [`  ${fill(words.remedy, { remedy, by: en.byWhens[finding.by] })}`] : []),
  ]
}

const asData = (each: Assessed, { units }: Reader): Record<string, unknown> => ({
  check: each.check.id,
  position: each.position,
  station: each.check.station,
  title: wordsOf(en, each.check).title,
  verdict: each.verdict,
  judged: each.judged,
  because: becauseOf(en, each, units),
  remedy: remedyOf(en, each, units),
  by: each.by,
  open: each.open,
})

/** What an assessed survey comes to, in lines and as data. */
export const sayAssessed = (assessed: readonly Assessed[], reader: Reader): Answer => {
  const summary = summarize(assessed)
  const findings = findingsOf(assessed)
  return {
    lines: [
      fill(words.verdict, { verdict: en.verdicts[summary.verdict] }),
      tallyLine(summary),
      findings.length === 0 ? words.noFindings : words.findingsHeading,
      ...findings.flatMap((finding) => findingLines(finding, reader)),
    ],
    json: {
      ...summary,
      stations: summarizeByStation(assessed).map(({ station, summary: own }) => ({ station, ...own })),
      findings: findings.map((each) => asData(each, reader)),
      notSeen: notSeenOf(assessed).map((each) => ({ ...asData(each, reader), reason: each.answer?.aside?.reason })),
      checks: assessed.map((each) => asData(each, reader)),
    },
  }
}

/** `judge survey.json` */
export const judge: Command = {
  words: [1, 1],
  options: [],
  run: async (given) => {
    const file = await readSurveyFile(given.words[0] ?? '', given)
    return sayAssessed(assessFile(file), { units: settingsOfFile(file).units, axleCount: file.rig.trailer.axleCount })
  },
}
