import type { RefusalData } from '../../shared-logic/contract/refusal'
import type { MeasuredArea } from '../../shared-logic/measuring/measurement'
import type { Wanted } from './board'

/** What the window tells the worker. The picture first, then what is wanted of it; a newer wish makes the older one pointless. */
export type ToWorker =
  | { readonly kind: 'picture'; readonly bitmap: ImageBitmap }
  | ({ readonly kind: 'measure'; readonly turn: number } & Wanted)

/** What the worker tells. `outline` is SVG path data in px of the original, even-odd. */
export type FromWorker =
  | { readonly kind: 'looking'; readonly turn: number }
  | { readonly kind: 'outlined'; readonly turn: number; readonly outline: string }
  | { readonly kind: 'measured'; readonly turn: number; readonly result: MeasuredArea | undefined }
  | { readonly kind: 'refused'; readonly turn: number; readonly refusal: RefusalData }
