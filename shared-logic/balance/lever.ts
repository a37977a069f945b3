/** One mass on the lever. `atM`: aft of the ball centre, m (negative ahead of it); `heightM`: above the ground, where known. */
export interface Mass {
  readonly id: string
  readonly massKg: number
  readonly atM: number
  readonly heightM?: number
}

/** What the lever comes to. `share` is coupling load over total; negative when the load lifts the coupling. */
export interface Lever {
  readonly totalKg: number
  /** Centre of mass, m aft of the ball. */
  readonly centreM: number
  readonly couplingKg: number
  readonly axleKg: number
  readonly share: number
}

export const totalOf = (masses: readonly Mass[]): number => masses.reduce((sum, { massKg }) => sum + massKg, 0)
export const momentOf = (masses: readonly Mass[]): number => masses.reduce((sum, { massKg, atM }) => sum + massKg * atM, 0)

/**
 * Coupling and axle load of a trailer standing level, coupled.
 *
 * `axleM`: ball centre to the axle, or to the middle of an equalised group, m. Undefined without mass or with the axle
 * at or ahead of the ball: no number rests on that. Source: statics, moments about the ball.
 */
export const leverOf = (masses: readonly Mass[], axleM: number): Lever | undefined => {
  const totalKg = totalOf(masses)
  if (!(totalKg > 0) || !(axleM > 0)) return undefined
  const centreM = momentOf(masses) / totalKg
  const axleKg = (totalKg * centreM) / axleM
  const couplingKg = totalKg - axleKg
  return { totalKg, centreM, couplingKg, axleKg, share: couplingKg / totalKg }
}

/** Height of the common centre of mass above the ground, m; undefined while any mass has no height. Source: statics. */
export const centreHeightM = (masses: readonly Mass[]): number | undefined => {
  let moment = 0
  for (const { massKg, heightM } of masses) {
    if (heightM === undefined) return undefined
    moment += massKg * heightM
  }
  const total = totalOf(masses)
  return total > 0 ? moment / total : undefined
}
