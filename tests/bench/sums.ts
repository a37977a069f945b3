import { defaultSumsSettings } from '../../shared-logic/sums/settings'
import { sumsOf } from '../../shared-logic/sums/sums'
import { wholeRig } from '../shared-logic/sums/a-rig'
import type { BenchLine } from './intake'

const runs = 500
const budgetMs = 2

/** A full load sheet with its balance curve, tyres, coupling and brakes of a rig with eight tanks, as when the boat is dragged: the middle one of many, each on a rig that differs. */
export const benchSums = (): Promise<BenchLine[]> => {
  const rig = wholeRig()
  const tanks = Array.from({ length: 8 }, (_, index) => ({ contents: index % 2 === 0 ? ('petrol' as const) : ('fresh water' as const), capacityM3: 0.05 + index / 100 }))
  const loaded = { ...rig, boat: { ...rig.boat, tanks }, loading: { ...rig.loading, tanks: tanks.map((_, index) => ({ fill: index / 8, aftOfStemM: 1 + index / 2 })) } }
  const times: number[] = []
  for (let run = 0; run < runs; run += 1) {
    const dragged = { ...loaded, loading: { ...loaded.loading, stemAftOfBallM: 1 + run / 1000 } }
    const began = performance.now()
    sumsOf(dragged, 'us', defaultSumsSettings)
    times.push(performance.now() - began)
  }
  const value = times.toSorted((a, b) => a - b)[runs / 2] ?? Number.NaN
  return Promise.resolve([{ name: 'load sheet and balance curve', value: Math.round(value * 1000) / 1000, unit: 'ms', budget: `under ${budgetMs} ms`, ok: value < budgetMs }])
}
