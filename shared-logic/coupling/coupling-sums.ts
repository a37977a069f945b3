import type { Balance } from '../balance/balance'
import type { LoadSheet } from '../load/load-sheet'
import type { Rig } from '../rig/rig'
import { isOver, isUnder } from '../rules/beyond'
import { chainNeedFor, judgeChains, type ChainNeed, type ChainStanding } from '../rules/chains'
import { couplerClassFor, couplerStrengthFor, leastBallM, type CouplerClass, type CouplerStrength } from '../rules/coupler-classes'
import type { RuleBook } from '../rules/rule-book'
import { dcValueN, dValueN, heaviestTrailerKg, vValueN } from './coupling-values'

/** A value needed against the smallest one marked, N. */
export interface MarkedValue {
  readonly neededN?: number
  readonly markedN?: number
  readonly standing: 'enough' | 'too small' | 'waits'
  readonly waitsFor: readonly string[]
}

export interface CouplingSums {
  /** Between this vehicle and this trailer, by their permissible masses. */
  readonly dValue: MarkedValue & { readonly heaviestTrailerKg?: number }
  /** The same for a centre-axle trailer, by what its axles carry; told, not judged: light ball couplings are marked with D alone. */
  readonly dcValueN?: number
  readonly vValue?: MarkedValue
  readonly couplerClass: { readonly needed?: CouplerClass; readonly strength?: CouplerStrength; readonly leastBallM?: number; readonly standing: 'enough' | 'too small' | 'waits'; readonly waitsFor: readonly string[] }
  /** Both readings of the rule: each chain by itself, and all together. */
  readonly chains: { readonly need?: ChainNeed; readonly standing?: ChainStanding; readonly waitsFor: readonly string[] }
}

const missing = (entries: Readonly<Record<string, unknown>>): string[] => Object.entries(entries).flatMap(([path, value]) => (value === undefined ? [path] : []))

const marked = (neededN: number | undefined, markedN: number | undefined, waitsFor: readonly string[]): MarkedValue => ({
  ...(neededN !== undefined && { neededN }), ...(markedN !== undefined && { markedN }), waitsFor,
  standing: neededN === undefined || markedN === undefined ? 'waits' : isOver(neededN, markedN) ? 'too small' : 'enough',
})

const dOf = ({ trailer, couplingRatings }: Rig): CouplingSums['dValue'] => {
  const towKg = couplingRatings?.towVehicleMaximumKg
  const markedN = couplingRatings?.dValueN
  const trailerKg = trailer.maximumMassKg
  const heaviestKg = towKg === undefined || markedN === undefined ? undefined : heaviestTrailerKg(markedN, towKg)
  return {
    ...marked(towKg === undefined || trailerKg === undefined ? undefined : dValueN(towKg, trailerKg), markedN,
      missing({ 'couplingRatings.towVehicleMaximumKg': towKg, 'trailer.maximumMassKg': trailerKg, 'couplingRatings.dValueN': markedN })),
    ...(heaviestKg !== undefined && { heaviestTrailerKg: heaviestKg }),
  }
}

/** Valid up to a coupling load of 10 % and 1,000 kg; beyond that nothing is said. */
const vOf = ({ trailer, boat, couplingRatings }: Rig, { lever }: Balance): MarkedValue | undefined => {
  const lengthM = boat?.lengthM ?? trailer.lengthM
  if (!lever || lengthM === undefined || trailer.ballToAxleM === undefined || couplingRatings?.vValueN === undefined) return undefined
  if (isOver(lever.share, 0.1) || lever.couplingKg > 1000) return undefined
  return marked(vValueN(lever.axleKg, lengthM, trailer.ballToAxleM, couplingRatings.towVehicleHasAirSuspension ?? false), couplingRatings.vValueN, [])
}

const classNumber = (coupler: string | undefined): number | undefined => {
  const digit = /^class (\d)$/.exec(coupler ?? '')?.[1]
  return digit === undefined ? undefined : Number(digit)
}

const classOf = ({ coupler, ballDiameterM, maximumMassKg }: Rig['trailer']): CouplingSums['couplerClass'] => {
  if (maximumMassKg === undefined) return { standing: 'waits', waitsFor: ['trailer.maximumMassKg'] }
  const needed = couplerClassFor(maximumMassKg)
  const strength = couplerStrengthFor(maximumMassKg)
  const least = leastBallM(maximumMassKg)
  const have = classNumber(coupler)
  const want = classNumber(needed)
  const tooSmall = (have !== undefined && want !== undefined && have < want) || (least !== undefined && ballDiameterM !== undefined && isUnder(ballDiameterM, least))
  return {
    ...(needed && { needed }), ...(strength && { strength }), ...(least !== undefined && { leastBallM: least }),
    standing: tooSmall ? 'too small' : have === undefined || want === undefined ? 'waits' : 'enough',
    waitsFor: have === undefined ? ['trailer.coupler'] : [],
  }
}

/** Chains against the maximum mass, or against the load where the plate is not known. */
const chainsOf = ({ trailer, couplingRatings }: Rig, { total }: LoadSheet): CouplingSums['chains'] => {
  const massKg = trailer.maximumMassKg ?? total.massKg
  const { chainBreakingForceN, chainCount } = couplingRatings ?? {}
  const need = massKg === undefined ? undefined : chainNeedFor(massKg)
  const standing = need === undefined || chainBreakingForceN === undefined || chainCount === undefined ? undefined : judgeChains(chainBreakingForceN, chainCount, need)
  return {
    ...(need && { need }), ...(standing && { standing }),
    waitsFor: [...(massKg === undefined ? ['trailer.maximumMassKg'] : []), ...missing({ 'couplingRatings.chainBreakingForceN': chainBreakingForceN, 'couplingRatings.chainCount': chainCount })],
  }
}

/** Coupling strength. Sources: UN Regulation 55 / Directive 94/20/EC; SAE J684 as restated in COMAR 11.13.08.10; 49 CFR 393.70(d). */
export const couplingSumsOf = (rig: Rig, load: LoadSheet, balance: Balance, ruleBook: RuleBook): CouplingSums => {
  const towKg = rig.couplingRatings?.towVehicleMaximumKg
  const vValue = vOf(rig, balance)
  return {
    dValue: dOf(rig),
    ...(ruleBook === 'eu' && towKg !== undefined && balance.lever && { dcValueN: dcValueN(towKg, balance.lever.axleKg) }),
    ...(vValue && { vValue }),
    couplerClass: classOf(rig.trailer),
    chains: chainsOf(rig, load),
  }
}
