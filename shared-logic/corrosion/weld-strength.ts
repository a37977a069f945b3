/** Typical strength of a plate and of a groove weld in it, ksi. Source: a filler-metal maker's technical guide, 'typical tensile properties, groove welds'. */
interface WeldedRow {
  readonly alloy: string
  readonly filler: string
  readonly tensileKsi: readonly [plate: number, welded: number]
  readonly yieldKsi: readonly [plate: number, welded: number]
}

export const weldedStrength: readonly WeldedRow[] = [
  { alloy: '5052-H32', filler: '5356', tensileKsi: [33, 28], yieldKsi: [28, 14] },
  { alloy: '5083-H116', filler: '5183', tensileKsi: [46, 43], yieldKsi: [33, 22] },
  { alloy: '6061-T6', filler: '4043', tensileKsi: [45, 27], yieldKsi: [40, 18] },
  { alloy: '6061-T6', filler: '5356', tensileKsi: [45, 30], yieldKsi: [40, 19] },
]

/** Share of the plate's strength kept beside the weld, 0 to 1. */
export const keptOf = ([plate, welded]: readonly [number, number]): number => welded / plate

/** What an alloy keeps of its yield strength beside a weld, at the least. */
export const leastYieldKept = (alloy: string): number | undefined => {
  const kept = weldedStrength.filter((row) => row.alloy === alloy).map(({ yieldKsi }) => keptOf(yieldKsi))
  return kept.length === 0 ? undefined : Math.min(...kept)
}
