import type { Check } from './check'
import { couplerBallChecks } from './coupler/ball'
import { couplerChainChecks } from './coupler/chains'
import { couplerHeadChecks } from './coupler/head'

/** Coupler, ball, chains and jack. */
export const couplerChecks: readonly Check[] = [...couplerHeadChecks, ...couplerBallChecks, ...couplerChainChecks]
