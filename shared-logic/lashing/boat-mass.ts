import { together, type Bounded } from '../load/bounded'
import { loadItemsOf, type LoadItem } from '../load/load-items'
import type { Rig } from '../rig/rig'

/** Mass the straps have to hold, kg: boat, engine, tank contents and the gear that is in the boat. `waitsFor`: dotted paths of fields. */
export interface HeldMass {
  readonly mass: Bounded
  readonly items: readonly LoadItem[]
  readonly waitsFor: readonly string[]
}

export const heldMassOf = (rig: Rig): HeldMass => {
  if (!rig.boat) return { mass: { lowKg: 0 }, items: [], waitsFor: ['boat'] }
  const items = loadItemsOf(rig).filter(({ inBoat }) => inBoat)
  return { mass: together(items), items, waitsFor: items.flatMap(({ massWaitsFor }) => massWaitsFor) }
}
