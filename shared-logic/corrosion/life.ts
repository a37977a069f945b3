import type { Source } from '../rules/rule-book'
import { commonPractice, fromMemory, published, tradeLiterature } from '../rules/cite'
import type { Trailer } from '../rig/trailer'
import type { Spot } from '../survey/spot'
import { materialRows } from './area-scales'
import { yearOf, yearsBetween } from './calendar'
import { componentOf, componentRows } from './components'
import { classesOf, classOfLoss, isRememberedRate, slowsDown, topRate, type ClassRange, type CorrosivityClass } from './corrosivity'
import { lossExponents, yearsLeftByPower, yearsLeftEvenly } from './long-term-loss'

const µm = 1e-6

/** What a life needs to be worked out: all of it or nothing is said. Dotted paths, as `sayField` labels them. */
export const lifeNeeds = ['spots.coatingReadingsM', 'trailer.exposure', 'trailer.builtYear'] as const
export type LifeNeed = (typeof lifeNeeds)[number]

/** Years left, cautious to hopeful. */
export interface YearsRange {
  readonly leastYears: number
  readonly mostYears: number
}

/** Life by the place's class: even loss at the top rate of the worst class, against loss that slows from the present age on in the mildest. */
export interface LifeByTable extends YearsRange {
  readonly classes: ClassRange
  readonly slows: boolean
  readonly ageYears: number
  /** No text was found for the rate of the worst class. */
  readonly isRemembered: boolean
}

/** One survey's readings of the same spot, newest last. */
export interface DatedReadings {
  readonly date: string
  readonly readingsM: readonly number[]
}

/** Life by what was measured between the first and the last of the surveys. */
export interface LifeObserved {
  readonly fromDate: string
  readonly toDate: string
  readonly spanYears: number
  readonly lossM: number
  /** m a year; absent where no loss beyond the gauge's error was measured. */
  readonly rateM?: number
  readonly years?: YearsRange
  /** Until 20 µm are left: the yardstick for coating it again in time. */
  readonly untilReserve?: YearsRange
  /** The class whose zinc goes that fast; absent while there is no rate. 'worse than the table' above CX. */
  readonly asIn?: CorrosivityClass | 'worse than the table'
  readonly trusted: boolean
  /** Why it is not trusted. */
  readonly doubt?: 'less than a year apart' | 'loss within the error of the gauge'
}

/** Why the table or the measured rate is believed. */
export type Belief = 'measured rate' | 'table'

export type CoatingLife =
  | { readonly kind: 'no zinc to read'; readonly material: Spot['material'] }
  | { readonly kind: 'waits'; readonly for: readonly LifeNeed[] }
  | {
      readonly kind: 'worked out'
      readonly lowestM: number
      readonly table: LifeByTable | undefined
      /** What the table waits for. */
      readonly tableWaits: readonly LifeNeed[]
      readonly observed: LifeObserved | undefined
      readonly believed: Belief
      readonly isDipped: boolean
      readonly sources: readonly Source[]
    }

/** Zinc at which it is coated again in time. Common practice, no source. */
export const lifeReserveM = 20 * µm

/** Common practice: a span of a year or more, and a loss above what a gauge errs by. */
const trustedSpanYears = 1
export const gaugeErrorM = 5 * µm

const lifeSources = {
  table: [
    published('ISO 9223:2012', 'zinc loss in the first year, from a handbook’s table'), published('ISO 9224:2012', 'Table 3 and even loss after 20 years, as transcribed'),
    tradeLiterature('galvanizing guidance', 'sea water wetting and drying keeps the protective layer from forming; life is told from the lowest reading'), commonPractice,
  ],
  remembered: fromMemory('ISO 9223, zinc in class CX up to 25 µm a year'),
} as const

const lowestOf = (readingsM: readonly number[]): number => Math.min(...readingsM)
const meanOf = (readingsM: readonly number[]): number => readingsM.reduce((sum, reading) => sum + reading, 0) / readingsM.length

/** What is known of the rig and the day. `ageYears` as told by the year built. */
export interface LifeSetting {
  readonly trailer: Pick<Trailer, 'exposure' | 'builtYear'>
  readonly surveyDate: string
  readonly position?: string
}

/** Whole years since the year built; undefined where that is not known or lies ahead. */
const ageOf = ({ trailer: { builtYear }, surveyDate }: LifeSetting): number | undefined => {
  const age = builtYear === undefined ? undefined : yearOf(surveyDate) - builtYear
  return age === undefined || age < 0 ? undefined : age
}

/** The range by the class table for so much zinc, m. */
export const lifeByTable = (lowestM: number, classes: ClassRange, ageYears: number, slows: boolean): LifeByTable => {
  const top = topRate('zinc', classes.worst) * µm
  const mild = topRate('zinc', classes.mildest) * µm
  const evenly = yearsLeftEvenly(mild, lowestM)
  // Within the first year the power law is the faster of the two.
  const mostYears = slows ? Math.max(evenly, yearsLeftByPower(mild, ageYears, lowestM, lossExponents.zinc.average)) : evenly
  return { leastYears: yearsLeftEvenly(top, lowestM), mostYears, classes, slows, ageYears, isRemembered: isRememberedRate('zinc', classes.worst) }
}

const doubtOf = (spanYears: number, lossM: number): LifeObserved['doubt'] => {
  if (spanYears < trustedSpanYears) return 'less than a year apart'
  return lossM > gaugeErrorM ? undefined : 'loss within the error of the gauge'
}

/** The rate from the means of the first and the last survey, the life from the lowest reading; the rate's range is the gauge's error over the span. */
export const lifeObserved = (series: readonly DatedReadings[]): LifeObserved | undefined => {
  const [first, last] = [series[0], series.at(-1)]
  if (first === undefined || last === undefined || first === last) return undefined
  const spanYears = yearsBetween(first.date, last.date)
  if (spanYears <= 0) return undefined
  const lossM = meanOf(first.readingsM) - meanOf(last.readingsM)
  const doubt = doubtOf(spanYears, lossM)
  const base = { fromDate: first.date, toDate: last.date, spanYears, lossM, trusted: doubt === undefined, ...(doubt && { doubt }) }
  if (lossM <= gaugeErrorM) return base
  const rateM = lossM / spanYears
  const fastM = (lossM + gaugeErrorM) / spanYears
  const slowM = (lossM - gaugeErrorM) / spanYears
  const lowestM = lowestOf(last.readingsM)
  const yearsKeeping = (keepM: number): YearsRange => ({ leastYears: yearsLeftEvenly(fastM, lowestM, keepM), mostYears: yearsLeftEvenly(slowM, lowestM, keepM) })
  return { ...base, rateM, years: yearsKeeping(0), untilReserve: yearsKeeping(lifeReserveM), asIn: classOfLoss('zinc', rateM / µm) ?? 'worse than the table' }
}

const tableFor = (lowestM: number, isDipped: boolean, setting: LifeSetting): { readonly table?: LifeByTable; readonly waits: readonly LifeNeed[] } => {
  const { exposure } = setting.trailer
  const ageYears = ageOf(setting)
  if (exposure === undefined || ageYears === undefined) return { waits: [...(exposure === undefined ? ['trailer.exposure' as const] : []), ...(ageYears === undefined ? ['trailer.builtYear' as const] : [])] }
  return { table: lifeByTable(lowestM, classesOf(exposure, isDipped), ageYears, slowsDown(exposure, isDipped)), waits: [] }
}

/**
 * Years until the zinc of a spot's place is used up, as a range: by the corrosivity of the place, and by the rate measured where the spot
 * was followed. `series`: the readings of its surveys, oldest first, the present one last. Says what it waits for instead of guessing.
 */
export const coatingLife = (spot: Spot, setting: LifeSetting, series: readonly DatedReadings[] = []): CoatingLife => {
  if (!materialRows[spot.material].readsZinc) return { kind: 'no zinc to read', material: spot.material }
  const readingsM = spot.coatingReadingsM ?? []
  const lowestM = readingsM.length === 0 ? undefined : lowestOf(readingsM)
  const { isDipped } = componentRows[componentOf(spot, setting.position)]
  const { table, waits } = tableFor(lowestM ?? 0, isDipped, setting)
  const observed = lifeObserved(series)
  if (lowestM === undefined) return { kind: 'waits', for: ['spots.coatingReadingsM', ...waits] }
  const isTrusted = observed?.trusted === true
  if (table === undefined && !isTrusted) return { kind: 'waits', for: waits }
  return {
    kind: 'worked out', lowestM, table, tableWaits: waits, observed, believed: isTrusted ? 'measured rate' : 'table', isDipped,
    sources: table ? [...lifeSources.table, ...(table.isRemembered ? [lifeSources.remembered] : [])] : [commonPractice],
  }
}
