import type { couplerClasses } from '../rig/trailer'
import { inches, pounds, poundsForce } from '../units/us-customary'
import { isOver } from './beyond'

export type CouplerClass = Extract<(typeof couplerClasses)[number], `class ${number}`>

interface ClassRow {
  readonly name: CouplerClass
  readonly upToLb: number
  readonly leastBallIn: number | undefined
  readonly longitudinalLbf: number | undefined
  readonly transverseLbf: number | undefined
  /** Per chain; absent where it is the trailer's own maximum mass. */
  readonly chainLbf: number | undefined
}

/**
 * Couplers and balls by trailer weight. Source: SAE J684 as restated in COMAR 11.13.08.10; chains as restated in a table
 * of SAE J684 (2005) classes. Class 4 is sized by the trailer: three times its weight along, once across.
 */
const classRows: readonly ClassRow[] = [
  { name: 'class 1', upToLb: 2_000, leastBallIn: 1.875, longitudinalLbf: 6_000, transverseLbf: 2_000, chainLbf: 2_000 },
  { name: 'class 2', upToLb: 3_500, leastBallIn: 2, longitudinalLbf: 10_500, transverseLbf: 3_000, chainLbf: 3_500 },
  { name: 'class 3', upToLb: 5_000, leastBallIn: 2, longitudinalLbf: 15_000, transverseLbf: 4_000, chainLbf: 5_000 },
  { name: 'class 4', upToLb: 10_000, leastBallIn: undefined, longitudinalLbf: undefined, transverseLbf: undefined, chainLbf: undefined },
]

const rowOf = (massKg: number): ClassRow | undefined => classRows.find((row) => !isOver(massKg, pounds(row.upToLb)))

/** The class a trailer of this maximum mass needs; undefined above 10,000 lb, where the standard ends. */
export const couplerClassFor = (maximumKg: number): CouplerClass | undefined => rowOf(maximumKg)?.name

export const isCouplerClass = (coupler: string): coupler is CouplerClass => classRows.some(({ name }) => name === coupler)

/** Greatest trailer mass of a class, kg. */
export const classLimitKg = (name: CouplerClass): number => pounds(classRows.find((row) => row.name === name)?.upToLb ?? 0)

/** Smallest ball a class allows, m; undefined where it follows the coupling. */
export const leastBallM = (maximumKg: number): number | undefined => {
  const least = rowOf(maximumKg)?.leastBallIn
  return least === undefined ? undefined : inches(least)
}

export interface CouplerStrength {
  readonly longitudinalN: number
  readonly transverseN: number
}

/** Least breaking strengths of coupler and ball, N; undefined above 10,000 lb. */
export const couplerStrengthFor = (maximumKg: number): CouplerStrength | undefined => {
  const row = rowOf(maximumKg)
  if (!row) return undefined
  const weightLb = maximumKg / pounds(1)
  return { longitudinalN: poundsForce(row.longitudinalLbf ?? 3 * weightLb), transverseN: poundsForce(row.transverseLbf ?? weightLb) }
}

/** Least breaking force of each safety chain, N: the class's figure, or the trailer's own weight in class 4 and above. */
export const classChainForceN = (maximumKg: number): number => poundsForce(rowOf(maximumKg)?.chainLbf ?? maximumKg / pounds(1))
