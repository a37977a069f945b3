import type { Alike } from '../photographs/alike'
import { warningsOf } from '../photographs/warnings'
import type { Photograph } from '../survey/records'
import type { Words } from './en'
import { namePlace, sayPosition } from './position'
import { say } from './say'

type Warned = Parameters<typeof warningsOf>[0]

/** Of a survey: its photographs, and what places on its rig are called. */
interface OfSurvey {
  readonly photographs: readonly Photograph[]
  readonly rig: { readonly trailer: { readonly axleCount?: number | undefined } }
}

/** What may be wrong with a photograph for its check, a sentence each: for the person who still stands there. */
export const sayWarnings = (words: Words, photograph: Warned): string[] =>
  warningsOf(photograph).map(({ key, values }) => say(words.screens.photographs.warnings[key], values, 'metric'))

/** The same in a word each, for lists. */
export const shortWarnings = (words: Words, photograph: Warned): string[] => warningsOf(photograph).map(({ key }) => words.screens.photographs.short[key])

/** 'Oil level, left front'; undefined for a photograph of no check. */
export const sayPlaceOf = (words: Words, { checkId, position }: Pick<Photograph, 'checkId' | 'position'>, { rig }: Pick<OfSurvey, 'rig'>): string | undefined =>
  checkId === undefined ? undefined : namePlace(words.checks[checkId]?.title ?? checkId, sayPosition(position ?? 'rig', rig.trailer.axleCount))

/** As it is called: its caption, or the file's name where it has none. */
export const callPhotograph = ({ caption, fileName }: Pick<Photograph, 'caption' | 'fileName'>): string => (caption.trim() === '' ? fileName : caption.trim())

/** Named one by one; of a longer series the rest is counted. */
const mostNamed = 3

/** Which other photographs of the survey are the same or look alike, and where they stand. */
export const sayAlike = (words: Words, photograph: Photograph, alike: readonly Alike[], survey: OfSurvey): string[] => {
  const said = words.screens.photographs
  const sentences = alike.flatMap(({ id, isSame }) => {
    const other = survey.photographs.find((each) => each.id === id)
    if (other === undefined) return []
    const name = callPhotograph(other)
    const place = sayPlaceOf(words, other, survey)
    if (place === undefined) return [say(isSame ? said.sameOfNone : said.alikeOfNone, { name }, 'metric')]
    if (other.checkId === photograph.checkId && other.position === photograph.position) return [say(said.alikeHere, { name }, 'metric')]
    return [say(isSame ? said.same : said.alike, { name, place }, 'metric')]
  })
  const rest = sentences.length - mostNamed
  return [...sentences.slice(0, mostNamed), ...(rest > 0 ? [say(said.alikeMore, { count: rest }, 'metric')] : [])]
}
