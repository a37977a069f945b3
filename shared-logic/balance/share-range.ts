/** A mass somewhere between two figures at a known place; `lowKg` equals `highKg` for one that is known. */
export interface Ranged {
  readonly id: string
  readonly lowKg: number
  readonly highKg: number
  readonly atM: number
}

/** One combination of light and heavy: what it comes to, and which masses are at their high end. */
export interface Corner {
  readonly share: number
  readonly couplingKg: number
  readonly totalKg: number
  readonly high: readonly string[]
}

/** The least and the greatest share over every combination. */
export interface ShareRange {
  readonly least: Corner
  readonly most: Corner
}

const cornerOf = (ranged: readonly Ranged[], axleM: number, high: ReadonlySet<string>): Corner => {
  let totalKg = 0
  let couplingKg = 0
  for (const { id, lowKg, highKg, atM } of ranged) {
    const massKg = high.has(id) ? highKg : lowKg
    totalKg += massKg
    couplingKg += massKg * (1 - atM / axleM)
  }
  return { totalKg, couplingKg, share: couplingKg / totalKg, high: [...high] }
}

/** Goes through the masses in an order of place; the extreme share is at one of the cuts, because a mass raises the share exactly when it lies ahead of the common centre. */
const extreme = (ranged: readonly Ranged[], axleM: number, inOrder: readonly Ranged[], isBetter: (a: Corner, b: Corner) => boolean): Corner => {
  let best = cornerOf(ranged, axleM, new Set())
  const high = new Set<string>()
  for (const { id } of inOrder) {
    high.add(id)
    const corner = cornerOf(ranged, axleM, high)
    if (!(best.totalKg > 0) || isBetter(corner, best)) best = corner
  }
  return best
}

/**
 * Least and greatest coupling share when each mass may lie anywhere in its range, whatever the others do.
 * Exact over all combinations. Undefined without mass or with the axle at or ahead of the ball. Source: statics.
 */
export const shareRangeOf = (ranged: readonly Ranged[], axleM: number): ShareRange | undefined => {
  if (!(axleM > 0) || !ranged.some(({ highKg }) => highKg > 0)) return undefined
  const loose = ranged.filter(({ lowKg, highKg }) => highKg > lowKg).toSorted((a, b) => a.atM - b.atM)
  return {
    most: extreme(ranged, axleM, loose, (a, b) => a.share > b.share),
    least: extreme(ranged, axleM, loose.toReversed(), (a, b) => a.share < b.share),
  }
}
