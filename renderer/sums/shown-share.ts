import { measured, type Measured } from '../../shared-logic/units/quantity'

/** A share to a tenth of a per cent: finer than any scale tells. */
export const shownShare = (share: number): Measured => measured('ratio', Math.round(share * 1000) / 1000)
