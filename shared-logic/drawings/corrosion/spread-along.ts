/** Where a number stands along an edge, and in which lane beside it: 0 the nearest. */
export interface Spread {
  readonly at: number
  readonly lane: number
}

const apartInOrder = (wanted: readonly number[], from: number, to: number, apart: number): number[] => {
  const placed: number[] = []
  for (const want of wanted) placed.push(Math.max(want, (placed.at(-1) ?? from - apart) + apart))
  let limit = to
  return placed.toReversed().map((at) => {
    const kept = Math.min(at, limit)
    limit = kept - apart
    return kept
  }).toReversed()
}

/** Moves what wants to stand along an edge until each is `apart` from the next, in the order it came; what does not fit in one lane takes more. */
export const spreadAlong = (wanted: readonly number[], from: number, to: number, apart: number): readonly Spread[] => {
  const lanes = Math.max(1, Math.ceil(wanted.length / (Math.floor((to - from) / apart) + 1)))
  const inOrder = wanted.map((at, index) => ({ at, index })).toSorted((a, b) => a.at - b.at)
  const spread: Spread[] = []
  for (let lane = 0; lane < lanes; lane += 1) {
    const mine = inOrder.filter((_, rank) => rank % lanes === lane)
    const placed = apartInOrder(mine.map(({ at }) => at), from, to, apart)
    mine.forEach(({ index }, rank) => { spread[index] = { at: placed[rank] ?? from, lane } })
  }
  return spread
}
