import { harms } from '../proof/originals'
import { say } from '../words/say'
import { timeTaken } from '../photographs/time-taken'
import type { ReportContext } from './context'
import type { ReportDocument } from './document'

/** 'Original missing: photographs 3, 5. Original changed of photographs not printed: 1.' Those left out are counted, not named. */
const sayHarmed = ({ words, units, harmed, photographs }: ReportContext): string => {
  const said = words.report.photographs
  const sentences = harms.flatMap((harm) => {
    const hashes = new Set([...(harmed ?? [])].filter(([, each]) => each === harm).map(([sha256]) => sha256))
    const printed = photographs.filter(({ photograph }) => hashes.has(photograph.sha256))
    const unprinted = hashes.size - new Set(printed.map(({ photograph }) => photograph.sha256)).size
    const values = { harm: said.harms[harm], numbers: printed.map(({ number }) => number).join(', '), count: unprinted }
    return [...(printed.length > 0 ? [say(printed.length === 1 ? said.harmed.printedOne : said.harmed.printed, values, units)] : []), ...(unprinted > 0 ? [say(said.harmed.unprinted, values, units)] : [])]
  })
  return sentences.map((sentence) => `${sentence}.`).join(' ')
}

const isHarmed = ({ harmed }: ReportContext): boolean => harmed !== undefined && harmed.size > 0

/** Which originals were not found as they came in; nothing where all were, or where none was looked at. */
export const originalsHarmed = (context: ReportContext): Pick<ReportDocument, 'originalsHarmed'> =>
  isHarmed(context) ? { originalsHarmed: say(context.words.report.photographs.notAll, { harmed: sayHarmed(context) }, context.units) } : {}

/** What the photographs are worth as evidence, in a paragraph; none where the survey has no photograph. */
export const photographMethod = (context: ReportContext): string[] => {
  const { survey, words, units, harmed, photographs } = context
  if (survey.photographs.length === 0 && !isHarmed(context)) return []
  const { method } = words.report.photographs
  const kept = harmed === undefined ? method.ofFile : isHarmed(context) ? say(method.notAll, { harmed: sayHarmed(context) }, units) : method.asTheyCameIn
  const isOwnClock = photographs.some(({ photograph }) => timeTaken(photograph, survey.zone)?.by === 'program')
  return [[kept, method.fromTheCamera, ...(isOwnClock ? [method.ownClock] : [])].join(' ')]
}
