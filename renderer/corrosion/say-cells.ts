import { isPresent } from '../../shared-logic/corrosion/corroded-share'
import { halfWidth } from '../../shared-logic/corrosion/growth'
import type { Trail } from '../../shared-logic/corrosion/trails'
import { measured, type UnitSystem } from '../../shared-logic/units/quantity'
import { formatQuantity } from '../../shared-logic/units/convert'
import { sayShortGrade } from '../../shared-logic/words/corrosion/grade'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'

/** What a row or a card tells of a spot, ready to be shown. */
export interface SpotCells {
  readonly place: string
  readonly about: string
  readonly area: string
  readonly share: string
  readonly depth: string
  readonly grade: string
  readonly standing: string
  readonly remedy: string
  readonly by: string
}

const depthOf = (words: Words, { last: { spot: { pitDepthM, wallM, remainingM } } }: Trail, units: UnitSystem): string => {
  const said = words.screens.corrosion.table
  const parts = [
    ...(pitDepthM === undefined ? [] : [say(said.pit, { depth: measured('smallLength', pitDepthM) }, units)]),
    ...(remainingM === undefined || wallM === undefined ? [] : [say(said.wall, { left: measured('smallLength', remainingM), wall: measured('smallLength', wallM) }, units)]),
  ]
  return parts.length === 0 ? said.unknown : parts.join(', ')
}

const areaOf = (words: Words, { last: { area, isAssumed } }: Trail, units: UnitSystem): string => {
  const said = words.screens.corrosion.table
  return area === undefined ? said.unknown : say(isAssumed ? said.areaAssumed : said.areaWithin, { area: measured('area', area.value), uncertainty: measured('area', halfWidth(area)) }, units)
}

/** The cells of one spot. A repaired spot has no measures of its own. */
export const sayCells = (words: Words, trail: Trail, units: UnitSystem): SpotCells => {
  const { last: { spot, share, grading }, standing } = trail
  const { kinds, materials } = words.screens.survey.spots
  const { table } = words.screens.corrosion
  const about = say(words.corrosion.grade.about, { component: words.corrosion.components[grading.component], material: materials[spot.material], kind: kinds[spot.kind] }, units)
  const base = { place: spot.place, about, standing: words.corrosion.standings[standing] }
  if (!isPresent(spot)) return { ...base, area: '', share: '', depth: '', grade: '', remedy: words.corrosion.remedies.none, by: '' }
  const { remedy } = grading.gravest === grading.structure.finding ? grading.structure : grading.coating
  return {
    ...base, area: areaOf(words, trail, units), share: share === undefined ? table.unknown : formatQuantity('ratio', share.value, units), depth: depthOf(words, trail, units), grade: sayShortGrade(words, grading),
    remedy: words.corrosion.remedies[remedy], by: grading.by === undefined ? '' : words.byWhens[grading.by],
  }
}
