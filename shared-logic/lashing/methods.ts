import type { RuleBook, Source } from '../rules/rule-book'
import { securementForces } from '../rules/securement-forces'
import { accelerations } from './direct-strap'
import type { PullDirection } from './geometry'
import { lashingSources } from './sources'

/** What a strap is reckoned to bear: its marked limit (WLL, LC), or its breaking strength. */
export type Against = 'limit' | 'breaking'

/** A way to hold needs against straps: shares of gravity by direction, safety over the top, and how tension is shared. */
export interface Method {
  readonly id: 'us working' | 'us breaking' | 'eu'
  readonly against: Against
  readonly shares: Readonly<Record<PullDirection, number>>
  /** Divides what straps over the top hold with. */
  readonly safety: Readonly<Record<PullDirection, number>>
  /** Straps of one direction share it at equal tension; otherwise each counts with its own limit. */
  readonly equalTension: boolean
  readonly sources: readonly Source[]
}

const plainSafety = { forward: 1, rearward: 1, left: 1, right: 1, up: 1 }
const upShare = securementForces(1, 'working').downwardN

const usMethod = (id: 'us working' | 'us breaking', reading: 'working' | 'breaking'): Method => {
  const { forwardN, rearwardN, sidewaysN } = securementForces(1, reading)
  return {
    id,
    against: reading === 'working' ? 'limit' : 'breaking',
    shares: { forward: forwardN, rearward: rearwardN, left: sidewaysN, right: sidewaysN, up: upShare },
    safety: plainSafety,
    equalTension: false,
    sources: [lashingSources.forces, lashingSources.upward],
  }
}

/** Safety over the top 1.25 forward, 1.1 else: EN 12195-1:2010 as restated. Upward: the 20 % of 49 CFR 393.102(b), as benchmark only. */
const euMethod: Method = {
  id: 'eu',
  against: 'limit',
  shares: { forward: accelerations.forward, rearward: accelerations.rearward, left: accelerations.sideways, right: accelerations.sideways, up: upShare },
  safety: { forward: 1.25, rearward: 1.1, left: 1.1, right: 1.1, up: 1 },
  equalTension: true,
  sources: [lashingSources.balance, lashingSources.dynamicFriction, lashingSources.upward],
}

/** The governing method first. */
export const methodsOf: Readonly<Record<RuleBook, readonly [Method, ...Method[]]>> = {
  us: [usMethod('us working', 'working'), usMethod('us breaking', 'breaking')],
  eu: [euMethod],
}
