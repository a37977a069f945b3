import { harms } from '../proof/originals'
import { say } from '../words/say'
import { measuredOn } from '../photographs/measured-on'
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
export const originalsHarmed = (context: ReportContext): Pick<ReportDocument, 'originalsHarmed' | 'harmInShort'> => {
  const { words, units, harmed } = context
  if (harmed === undefined || harmed.size === 0) return {}
  const { notAll, inShort } = words.report.photographs
  return { originalsHarmed: say(notAll, { harmed: sayHarmed(context) }, units), harmInShort: say(harmed.size === 1 ? inShort.one : inShort.many, { count: harmed.size }, units) }
}

/** Whether the picture of one whose original is harmed is printed all the same, from its copy. */
const isCopyPrinted = ({ survey, photographs, harmed }: ReportContext, withoutPicture: ReadonlySet<string>): boolean => {
  const printed = new Set([...photographs.map(({ photograph }) => photograph.sha256), ...measuredOn(survey)])
  return [...(harmed ?? [])].some(([sha256]) => printed.has(sha256) && !withoutPicture.has(sha256))
}

/** What the photographs are worth as evidence, in a paragraph; none where the survey has no photograph. `withoutPicture` are hashes of those of which nothing can be printed. */
export const photographMethod = (context: ReportContext, withoutPicture: ReadonlySet<string>): string[] => {
  const { survey, words, units, harmed, photographs } = context
  if (survey.photographs.length === 0 && !isHarmed(context)) return []
  const { method } = words.report.photographs
  const kept = harmed === undefined ? method.ofFile : isHarmed(context) ? say(method.notAll, { harmed: sayHarmed(context) }, units) : method.asTheyCameIn
  const isOwnClock = photographs.some(({ photograph }) => timeTaken(photograph, survey.zone)?.by === 'program')
  return [[kept, ...(isCopyPrinted(context, withoutPicture) ? [method.fromCopies] : []), method.fromTheCamera, ...(isOwnClock ? [method.ownClock] : [])].join(' ')]
}
