import type { Bounded } from '../../load/bounded'
import type { LoadItem } from '../../load/load-items'
import type { LimitLine } from '../../load/limits'
import type { LoadSheet } from '../../load/load-sheet'
import { densities } from '../../load/densities'
import { measured, type UnitSystem } from '../../units/quantity'
import { saySource } from '../check-sentences'
import type { Words } from '../en'
import { say } from '../say'
import { sayWaits, type SumsLine, type SumsSection } from './section'

const mass = (massKg: number) => measured('mass', massKg)

const sayBounded = (words: Words, name: string, { massKg, lowKg, highKg }: Bounded, units: UnitSystem): string => {
  const { load } = words.sums
  if (massKg !== undefined) return say(load.line, { name, mass: mass(massKg) }, units)
  if (highKg !== undefined) return say(load.between, { name, low: mass(lowKg), high: mass(highKg) }, units)
  return lowKg > 0 ? say(load.atLeast, { name, low: mass(lowKg) }, units) : say(load.unknown, { name }, units)
}

/** What a line of the load sheet is called. */
export const nameOfItem = (words: Words, { kind, name }: LoadItem): string =>
  say(words.sums.load.items[kind], { name: (kind === 'tank' ? words.fieldOptions['boat.tanks.contents']?.[name ?? ''] : name) ?? '' }, 'metric')

const sayLimit = (words: Words, { limit, load, reserveKg, reserveShare, standing, verdict }: LimitLine, units: UnitSystem): SumsLine => {
  const said = words.sums.load
  const name = words.sums.limits[limit.id]
  if (limit.ratingKg === undefined) return { text: say(said.ratingUnknown, { limit: name }, units), verdict }
  const rating = mass(limit.ratingKg)
  if (load?.massKg === undefined || reserveKg === undefined || reserveShare === undefined)
    return { text: say(said.bounded, { limit: name, rating, standing: words.sums.standings[standing] }, units), verdict }
  return {
    verdict,
    text: standing === 'over'
      ? say(said.over, { limit: name, rating, load: mass(load.massKg), excess: mass(-reserveKg) }, units)
      : say(said.limit, { limit: name, rating, load: mass(load.massKg), reserve: mass(reserveKg), share: measured('ratio', Math.round(reserveShare * 1000) / 1000), standing: words.sums.standings[standing] }, units),
  }
}

/** What the newest weighing says of the limits, where the sheet is reckoned: those it breaks or comes near, else that it breaks none. */
const sayScales = (words: Words, { byScales }: LoadSheet, units: UnitSystem): SumsLine[] => {
  if (!byScales || byScales.lines.length === 0) return []
  const said = words.sums.load
  const date = { date: byScales.date }
  const named = byScales.lines.filter(({ standing }) => standing !== 'within').map((line) => sayLimit(words, line, units))
  return named.length === 0 ? [{ text: say(said.scalesHold, { date }, units), verdict: 'pass' }] : named.map(({ text, ...line }) => ({ ...line, text: say(said.byScales, { date, line: text }, units) }))
}

/** What follows from the load sheet as a whole. */
export const sayConclusions = (words: Words, sheet: LoadSheet, units: UnitSystem): SumsLine[] => {
  const { governing, narrowest, fullKg, smallestRatingKg, weighedOn, reserveWanted } = sheet
  const said = words.sums
  return [
    ...sayScales(words, sheet, units),
    ...(weighedOn === undefined ? [] : [{ text: say(said.load.weighedBasis, { date: { date: weighedOn } }, units) }]),
    ...(narrowest?.underPlateKg === undefined ? [] : [{ text: say(said.load.less, { carries: said.load.carries[narrowest.id], rating: mass(narrowest.ratingKg), less: mass(narrowest.underPlateKg) }, units) }]),
    ...(governing === undefined ? [] : [{ text: say(said.load.governing, { limit: said.limits[governing] }, units) }]),
    ...(fullKg === undefined || smallestRatingKg === undefined ? [] : [{ text: say(said.load.full, { full: mass(fullKg), rating: mass(smallestRatingKg), reserve: measured('ratio', reserveWanted) }, units) }]),
  ]
}

const sourcesOf = ({ items }: LoadSheet): string[] => {
  const held = new Set(items.map(({ name }) => name))
  return [...new Set(Object.entries(densities).filter(([contents]) => held.has(contents)).map(([, { source }]) => saySource(source)))]
}

export const sayLoad = (words: Words, sheet: LoadSheet, units: UnitSystem): SumsSection => ({
  id: 'load', title: words.sums.parts.load, formula: words.sums.load.formula, sources: [...sourcesOf(sheet), saySource({ kind: 'common practice' })], cautions: [],
  lines: [
    ...sheet.items.map((item): SumsLine => ({ text: sayBounded(words, nameOfItem(words, item), item, units) })),
    { text: sayBounded(words, words.sums.load.total, sheet.total, units) },
    ...sayWaits(words, sheet.total.waitsFor, units),
    ...sheet.lines.map((line) => sayLimit(words, line, units)),
    ...sayConclusions(words, sheet, units),
  ],
})
