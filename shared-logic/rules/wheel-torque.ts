import { footM, poundForceN } from '../units/unit-table'

/** One published range of wheel nut torque, N·m. For comparison only: the maker's figure decides, and none is ever put in for it. */
interface StudTorque {
  readonly stud: string
  readonly fromNm: number
  readonly toNm: number
}

const footPounds = (from: number, to: number) => ({ fromNm: from * poundForceN * footM, toNm: to * poundForceN * footM })

/**
 * Source: two published wheel nut tables. They differ by up to a factor of two for 9/16 and 5/8 in, which is why
 * only the 1/2 in stud, on which they agree, stands here.
 */
export const halfInchStud: StudTorque = { stud: '1/2 in', ...footPounds(90, 120) }

export const isWithinTorque = (range: StudTorque, torqueNm: number): boolean => torqueNm >= range.fromNm - 1e-6 && torqueNm <= range.toNm + 1e-6

/** Share of the maker's torque below which a nut wants tightening, and below which it is loose. Common practice, no source. */
export const slackShare = 0.9
export const looseShare = 0.5
export const overtightShare = 1.2

/** Nuts are torqued again after so far from fitting a wheel: 10, 25, 50 miles. Source: published wheel nut tables. */
const recheckDistancesM = [16_000, 40_000, 80_000] as const

/** Rechecks that have fallen due and are not recorded, given how far the wheel has run since fitting and how many were made. */
export const recheckIsDue = (sinceFittingM: number, recheckCount: number): boolean =>
  recheckDistancesM.filter((distance) => sinceFittingM >= distance).length > recheckCount
