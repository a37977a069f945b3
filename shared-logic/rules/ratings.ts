import { isOver } from './beyond'

/** Share of the rating to keep in hand. Common practice, no source: 15 to 20 %. */
export const reserveTarget = 0.15

/** Reserve as a share of the rating: 1 − loaded / rating. Negative when overloaded. Masses kg. */
export const reserveOf = (loadedKg: number, ratingKg: number): number => 1 - loadedKg / ratingKg

/**
 * The rating, kg, that would leave the wanted reserve. 'of the rating' is the definition used for verdicts;
 * 'of the load' gives the smaller figure some handbooks print. Common practice, no source.
 */
export const neededRatingKg = (loadedKg: number, reserve: number, counted: 'of the rating' | 'of the load'): number =>
  counted === 'of the rating' ? loadedKg / (1 - reserve) : loadedKg * (1 + reserve)

export type LoadVerdict = 'over' | 'little reserve' | 'within'

/** Over the rating, within it by less than the reserve wanted, or well within it. */
export const judgeLoad = (loadedKg: number, ratingKg: number): LoadVerdict => {
  if (isOver(loadedKg, ratingKg)) return 'over'
  return isOver(loadedKg, ratingKg * (1 - reserveTarget)) ? 'little reserve' : 'within'
}

/**
 * What the axles carry when coupled and loaded to the maximum mass, kg.
 * A boat trailer's axle ratings may sum to less than its maximum mass, because the tow vehicle carries the coupling load.
 * Source: NHTSA letter of 15 January 1976 on boat trailer GVWR and GAWR.
 */
export const axleLoadAtMaximumKg = (maximumKg: number, couplingLoadKg: number): number => maximumKg - couplingLoadKg

/** Cargo the trailer may carry, kg. Source: 49 CFR 571.110 S4.3.5. */
export const cargoCapacityKg = (maximumKg: number, unladenKg: number): number => maximumKg - unladenKg

export type TrailerCategory = 'O1' | 'O2' | 'O3' | 'O4'

/** Trailer category by maximum mass, kg. Source: Regulation (EU) 2018/858, definitions of category O. */
export const trailerCategoryOf = (maximumKg: number): TrailerCategory => {
  if (maximumKg <= 750) return 'O1'
  if (maximumKg <= 3_500) return 'O2'
  return maximumKg <= 10_000 ? 'O3' : 'O4'
}
