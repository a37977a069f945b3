import { tieDownPlanOf } from '../../shared-logic/lashing/plan'
import type { Strap } from '../../shared-logic/rig/tie-down'

const end = (aftOfBallM: number, toRightM: number, heightM: number) => ({ aftOfBallM, toRightM, heightM })
const strap = (place: Strap['place'], boat: Strap['boat'], trailer: Strap['trailer'], route: Strap['route'] = 'direct'): Strap => ({
  position: place, place, route, ratedN: 10_000, breakingN: 30_000, tensionN: 3_000, boat, trailer,
})

// An invented rig with six straps.
const rig = {
  name: 'six straps',
  trailer: { supports: 'bunks' as const },
  boat: { dryMassKg: 1_400, engineMassKg: 210, lengthM: 6.2, beamM: 2.3, tanks: [{ contents: 'petrol' as const, capacityM3: 0.2 }] },
  tieDown: {
    straps: [
      strap('winch', end(1.5, 0, 1.2), end(1.1, 0, 1.2)), strap('bow tie', end(1.5, 0, 1.2), end(2.4, 0, 0.5)),
      strap('transom', end(7.4, -0.9, 1), end(6.6, -0.8, 0.5)), strap('transom', end(7.4, 0.9, 1), end(6.6, 0.8, 0.5)),
      strap('amidships', end(4, 1.1, 1.4), end(4, 1.15, 0.6), 'over the top'), strap('amidships', end(5, 1.1, 1.4), end(5, 1.15, 0.6), 'over the top'),
    ],
  },
}

/** Median time of one whole plan by both rule books in turn, ms; the budget is 1 ms. */
export const benchTieDown = (runs = 2_000): { readonly medianMs: number; readonly budgetMs: number } => {
  const times = Array.from({ length: runs }, (_, index) => {
    const start = performance.now()
    tieDownPlanOf(rig, index % 2 === 0 ? 'us' : 'eu')
    return performance.now() - start
  }).toSorted((a, b) => a - b)
  return { medianMs: times[Math.floor(runs / 2)] ?? 0, budgetMs: 1 }
}
