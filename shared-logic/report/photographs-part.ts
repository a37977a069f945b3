import { marksDrawing } from '../marking/marks-drawing'
import { sayLengthsHold, sayMarks } from '../marking/say-marks'
import { timeTaken } from '../photographs/time-taken'
import type { Photograph } from '../survey/records'
import { wordsOf } from '../words/check-sentences'
import { namePlace } from '../words/position'
import { say } from '../words/say'
import { sayCameraPlace, sayCameraTime } from '../words/say-camera'
import type { ReportContext } from './context'
import type { PhotographLine } from './document'
import type { NumberedPhotograph } from './number-photographs'

const subjectOf = ({ owner }: NumberedPhotograph, { words, place }: ReportContext): string => {
  if (owner === undefined) return ''
  return namePlace(wordsOf(words, owner.check).title, place(owner.position))
}

/** What it shows and what was written beneath it: 'Oil level, left front: milky. Seen from below.' */
export const showsOf = (subject: string, caption: string): string => [subject, caption].filter((part) => part !== '').join(': ')

/** That more photographs exist than are printed: '3 further photographs are kept …'. Undefined where none was left out. */
export const sayLeftOut = (leftOut: number, printed: number, { words, units }: Pick<ReportContext, 'words' | 'units'>): string | undefined => {
  if (leftOut === 0) return undefined
  const said = printed === 0 ? words.report.photographsKept.all : words.report.photographsKept.further
  return say(leftOut === 1 ? said.one : said.many, { count: leftOut }, units)
}

/** 'Photograph 3: Oil level, left front; marked: arrow, “milky”.' */
const alternativeOf = ({ photograph, number }: NumberedPhotograph, shows: string, context: ReportContext): string => {
  const what = [shows || context.words.report.noCaption, sayMarks(photograph.marks, context)].filter((part) => part !== '').join('; ')
  return say(context.words.report.photographAlternative, { number, what }, context.units)
}

/** Whose clock told the time is told with it. */
const timeOf = (photograph: Photograph, { words, units, survey }: ReportContext): Pick<PhotographLine, 'fromTheCamera' | 'byOwnClock'> => {
  const taken = timeTaken(photograph, survey.zone)
  if (taken === undefined) return {}
  const time = sayCameraTime(taken.at)
  return taken.by === 'camera' ? { fromTheCamera: time } : { byOwnClock: say(words.report.photographs.ownClock, { time }, units) }
}

const originalOf = ({ sha256 }: Photograph, { words, harmed }: ReportContext): Pick<PhotographLine, 'original'> => {
  const harm = harmed?.get(sha256)
  const { harms, captions } = words.report.photographs
  return harm === undefined ? {} : { original: { harm, word: harms[harm], sentence: captions[harm] } }
}

/** The register: every photograph that prints with its number, in the order they are met. `withPlaces` tells where each was taken. */
export const photographsPart = (context: ReportContext, withPlaces = false): PhotographLine[] =>
  context.photographs.map((each) => {
    const { photograph, owner, number } = each
    const finding = owner === undefined ? undefined : context.findingNumber(owner.key)
    const subject = subjectOf(each, context)
    const place = withPlaces ? sayCameraPlace(context.words, photograph) : undefined
    const shows = showsOf(subject, photograph.caption.trim())
    const lengthsHold = sayLengthsHold(photograph.marks, context)
    return {
      number,
      sha256: photograph.sha256,
      caption: photograph.caption.trim(),
      fileName: photograph.fileName,
      ...timeOf(photograph, context),
      ...(place !== undefined && { placeFromTheCamera: place }),
      subject,
      shows,
      alternative: alternativeOf(each, shows, context),
      quarterTurns: photograph.quarterTurns,
      ...(photograph.marks && { marks: marksDrawing(photograph.marks, photograph.quarterTurns, context) }),
      ...(lengthsHold !== undefined && { lengthsHold }),
      ...originalOf(photograph, context),
      findings: finding === undefined ? [] : [finding],
    }
  })
