/** What a line or area means; screen and report each have one colour for it. */
export type Role =
  | 'ink' | 'hairline' | 'faint' | 'hull' | 'metal' | 'rubber' | 'oil' | 'strap' | 'paper' | 'select'
  | 'pass' | 'advisory' | 'fail' | 'not seen'
  /** On photographs, the same in any light: a dark core in a light casing. */
  | 'mark' | 'casing'

interface Painted {
  readonly stroke?: Role
  readonly fill?: Role
  /** Stroke width in drawing units; the drawing's own default when absent. */
  readonly weight?: number
  readonly dashed?: true
}

/** One stroke of a drawing. Coordinates in the drawing's own units, x to the right, y down. */
export type Shape =
  | (Painted & { readonly kind: 'path'; /** SVG path data. */ readonly d: string })
  | (Painted & { readonly kind: 'circle'; readonly x: number; readonly y: number; readonly r: number })
  | (Painted & { readonly kind: 'text'; readonly x: number; readonly y: number; readonly text: string; readonly size: number; readonly anchor?: 'start' | 'middle' | 'end'; readonly bold?: true })

/** A spot on the drawing that stands for a position or a station: it can be tapped, and findings are marked there. */
export interface Place {
  /** A position id ('axle 1 left'), or 'station hubs'. */
  readonly id: string
  readonly x: number
  readonly y: number
}

/** A picture as data, so that the window (SVG) and the report (vector PDF) draw the same. */
export interface Drawing {
  /** x, y, width, height. */
  readonly viewBox: readonly [number, number, number, number]
  readonly shapes: readonly Shape[]
  readonly places: readonly Place[]
  /** False while lengths it rests on are not known: it is a sketch then, and says so. */
  readonly toScale: boolean
}
