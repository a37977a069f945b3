import type { Picture } from './picture'

export interface Tally {
  readonly arrived: number
  /** What arrived and what is to: each photograph once. */
  readonly total: number
  readonly notTaken: number
  /** Sent, and kept at that check before. */
  readonly alreadyThere: number
}

/** Whether the survey has it from this phone, or is to get it. */
export const isCounted = ({ state, isAlreadyThere }: Picture): boolean => state !== 'refused' && isAlreadyThere !== true

export const tallyOf = (pictures: readonly Picture[]): Tally => {
  const counted = pictures.filter(isCounted)
  return {
    arrived: counted.filter(({ state }) => state === 'arrived').length,
    total: counted.length,
    notTaken: pictures.filter(({ state }) => state === 'refused').length,
    alreadyThere: pictures.filter(({ isAlreadyThere }) => isAlreadyThere === true).length,
  }
}
