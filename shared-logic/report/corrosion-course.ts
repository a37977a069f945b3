import { depthErrorM } from '../corrosion/growth'
import { trailsOf, type Trail } from '../corrosion/trails'
import { isFollowed, trailCurve, curveKinds } from '../drawings/corrosion/trail-curve'
import type { CorrosionSurvey } from '../survey/records'
import type { Spot } from '../survey/spot'
import { measured } from '../units/quantity'
import { sayTrail } from '../words/corrosion/trail'
import { say } from '../words/say'
import type { ReportContext } from './context'
import type { SumsFigure } from './sums-document'

/** The spots of this survey among those of the rig's earlier ones. */
export interface Course {
  /** The trail a spot of this survey ends. */
  readonly trailTo: (spot: Spot, position: string) => Trail | undefined
  /** Noted before, and by this survey neither found again nor found repaired. */
  readonly notLookedAt: readonly Trail[]
}

type Places = CorrosionSurvey['places']

/** What was recorded later, or is this survey, is none of its past. A survey still under way may change: only what was issued counts. */
const isPast = ({ id, surveyDate }: ReportContext['survey']) => (earlier: CorrosionSurvey): boolean =>
  earlier.surveyId !== id && earlier.status === 'issued' && earlier.date <= surveyDate

export const courseOf = ({ survey }: ReportContext, places: Places, earlier: readonly CorrosionSurvey[]): Course => {
  const { id, surveyDate, rig } = survey
  const trails = trailsOf([...earlier.filter(isPast(survey)), { surveyId: id, date: surveyDate, places }], { trailer: rig.trailer })
  return {
    trailTo: (spot, position) => trails.find(({ last, position: at }) => last.surveyId === id && at === position && last.spot.id === spot.id),
    notLookedAt: trails.filter(({ last }) => last.surveyId !== id && last.spot.state !== 'repaired'),
  }
}

const isOfMany = (trail: Trail | undefined): trail is Trail => (trail?.points.length ?? 0) > 1

/** How the spot stands against the surveys before, look by look, what changed, and when the next grade is reached. */
export const courseLines = (trail: Trail | undefined, { words, units }: ReportContext): { readonly lines: readonly string[]; readonly cautions: readonly string[] } => {
  if (!isOfMany(trail)) return { lines: [], cautions: [] }
  const { lines, cautions } = sayTrail(words, trail, units)
  const texts = lines.map(({ text }) => text)
  // That it is repaired the grade says already.
  return { lines: trail.standing === 'healed' ? texts.slice(1, trail.points.length + 1) : texts, cautions }
}

/** A curve of each measure that two surveys or more have. */
export const courseCurves = (trail: Trail | undefined, { words, units }: ReportContext): SumsFigure[] => {
  if (!isOfMany(trail)) return []
  const { curves } = words.screens.corrosion
  const points = sayTrail(words, trail, units).lines.slice(1, trail.points.length + 1).map(({ text }) => text.replace(/\.$/, '')).join('; ')
  return curveKinds.filter((kind) => isFollowed(trail, kind)).flatMap((kind) => {
    const drawing = trailCurve(trail, kind, { words, units, isSmall: true })
    const { title, note, alternative } = curves[kind]
    return drawing ? [{ drawing, caption: say(words.report.corrosion.curve, { title, note: say(note, { error: measured('smallLength', depthErrorM) }, units) }, units), alternative: say(alternative, { points }, units) }] : []
  })
}
