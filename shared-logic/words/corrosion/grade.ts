import { a123NarrowestM, type BareSpots } from '../../corrosion/bare-spots'
import type { AreaGrade } from '../../corrosion/area-scales'
import { findingValues, writtenSpan } from '../../corrosion/finding-values'
import { compareGravity, rowOf } from '../../corrosion/findings'
import type { SpotGrading, SpotResult } from '../../corrosion/grade-spot'
import { corrosionLimits as limits } from '../../corrosion/limits'
import type { Ranged } from '../../corrosion/ranged'
import { zincMassKgPerM2 } from '../../corrosion/zinc-thickness'
import { assertNever } from '../../assert-never'
import { isOver } from '../../rules/beyond'
import { measured, type UnitSystem } from '../../units/quantity'
import { footM } from '../../units/unit-table'
import type { Words } from '../en'
import { say } from '../say'
import { areaOf, capitalized, percent, saySources, sayZincMass, smallLength, thickness, type CorrosionLine, type CorrosionSection } from './section'

type Said = Words['corrosion']['grade']

const sayAreaGrade = (words: Words, grade: AreaGrade, units: UnitSystem): string => {
  const said = words.corrosion.grade
  switch (grade.scale) {
    case 'ISO 4628-3':
      return say(grade.nearest === grade.degree.measured ? said.degree : said.nearest, { degree: writtenSpan(grade.degree), nearest: grade.nearest }, units)
    case 'ASTM D610':
      return grade.letter === undefined
        ? say(said.rustGrade, { grade: writtenSpan(grade.grade) }, units)
        : say(said.rustGradeLettered, { grade: writtenSpan(grade.grade), letter: grade.letter, meaning: words.corrosion.letters[grade.letter] }, units)
    case 'ISO 10289':
      return say(grade.formula === undefined ? said.ratingWhole : said.rating, { rating: writtenSpan(grade.rating), formula: grade.formula?.toFixed(2) ?? '' }, units)
    case 'ISO 10289, appearance':
      return say(said.appearance, { rating: writtenSpan(grade.rating) }, units)
    case 'IMO MSC.1/Circ.1330':
      return say(said.condition, { condition: grade.condition.mildest === grade.condition.worst ? words.corrosion.conditions[grade.condition.worst] : `${words.corrosion.conditions[grade.condition.mildest]}–${words.corrosion.conditions[grade.condition.worst]}` }, units)
    default:
      return assertNever(grade)
  }
}

/** One grade in a few letters, for tables: 'Ri 3', '6-S', 'Rp 7', 'RA 1 C'. */
const shortGrade = (words: Words, grade: AreaGrade): string => {
  switch (grade.scale) {
    case 'ISO 4628-3':
      return `Ri ${writtenSpan(grade.degree)}`
    case 'ASTM D610':
      return `${writtenSpan(grade.grade)}${grade.letter === undefined ? '' : `-${grade.letter}`}`
    case 'ISO 10289':
      return `Rp ${writtenSpan(grade.rating)}`
    case 'ISO 10289, appearance':
      return `RA ${writtenSpan(grade.rating)} C`
    case 'IMO MSC.1/Circ.1330':
      return words.corrosion.conditions[grade.condition.worst]
    default:
      return assertNever(grade)
  }
}

/** All grades of a spot in one cell; 'not rated' where there is none. */
export const sayShortGrade = (words: Words, { coating: { grades } }: SpotGrading): string => (grades.length === 0 ? words.corrosion.grade.unrated : grades.map((grade) => shortGrade(words, grade)).join(', '))

const isWide = ({ low, high }: Ranged): boolean => low !== high

const shareTemplate = (said: Said, share: Ranged, counted: number): string => {
  if (counted > 1) return isWide(share) ? said.togetherWithin : said.together
  return isWide(share) ? said.shareWithin : said.share
}

const sizeLines = (words: Words, { area, share, counted }: SpotGrading, units: UnitSystem): string[] => {
  const said = words.corrosion.grade
  return [
    ...(area ? [say(isWide(area) ? said.areaWithin : said.area, { area: areaOf(area.value), low: areaOf(area.low), high: areaOf(area.high) }, units)] : []),
    share ? say(shareTemplate(said, share, counted), { share: percent(share.value), low: percent(share.low), high: percent(share.high), count: counted }, units) : said.shareUnknown,
  ]
}

const bareLine = (words: Words, { largestM2, totalM2, totalLimitM2, repairable, a123 }: BareSpots, units: UnitSystem): string => {
  const { bare, bareIso, bareA123 } = words.corrosion.grade
  const iso = say(bareIso[repairable ? 'kept' : 'broken'], { limit: areaOf(totalLimitM2), single: areaOf(limits.bareSpotM2) }, units)
  const plant = say(bareA123[a123.repairable ? 'kept' : 'broken'], { limit: areaOf(a123.totalLimitM2), narrowest: smallLength(a123NarrowestM) }, units)
  return say(bare, { largest: areaOf(largestM2), across: smallLength(a123.acrossM), total: areaOf(totalM2), iso, a123: plant }, units)
}

const zincLines = (words: Words, { coating: { zinc, bareSpots }, spot }: SpotGrading, units: UnitSystem): string[] => {
  const said = words.corrosion.grade
  const read = zinc && say(zinc.count === 1 ? said.zincOne : said.zinc, { count: zinc.count, lowest: thickness(zinc.lowestM), mean: thickness(zinc.meanM), mass: sayZincMass(zincMassKgPerM2(zinc.meanM, 'ISO 1461'), units) }, units)
  const minimum = zinc?.minimum
  const kept = minimum && (minimum.lowestKept ? (minimum.meanKept ? 'both' : 'mean') : minimum.meanKept ? 'lowest' : 'neither')
  return [
    ...(read === undefined ? [] : [read]),
    ...(minimum && kept && spot.wallM !== undefined ? [say(said.minimum, { wall: smallLength(spot.wallM), local: thickness(minimum.localM), meanLeast: thickness(minimum.meanM), kept: said.kept[kept], tube: thickness(minimum.a123TubeM), shape: thickness(minimum.a123ShapeM) }, units)] : []),
    ...(bareSpots ? [bareLine(words, bareSpots, units)] : []),
  ]
}

const coupleLine = (words: Words, { spot: { touches, touchingIsSmaller }, structure: { couple } }: SpotGrading, units: UnitSystem): string[] => {
  const said = words.corrosion.grade
  if (couple === undefined || touches === undefined) return []
  const line = say(said.couple, { metal: words.corrosion.metals[touches], difference: measured('voltage', couple.differenceV), limit: measured('voltage', couple.limitV), anode: said.anode[couple.anode] }, units)
  const seawater = couple.seawaterGapV === undefined ? [] : [say(said.seawater, { gap: measured('voltage', couple.seawaterGapV) }, units)]
  const isEaten = couple.anode === 'member' && !couple.accepted && touchingIsSmaller !== undefined
  return [[line, ...seawater, ...(isEaten ? [said.ratio[touchingIsSmaller ? 'smaller' : 'larger']] : [])].join(' ')]
}

const dm2PerSquareFoot = (footM * 10) ** 2

const depthLines = (words: Words, { spot: { pitDepthM, wallM, remainingM }, structure: { finding, pitLoss, generalLoss, pitsPerDm2, section } }: SpotGrading, units: UnitSystem): string[] => {
  const said = words.corrosion.grade
  return [
    ...(pitLoss !== undefined && pitDepthM !== undefined && wallM !== undefined ? [say(said.pitLoss, { depth: smallLength(pitDepthM), loss: percent(pitLoss), wall: smallLength(wallM), left: smallLength(Math.max(0, wallM - pitDepthM)) }, units)] : []),
    // The finding of thinned metal says the same.
    ...(finding !== 'thinned' && finding !== 'too thin' && generalLoss !== undefined && wallM !== undefined && remainingM !== undefined ? [say(said.generalLoss, { left: smallLength(remainingM), wall: smallLength(wallM), loss: percent(generalLoss) }, units)] : []),
    ...(pitsPerDm2 === undefined ? [] : [say(said.pits[units], { count: Math.round(units === 'us' ? pitsPerDm2 * dm2PerSquareFoot : pitsPerDm2) }, units)]),
    ...(section ? [`${say(said.section, { area: percent(section.outside.area), modulus: percent(section.outside.modulus), areaBoth: percent(section.bothSides.area), modulusBoth: percent(section.bothSides.modulus) }, units)} ${isOver(Math.max(section.outside.area, section.outside.modulus), limits.sectionLoss) ? said.sectionBeyond : said.sectionWithin}`] : []),
  ]
}

const resultLine = (words: Words, template: string, result: SpotResult, grading: SpotGrading, units: UnitSystem): CorrosionLine =>
  ({ text: say(template, { because: capitalized(say(words.corrosion.findings[result.finding].because, findingValues(grading), units)) }, units), verdict: result.verdict })

/** Findings on other matters, each with what to do about it. */
const alsoLines = (words: Words, grading: SpotGrading, units: UnitSystem): CorrosionLine[] =>
  [...grading.coating.also, ...grading.structure.also].map((finding) => {
    const { because, remedy = '' } = words.corrosion.findings[finding]
    return { text: say(words.corrosion.grade.also, { because: capitalized(say(because, findingValues(grading), units)), remedy: say(remedy, findingValues(grading), units) }, units), verdict: rowOf(finding).verdict }
  })

/** The remedies of both results, the graver first. */
const remedyLines = (words: Words, grading: SpotGrading, units: UnitSystem): CorrosionLine[] => {
  const both = [grading.coating.finding, grading.structure.finding].toSorted(compareGravity)
  return both.flatMap((finding) => {
    const { remedy } = words.corrosion.findings[finding]
    return remedy === undefined ? [] : [{ text: say(words.corrosion.grade.remedy, { remedy: say(remedy, findingValues(grading), units) }, units) }]
  })
}

/** A graded spot in sentences: size, grades, coating, metal, what to do. */
export const sayGrade = (words: Words, grading: SpotGrading, units: UnitSystem): CorrosionSection => {
  const said = words.corrosion.grade
  const { spot, coating, structure, component, gravest } = grading
  const { kinds, materials } = words.screens.survey.spots
  const about = say(said.about, { component: words.corrosion.components[component], material: materials[spot.material], kind: kinds[spot.kind] }, units)
  if (gravest === 'sound') return { title: spot.place, lines: [{ text: about }, { text: said.repaired, verdict: 'pass' }], sources: [], cautions: [] }
  const texts = [about, ...sizeLines(words, grading, units), ...coating.grades.map((grade) => sayAreaGrade(words, grade, units)), ...zincLines(words, grading, units)]
  return {
    title: spot.place,
    lines: [
      ...texts.map((text) => ({ text })), resultLine(words, said.coating, coating, grading, units),
      ...[...depthLines(words, grading, units), ...coupleLine(words, grading, units)].map((text) => ({ text })), resultLine(words, said.structure, structure, grading, units),
      ...remedyLines(words, grading, units), ...alsoLines(words, grading, units),
    ],
    sources: saySources([...coating.sources, ...structure.sources]), cautions: grading.cautions.map((caution) => words.corrosion.cautions[caution]),
  }
}
