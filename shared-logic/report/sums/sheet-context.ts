import type { TieDownPlan } from '../../lashing/plan'
import type { Rig } from '../../rig/rig'
import type { Sums } from '../../sums/sums'
import { formatQuantity } from '../../units/convert'
import type { Quantity, UnitSystem } from '../../units/quantity'
import type { Words } from '../../words/en'
import { sayPath, type SumsLine } from '../../words/sums/section'
import type { Drawing } from '../../drawings/drawing'
import type { SumsCell, SumsPrintedLine, SumsSheet } from '../sums-document'

/** What every sheet of the sums is made from, worked out once. `rig` is without what cannot be right. */
export interface SheetContext {
  readonly rig: Rig
  readonly sums: Sums
  readonly plan: TieDownPlan
  readonly words: Words
  readonly units: UnitSystem
  /** Day of the survey, ISO date. */
  readonly surveyDate: string
}

/** A quantity as the reader reads it; a dash where it is not known. */
export const shown = ({ units }: SheetContext, quantity: Quantity, si: number | undefined): string => (si === undefined ? '–' : formatQuantity(quantity, si, units))
export const shownShare = (context: SheetContext, share: number | undefined): string => shown(context, 'ratio', share === undefined ? undefined : Math.round(share * 1_000) / 1_000)

export const cell = (text: string, more: Omit<SumsCell, 'text'> = {}): SumsCell => ({ text, ...more })

export const printed = ({ words }: SheetContext, lines: readonly SumsLine[]): SumsPrintedLine[] =>
  lines.map(({ text, verdict }) => (verdict === undefined ? { text } : { text, verdict, word: words.verdicts[verdict] }))

/** A field of the rig a sum was worked from, and its value in SI or in words. */
export type InputRow = readonly [path: string, quantity: Quantity | 'words', value: number | string | undefined]

/** What is known of the fields a sheet was worked from; what is not is said by its waiting line. */
export const inputsOf = (context: SheetContext, rows: readonly InputRow[]): SumsSheet['inputs'] =>
  rows.flatMap(([path, quantity, value]) => {
    if (value === undefined) return []
    const told = typeof value === 'number' && quantity !== 'words' ? formatQuantity(quantity, value, context.units) : (context.words.fieldOptions[path]?.[String(value)] ?? String(value))
    return [{ label: sayPath(context.words, path), value: told }]
  })

/** Only what a drawing is kept by, without what a screen needs to drag it. */
export const plainDrawing = ({ viewBox, shapes, places, toScale }: Drawing): Drawing => ({ viewBox, shapes, places, toScale })
