import { gaugeErrorM, lifeReserveM, type CoatingLife, type LifeByTable, type LifeNeed, type LifeObserved, type YearsRange } from '../../corrosion/life'
import { measured, type UnitSystem } from '../../units/quantity'
import type { Words } from '../en'
import { say } from '../say'
import { sayField } from '../say-refusal'
import { sayLoss, saySources, sayYears, thickness, type CorrosionLine, type CorrosionSection } from './section'

/** A life further off than this says no more than that. */
const longYears = 50

const sayRange = (words: Words, { leastYears, mostYears }: YearsRange, units: UnitSystem): string => {
  const said = words.corrosion.life
  if (leastYears >= longYears) return say(said.long, { most: longYears }, units)
  const [least, most] = [sayYears(leastYears), sayYears(Math.min(mostYears, longYears))]
  return least === most ? say(said.oneFigure, { most }, units) : say(said.range, { least, most: mostYears > longYears ? say(said.long, { most: longYears }, units).replace(/ years$/, '') : most }, units)
}

const sayWaiting = (words: Words, needs: readonly LifeNeed[]): string => needs.map((need) => sayField(words, need)).join('; ')

const tableLine = (words: Words, table: LifeByTable, units: UnitSystem): string => {
  const said = words.corrosion.life
  const { mildest, worst } = table.classes
  const classes = say(mildest === worst ? said.oneClass : said.classRange, { mildest, worst }, units)
  return say(table.slows ? said.table : said.tableEven, { classes, years: sayRange(words, table, units), age: table.ageYears }, units)
}

const observedLine = (words: Words, observed: LifeObserved, units: UnitSystem): string => {
  const said = words.corrosion.life
  const { fromDate, toDate, lossM, rateM, years, untilReserve, asIn } = observed
  const dates = { from: { date: fromDate }, to: { date: toDate } }
  if (rateM === undefined || years === undefined || untilReserve === undefined || asIn === undefined) return say(said.observedNone, dates, units)
  const gaps = { ...dates, loss: sayLoss(lossM, units), rate: sayLoss(rateM, units), years: sayRange(words, years, units), reserve: sayRange(words, untilReserve, units), keep: thickness(lifeReserveM), asIn }
  return say(asIn === 'worse than the table' ? said.observedBeyond : said.observed, gaps, units)
}

const beliefLine = (words: Words, { believed, observed }: Extract<CoatingLife, { kind: 'worked out' }>, units: UnitSystem): string => {
  const said = words.corrosion.life
  if (observed === undefined) return said.believedTableAlone
  if (believed === 'measured rate') return say(said.believedRate, { span: measured('years', observed.spanYears) }, units)
  return say(said.believedTable, { doubt: observed.doubt === undefined ? '' : say(words.corrosion.doubts[observed.doubt], { gauge: thickness(gaugeErrorM) }, units) }, units)
}

/** Years of zinc left in sentences: by the place, by what was measured, which is believed and why; or what it waits for. */
export const sayLife = (words: Words, life: CoatingLife, units: UnitSystem): CorrosionSection => {
  const said = words.corrosion.life
  const section = (lines: readonly CorrosionLine[]): CorrosionSection => ({ title: said.title, lines, sources: [], cautions: [] })
  if (life.kind === 'no zinc to read') return section([{ text: say(said.noZinc, { material: words.screens.survey.spots.materials[life.material].toLowerCase() }, units) }])
  if (life.kind === 'waits') return section([{ text: say(said.waits, { fields: sayWaiting(words, life.for) }, units), verdict: 'not seen' }])
  const { table, tableWaits, observed } = life
  const texts = [
    say(said.lowest, { lowest: thickness(life.lowestM) }, units),
    table ? tableLine(words, table, units) : say(said.tableWaits, { fields: sayWaiting(words, tableWaits) }, units),
    ...(observed ? [observedLine(words, observed, units)] : []), beliefLine(words, life, units),
  ]
  const { assumed, immersed, lowest, reading } = said.cautions
  return { title: said.title, lines: texts.map((text) => ({ text })), sources: saySources(life.sources), cautions: [...(table ? [assumed] : []), ...(life.isDipped ? [immersed] : []), lowest, reading] }
}
