import type { LoadItem } from '../load/load-items'
import type { Rig } from '../rig/rig'
import type { BalanceBands, BandsFrom } from '../sums/settings'
import { axleLoadsOf, type AxleLoads } from './axle-loads'
import { axlesOf, type Axles } from './axles'
import { bandsAt, standingOf, verdictOfStanding, type BalanceStanding, type StandingVerdict } from './bands'
import { compare, type Comparison } from './comparison'
import { goalOf, type Goal } from './goal'
import { leverOf, type Lever, type Mass } from './lever'
import { shareRangeOf, type ShareRange } from './share-range'
import { stabilityOf, type Stability } from './stability'
import { tankCurveOf, type TankCurve } from './tank-curve'
import { weighedOf, type WeighedResult } from './weighed'

/** The trailer as a lever. What cannot be worked out is absent; `waitsFor` names the fields the lever waits for. */
export interface Balance {
  readonly axles: Axles
  /** As they stand at this total, and whose they are. */
  readonly bands: BalanceBands
  readonly bandsFrom: BandsFrom
  /** Every line with mass and place. */
  readonly masses: readonly Mass[]
  /** When every line is known. */
  readonly lever?: Lever
  /** When every line has a place and is at least bounded (a tank of unknown level). */
  readonly bounds?: ShareRange
  /** From the lever, else from the newest weighing, else from bounds whose two ends agree. */
  readonly standing?: BalanceStanding
  readonly standingFrom?: 'reckoned' | 'weighed' | 'bounds'
  /** Of `standing`; a fail that is only reckoned is advice where scales showed otherwise. */
  readonly verdict?: StandingVerdict
  /** How the coupling load of the newest weighing lies; scales decide. */
  readonly scales?: { readonly date: string; readonly standing: BalanceStanding; readonly verdict: StandingVerdict }
  readonly smallestStaticKg?: number
  readonly axleLoads?: AxleLoads
  readonly tanks?: TankCurve
  readonly goal?: Goal
  /** The newest first. */
  readonly weighed: readonly WeighedResult[]
  readonly comparison?: Comparison
  readonly stability?: Stability
  readonly waitsFor: readonly string[]
}

const placedMasses = (items: readonly LoadItem[]): Mass[] =>
  items.flatMap(({ id, massKg, atM, heightM }) => (massKg === undefined || atM === undefined ? [] : [{ id, massKg, atM, ...(heightM !== undefined && { heightM }) }]))

const boundsOf = (items: readonly LoadItem[], axleM: number): ShareRange | undefined => {
  const ranged = items.flatMap(({ id, massKg, lowKg, highKg, atM }) => (atM === undefined || highKg === undefined ? [] : [{ id, lowKg: massKg ?? lowKg, highKg: massKg ?? highKg, atM }]))
  return ranged.length === items.length ? shareRangeOf(ranged, axleM) : undefined
}

interface Given {
  readonly rig: Rig
  readonly items: readonly LoadItem[]
  readonly bands: BalanceBands
  readonly bandsFrom: BandsFrom
  readonly smallestStaticKg: number | undefined
  readonly reserveWanted: number
}

const scalesOf = ({ bands, smallestStaticKg }: Given, weighed: readonly WeighedResult[]): Balance['scales'] => {
  const newest = weighed.find(({ share }) => share !== undefined)
  if (newest?.share === undefined || newest.couplingKg === undefined) return undefined
  const standing = standingOf(newest.share, newest.couplingKg, bands, smallestStaticKg)
  return { date: newest.date, standing, verdict: verdictOfStanding[standing] }
}

const standingFrom = ({ bands, smallestStaticKg }: Given, lever: Lever | undefined, bounds: ShareRange | undefined, scales: Balance['scales']): Pick<Balance, 'standing' | 'standingFrom'> => {
  if (lever) return { standing: standingOf(lever.share, lever.couplingKg, bands, smallestStaticKg), standingFrom: 'reckoned' }
  if (scales) return { standing: scales.standing, standingFrom: 'weighed' }
  if (!bounds) return {}
  const [least, most] = [bounds.least, bounds.most].map(({ share, couplingKg }) => standingOf(share, couplingKg, bands, smallestStaticKg))
  return least !== undefined && least === most ? { standing: least, standingFrom: 'bounds' } : {}
}

const verdictOf = ({ standing, standingFrom: from }: Pick<Balance, 'standing' | 'standingFrom'>, scales: Balance['scales']): Pick<Balance, 'verdict'> => {
  if (standing === undefined) return {}
  const verdict = verdictOfStanding[standing]
  return { verdict: verdict === 'fail' && from !== 'weighed' && scales !== undefined && scales.verdict !== 'fail' ? 'advisory' : verdict }
}

/** What hangs on the lever itself. */
const fromLever = ({ rig, items, bands, smallestStaticKg, reserveWanted }: Given, axles: Axles, masses: readonly Mass[], lever: Lever, axleM: number, weighed: readonly WeighedResult[]) => {
  const comparison = compare(lever, weighed)
  const goal = goalOf(rig, items, masses, axleM, bandsAt(bands, lever.totalKg), smallestStaticKg === undefined ? undefined : smallestStaticKg * (1 - reserveWanted))
  return {
    lever, axleLoads: axleLoadsOf(rig, axles, masses, lever), stability: stabilityOf(rig, masses, lever, weighed),
    ...(goal && { goal }), ...(comparison && { comparison }),
  }
}

/** Balance of the rig as loaded. Masses kg, lengths m aft of the ball, shares of the total of trailer and boat. Source: statics. */
export const balanceOf = (given: Given): Balance => {
  const { rig, items, smallestStaticKg } = given
  const axles = axlesOf(rig)
  const masses = placedMasses(items)
  const weighed = weighedOf(rig)
  const axleM = axles.middleM
  const isWhole = masses.length === items.length
  const lever = isWhole && axleM !== undefined ? leverOf(masses, axleM) : undefined
  const bounds = axleM === undefined || lever ? undefined : boundsOf(items, axleM)
  const dry = masses.filter(({ id }) => items.find((item) => item.id === id)?.kind !== 'tank')
  const dryIsWhole = items.every(({ kind, massKg, atM }) => kind === 'tank' || (massKg !== undefined && atM !== undefined))
  const totalKg = lever?.totalKg ?? weighed.find((result) => result.totalKg !== undefined)?.totalKg
  const bands = totalKg === undefined ? given.bands : bandsAt(given.bands, totalKg)
  const scales = scalesOf(given, weighed)
  const stands = standingFrom(given, lever, bounds, scales)
  const tanks = axleM !== undefined && dryIsWhole ? tankCurveOf(rig, items, dry, axleM) : undefined
  return {
    axles, bands, bandsFrom: given.bandsFrom, masses, weighed, waitsFor: [...new Set([...(axleM === undefined ? ['trailer.ballToAxleM'] : []), ...items.flatMap((item) => item.waitsFor)])],
    ...(smallestStaticKg !== undefined && { smallestStaticKg }),
    ...(lever && axleM !== undefined && fromLever(given, axles, masses, lever, axleM, weighed)),
    ...(bounds && { bounds }), ...(tanks && { tanks }),
    ...stands, ...verdictOf(stands, scales), ...(scales && { scales }),
  }
}
