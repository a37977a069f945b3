import type { Source } from '../../rules/rule-book'
import type { Verdict } from '../../survey/verdict'
import { formatQuantity, fromSi, shownUnit } from '../../units/convert'
import { measured, type Measured, type UnitSystem } from '../../units/quantity'
import { saySource } from '../check-sentences'

/** One line on a spot in words, with its verdict where it has one. */
export interface CorrosionLine {
  readonly text: string
  readonly verdict?: Verdict
}

/** Lines on one spot under a title: for the window, the report and the command line alike. */
export interface CorrosionSection {
  readonly title: string
  readonly lines: readonly CorrosionLine[]
  readonly sources: readonly string[]
  readonly cautions: readonly string[]
}

export const saySources = (sources: readonly Source[]): readonly string[] => [...new Set(sources.map(saySource))]

export const areaOf = (areaM2: number): Measured => measured('area', areaM2)
export const smallLength = (lengthM: number): Measured => measured('smallLength', lengthM)
export const thickness = (thicknessM: number): Measured => measured('thickness', thicknessM)
export const percent = (share: number): Measured => measured('ratio', share)

/** A finding's sentence by itself begins with a capital. */
export const capitalized = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`

/** One decimal more than a thickness is shown with: losses a year are small beside it. */
const rateDecimals: Readonly<Record<UnitSystem, number>> = { metric: 1, us: 2 }

/** '3.7 µm', '0.14 mil': a loss of zinc, finer than a reading is shown. */
export const sayLoss = (lossM: number, units: UnitSystem): string => {
  const unit = shownUnit('thickness', units)
  return `${fromSi(lossM, unit).toFixed(rateDecimals[units])} ${unit.symbol}`
}

/** kg/m2 as a person reads it: '477 g/m²', '1.56 oz/ft²' (1 oz/ft² is 305.15 g/m², GalvInfoNote 1). */
export const sayZincMass = (massKgPerM2: number, units: UnitSystem): string => (units === 'us' ? `${(massKgPerM2 / 0.305_15).toFixed(2)} oz/ft²` : `${Math.round(massKgPerM2 * 1000)} g/m²`)

/** Years without their unit: whole from ten on, one decimal below. */
export const sayYears = (years: number): string => (years >= 10 ? String(Math.round(years)) : formatQuantity('years', years, 'metric').replace(/ years$/, ''))
