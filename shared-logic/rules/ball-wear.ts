import { isOver, isUnder } from './beyond'

/** Lower limit of a new 50 mm ball, m. Source: tow ball guide restating 94/20/EC (50 mm, +0 / −0.39 mm). */
export const newBall50M = 0.04961
/** Wear limit of a 50 mm ball, m. Source: two vehicle makers' repair manuals ('at least 49 mm at all points'). */
const wornBall50M = 0.049
/** Greatest wear where the maker gives none. Source: New Zealand vehicle inspection requirements, towing connections. */
const wearShareLimit = 0.05

export type BallWear = 'as new' | 'worn, within limit' | 'worn out'

/** Share of the original dimension that has worn away. */
export const wearShare = (newM: number, nowM: number): number => (newM - nowM) / newM

/** Whether a pin, hook or ball is worn beyond 5 % of its original dimension; at 5 % it is not. */
export const isWornOut = (newM: number, nowM: number): boolean => isOver(wearShare(newM, nowM), wearShareLimit)

/** The least diameter at which a ball of this nominal size stays in use, m. */
export const leastBallInUseM = (nominalM: number): number => (isFifty(nominalM) ? wornBall50M : nominalM * (1 - wearShareLimit))

/** Diameters within 0.2 mm of 50 mm are the 50 mm ball; 2 in is 50.8 mm. */
const isFifty = (nominalM: number): boolean => Math.abs(nominalM - 0.05) < 0.0002

/** Judges a measured ball against its nominal size, both m. */
export const judgeBallWear = (nominalM: number, measuredM: number): BallWear => {
  if (isFifty(nominalM)) {
    if (isUnder(measuredM, wornBall50M)) return 'worn out'
    return isUnder(measuredM, newBall50M) ? 'worn, within limit' : 'as new'
  }
  return isWornOut(nominalM, measuredM) ? 'worn out' : 'as new'
}
