import type { TieDown } from '../rig/tie-down'
import type { Trailer } from '../rig/trailer'
import { lashingSources } from './sources'
import type { Source } from '../rules/rule-book'

export type FrictionGround = 'measured' | 'carpet' | 'plastic' | 'wet' | 'surface not known' | 'rollers' | 'supports not known'

/** Static friction between hull and supports that the plan reckons with, and why that figure. */
export interface FrictionUsed {
  readonly value: number
  readonly ground: FrictionGround
  readonly source?: Source
}

interface Row {
  readonly value: number
  readonly source: Source
}

/**
 * Careful figures. Carpet: plastic on plywood. Plastic caps, wet bunks, or a surface not known: plastic on aluminium.
 * Rollers, alone or with bunks, and supports not known: nothing. Source: CTU Code annex 7 appendix 2, nearest entries; rollers common practice.
 */
const carefulFriction: Readonly<Record<Exclude<FrictionGround, 'measured'>, Row>> = {
  carpet: { value: 0.2, source: lashingSources.friction },
  plastic: { value: 0.15, source: lashingSources.friction },
  wet: { value: 0.15, source: lashingSources.friction },
  'surface not known': { value: 0.15, source: lashingSources.friction },
  rollers: { value: 0, source: lashingSources.rollers },
  'supports not known': { value: 0, source: lashingSources.rollers },
}

const groundOf = (trailer: Trailer, tieDown: TieDown): Exclude<FrictionGround, 'measured'> => {
  if (trailer.supports === undefined) return 'supports not known'
  if (trailer.supports !== 'bunks') return 'rollers'
  return tieDown.supportSurface ?? 'surface not known'
}

export const frictionUsed = (trailer: Trailer, tieDown: TieDown): FrictionUsed => {
  if (tieDown.friction !== undefined) return { value: tieDown.friction, ground: 'measured' }
  const ground = groundOf(trailer, tieDown)
  return { ground, ...carefulFriction[ground] }
}
