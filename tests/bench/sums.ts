import { tieDownPlanOf } from '../../shared-logic/lashing/plan'
import type { Rig } from '../../shared-logic/rig/rig'
import type { Strap } from '../../shared-logic/rig/tie-down'
import { faultsOf, withoutFaults } from '../../shared-logic/sums/check-input'
import { defaultSumsSettings } from '../../shared-logic/sums/settings'
import { sumsOf } from '../../shared-logic/sums/sums'
import { wholeRig } from '../shared-logic/sums/a-rig'
import { atShare, type BenchLine } from './bench-line'

const runs = 1_000
const budgetMs = 2

const end = (aftOfBallM: number, toRightM: number, heightM: number) => ({ aftOfBallM, toRightM, heightM })
const strap = (place: Strap['place'], boat: Strap['boat'], trailer: Strap['trailer'], route: Strap['route'] = 'direct'): Strap => ({
  position: place, place, route, ratedN: 10_000, breakingN: 30_000, tensionN: 3_000, boat, trailer,
})
const straps: readonly Strap[] = [
  strap('winch', end(1.5, 0, 1.2), end(1.1, 0, 1.2)), strap('bow tie', end(1.5, 0, 1.2), end(2.4, 0, 0.5)),
  strap('transom', end(7.4, -0.9, 1), end(6.6, -0.8, 0.5)), strap('transom', end(7.4, 0.9, 1), end(6.6, 0.8, 0.5)),
  strap('amidships', end(4, 1.1, 1.4), end(4, 1.15, 0.6), 'over the top'), strap('amidships', end(5, 1.1, 1.4), end(5, 1.15, 0.6), 'over the top'),
]

/** Eight tanks and six straps. Invented. */
const heavyRig = (): Rig => {
  const rig = wholeRig()
  const tanks = Array.from({ length: 8 }, (_, index) => ({ contents: index % 2 === 0 ? ('petrol' as const) : ('fresh water' as const), capacityM3: 0.05 + index / 100 }))
  return {
    ...rig, trailer: { ...rig.trailer, supports: 'bunks' }, boat: { ...rig.boat, beamM: 2.3, tanks }, tieDown: { straps: [...straps] },
    loading: { ...rig.loading, tanks: tanks.map((_, index) => ({ fill: index / 8, aftOfStemM: 1 + index / 2 })) },
  }
}

/** All that the sheet of the sums shows of a rig, as when its boat is dragged: load sheet, balance curve, tyres, coupling, brakes and tie-down plan. */
const workOut = (rig: Rig, ruleBook: 'us' | 'eu'): void => {
  const { balance, load } = sumsOf(rig, ruleBook, defaultSumsSettings)
  const plan = tieDownPlanOf(withoutFaults(rig, faultsOf(rig)), ruleBook)
  if (balance.tanks === undefined || load.total.massKg === undefined || plan.weakest === undefined) throw new Error('not all of it could be worked out: the time would be of less')
}

/** The middle one of many, each on a rig that differs from the one before, by both rule books in turn. */
export const benchSums = (): Promise<BenchLine[]> => {
  const rig = heavyRig()
  const times = Array.from({ length: runs }, (_, run) => {
    const dragged = { ...rig, loading: { ...rig.loading, stemAftOfBallM: 1 + run / 2_000 } }
    const began = performance.now()
    workOut(dragged, run % 2 === 0 ? 'us' : 'eu')
    return performance.now() - began
  })
  const value = atShare(times, 0.5)
  return Promise.resolve([{ name: 'load sheet, balance curve and tie-down plan', value: Math.round(value * 1000) / 1000, unit: 'ms', budget: `under ${budgetMs} ms`, ok: value < budgetMs }])
}
