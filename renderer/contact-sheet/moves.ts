import type { SheetSort } from './arrange'
import { groupOf, type SheetPhotograph } from './sheet-photograph'

/** The whole order with those moved taken out and put together before or after the target, which may be one of them. */
export const putBeside = (all: readonly string[], moved: ReadonlySet<string>, target: string, side: 'before' | 'after'): string[] => {
  const at = all.indexOf(target) + (side === 'after' ? 1 : 0)
  const staying = (ids: readonly string[]): string[] => ids.filter((id) => !moved.has(id))
  return [...staying(all.slice(0, at)), ...all.filter((id) => moved.has(id)), ...staying(all.slice(at))]
}

/**
 * Whether these may be put beside that one: in the survey's own order anywhere, in walking order among the photographs
 * of their check. By time and by arrival nothing is put in order.
 */
export const mayStandBeside = (moved: readonly SheetPhotograph[], target: SheetPhotograph, sort: SheetSort): boolean => {
  if (sort === 'own') return moved.length > 0
  return sort === 'walk' && moved.length > 0 && moved.every((each) => groupOf(each) === groupOf(target))
}

/** The neighbour that those chosen are to pass, one step earlier or later in what is shown; undefined where there is none to pass. */
export const neighbourToPass = (shown: readonly SheetPhotograph[], chosen: readonly SheetPhotograph[], way: 'earlier' | 'later', sort: SheetSort): SheetPhotograph | undefined => {
  const outermost = way === 'earlier' ? chosen[0] : chosen.at(-1)
  if (outermost === undefined) return undefined
  const neighbour = shown[shown.indexOf(outermost) + (way === 'earlier' ? -1 : 1)]
  return neighbour !== undefined && mayStandBeside(chosen, neighbour, sort) ? neighbour : undefined
}
