import type { Assessed } from '../../shared-logic/survey/assess'
import type { Survey } from '../../shared-logic/survey/records'
import { becauseOf, wordsOf } from '../../shared-logic/words/check-sentences'
import { sayPosition } from '../../shared-logic/words/position'
import type { UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'

/** 'Oil condition' and 'left front'; the place is empty for what is asked once. */
export const nameOf = (words: Words, assessed: Assessed, survey: Pick<Survey, 'rig'>): { readonly title: string; readonly place: string } => ({
  title: wordsOf(words, assessed.check).title,
  place: sayPosition(assessed.position, survey.rig.trailer.axleCount),
})

/** Why a verdict stands, in one line: the reason of a set-aside or an overrule, or what the judge found. */
export const reasonOf = (words: Words, assessed: Assessed, units: UnitSystem): string | undefined =>
  assessed.answer?.aside?.reason ?? assessed.answer?.overrule?.reason ?? becauseOf(words, assessed, units)
