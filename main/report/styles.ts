import { ink, softInk } from './colours'

export type Weight = 'regular' | 'bold'

/** How a text is set. Sizes and leading in points. */
export interface Style {
  readonly size: number
  readonly leading: number
  readonly weight: Weight
  readonly colour: string
  /** Figures of one width, for columns of numbers. */
  readonly tabular?: true
}

/** Four sizes, two weights. */
export const styles = {
  title: { size: 22, leading: 28, weight: 'bold', colour: ink },
  count: { size: 22, leading: 28, weight: 'bold', colour: ink },
  heading: { size: 13, leading: 18, weight: 'bold', colour: ink },
  body: { size: 10, leading: 14, weight: 'regular', colour: ink },
  strong: { size: 10, leading: 14, weight: 'bold', colour: ink },
  small: { size: 8.5, leading: 12, weight: 'regular', colour: ink },
  smallStrong: { size: 8.5, leading: 12, weight: 'bold', colour: ink },
  label: { size: 8.5, leading: 12, weight: 'regular', colour: softInk },
  figures: { size: 8.5, leading: 12, weight: 'regular', colour: ink, tabular: true },
  figuresStrong: { size: 8.5, leading: 12, weight: 'bold', colour: ink, tabular: true },
} as const satisfies Record<string, Style>
