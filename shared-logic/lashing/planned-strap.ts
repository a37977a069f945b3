import type { Strap } from '../rig/tie-down'
import { weakestPartN } from '../rules/tie-down-capacity'
import { leadOf, type StrapLead } from './geometry'

/** A strap as the plan reckons with it. `limitN`: what its weakest marked part bears; absent while its own rating is not known. */
export interface PlannedStrap {
  readonly index: number
  readonly strap: Strap
  readonly lead?: StrapLead
  readonly limitN?: number
  readonly waitsFor: readonly string[]
}

const limitOf = ({ ratedN, fittingRatedN, anchorRatedN }: Strap): number | undefined =>
  ratedN === undefined ? undefined : weakestPartN(ratedN, ...[fittingRatedN, anchorRatedN].filter((part) => part !== undefined))

/** Source of the weakest part: 49 CFR 393.108(a). The winch itself is no tiedown; its strap counts with its own rating: common practice, no source. */
export const plannedStrap = (strap: Strap, index: number): PlannedStrap => {
  const lead = leadOf(strap)
  const limitN = limitOf(strap)
  const path = `tieDown.straps.${index}`
  return {
    index,
    strap,
    ...(lead && { lead }),
    ...(limitN !== undefined && { limitN }),
    waitsFor: [
      ...(limitN === undefined ? [`${path}.ratedN`] : []),
      ...(lead ? [] : strap.boat && !strap.trailer ? [`${path}.trailer`] : [`${path}.boat`]),
      ...(strap.route === 'over the top' && strap.tensionN === undefined ? [`${path}.tensionN`] : []),
    ],
  }
}
