import type { Quantity, UnitSystem } from '../../units/quantity'
import type { Words } from '../../words/en'
import type { Role } from '../drawing'

/** One look on a curve; `low` to `high` its bar. */
export interface ChartPoint {
  readonly date: string
  readonly value: number
  readonly low: number
  readonly high: number
  /** The bar was assumed, not recorded. */
  readonly isAssumed?: boolean
  /** Found repaired: the curve ends before it and begins anew after it. */
  readonly isRepaired?: boolean
}

export interface ChartLine {
  /** At the end of the line where there are several. */
  readonly name?: string
  readonly points: readonly ChartPoint[]
  readonly dashed?: true
}

/** A level that means something, with its name at the right. `begins`: what it names lies above it. */
export interface ChartLevel {
  readonly value: number
  readonly name: string
  readonly role: Role
  readonly begins?: true
}

/** When a level is reached, soonest and latest; open where the latest cannot be told. */
export interface ChartForecast {
  readonly level: number
  readonly earliestDate: string
  readonly latestDate?: string
}

/** What one curve over the surveys shows; SI values of one quantity. */
export interface Chart {
  readonly quantity: Quantity
  readonly lines: readonly ChartLine[]
  readonly levels: readonly ChartLevel[]
  readonly forecast?: ChartForecast
  /** Where the values begin; at nothing when absent. */
  readonly floor?: number
}

export interface ChartText {
  readonly words: Words
  readonly units: UnitSystem
  /** 320 units wide instead of 620, so that its figures can be read in a narrow column. */
  readonly isSmall?: boolean
}
