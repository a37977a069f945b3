export type LampColour = 'red' | 'amber' | 'red or amber' | 'white' | 'amber to the front, red to the rear'

/** When a lamp is called for. Bounds in m, inclusive as the rule text has them. */
export type LampCondition =
  | { readonly if: 'always' }
  | { readonly if: 'width at least'; readonly m: number }
  | { readonly if: 'width over'; readonly m: number }
  | { readonly if: 'length at least'; readonly m: number }
  /** From some day within `year`: a trailer of that year may fall on either side of it. */
  | { readonly if: 'braked and built from within'; readonly year: number }
  | { readonly if: 'built from within'; readonly year: number }

/** One lamp or reflector the rule book calls for. `position` is its place: 'lamp stop left', 'reflector rear left'. */
export interface LampRow {
  readonly position: string
  readonly colour: LampColour
  readonly when: LampCondition
}
