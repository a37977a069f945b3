import type { Lever } from './lever'
import type { WeighedResult } from './weighed'

/** Differences smaller than these are no news: 2 % of the total, 1 % of the total at the coupling. Common practice, no source. */
const totalWithin = 0.02
const couplingWithin = 0.01

export const comparisonMeanings = ['agrees', 'heavier than reckoned', 'lighter than reckoned', 'coupling heavier', 'coupling lighter'] as const
export type ComparisonMeaning = (typeof comparisonMeanings)[number]

/** Weighed less reckoned, kg. `asIf`: the mass, and its place aft of the ball, that would explain both differences together. */
export interface Comparison {
  readonly date: string
  readonly method: WeighedResult['method']
  readonly totalKg: number
  readonly couplingKg: number
  readonly asIf?: { readonly massKg: number; readonly atM: number }
  readonly meanings: readonly ComparisonMeaning[]
}

const meaningsOf = (totalKg: number, couplingKg: number, lever: Lever): ComparisonMeaning[] => {
  const meanings: ComparisonMeaning[] = []
  if (Math.abs(totalKg) > totalWithin * lever.totalKg) meanings.push(totalKg > 0 ? 'heavier than reckoned' : 'lighter than reckoned')
  if (Math.abs(couplingKg) > couplingWithin * lever.totalKg) meanings.push(couplingKg > 0 ? 'coupling heavier' : 'coupling lighter')
  return meanings.length > 0 ? meanings : ['agrees']
}

/** The newest weighing that gives total and coupling load, held against the reckoned lever. Source: statics (difference of masses and of moments). */
export const compare = (lever: Lever, weighed: readonly WeighedResult[]): Comparison | undefined => {
  const newest = weighed.find((result) => result.totalKg !== undefined && result.couplingKg !== undefined)
  if (newest?.totalKg === undefined || newest.couplingKg === undefined) return undefined
  const totalKg = newest.totalKg - lever.totalKg
  const couplingKg = newest.couplingKg - lever.couplingKg
  const meanings = meaningsOf(totalKg, couplingKg, lever)
  const heavier = Math.abs(totalKg) > totalWithin * lever.totalKg
  const asIf = heavier && newest.centreM !== undefined ? { massKg: totalKg, atM: (newest.totalKg * newest.centreM - lever.totalKg * lever.centreM) / totalKg } : undefined
  return { date: newest.date, method: newest.method, totalKg, couplingKg, ...(asIf && { asIf }), meanings }
}
