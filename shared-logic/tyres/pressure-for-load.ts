import { isOver } from '../rules/beyond'
import { rangePressurePa, trailerTyreLoadKg, type LoadRange } from '../rules/us-tyre-loads'
import type { Tyre } from './tyre-capacity'

const ranges: readonly LoadRange[] = ['B', 'C', 'D', 'E', 'F']

/**
 * Cold pressure a tyre needs for a load.
 *
 * 'found': the least step of the published ST table that carries it, Pa, and what it carries there, kg. 'beyond': more than the tyre's
 * own load range carries at its highest pressure. 'not told': the table lacks this size or the load range is not known, and
 * `field` says which it waits for. The placard's pressure goes first in any case.
 */
export type PressureForLoad =
  | { readonly kind: 'found'; readonly pressurePa: number; readonly carriesKg: number; readonly range: LoadRange }
  | { readonly kind: 'beyond'; readonly carriesKg: number; readonly range: LoadRange }
  | { readonly kind: 'not told'; readonly why: 'no size' | 'no load range' | 'no table'; readonly field: string }

/** Least table pressure for `loadKg` on one tyre. Source: published ST tyre load and pressure table; loads between its steps take the next one up. */
export const pressureForLoad = (tyre: Tyre | undefined, loadKg: number): PressureForLoad => {
  const { size, loadRange } = tyre ?? {}
  if (size === undefined) return { kind: 'not told', why: 'no size', field: 'trailer.tyre.size' }
  if (loadRange === undefined) return { kind: 'not told', why: 'no load range', field: 'trailer.tyre.loadRange' }
  const ownKg = trailerTyreLoadKg(size, loadRange)
  if (ownKg === undefined) return { kind: 'not told', why: 'no table', field: 'trailer.tyre.size' }
  for (const range of ranges.slice(0, ranges.indexOf(loadRange) + 1)) {
    const carriesKg = trailerTyreLoadKg(size, range)
    if (carriesKg !== undefined && !isOver(loadKg, carriesKg)) return { kind: 'found', pressurePa: rangePressurePa(range), carriesKg, range }
  }
  return { kind: 'beyond', carriesKg: ownKg, range: loadRange }
}
