import type { Role, Shape } from '../drawing'
import { label, line } from '../strokes'

/** A rule along x: ticks at `values` (drawn text beside the longer ones). Maps a value to x by `xOf`. */
export const rule = (y: number, xOf: (value: number) => number, values: readonly { readonly value: number; readonly text?: string }[]): Shape[] => {
  const first = values[0]
  const last = values.at(-1)
  return [
    ...(first && last ? [line([{ x: xOf(first.value), y }, { x: xOf(last.value), y }], { stroke: 'ink', weight: 1.4 })] : []),
    ...values.flatMap(({ value, text }) => [
      line([{ x: xOf(value), y }, { x: xOf(value), y: y + (text === undefined ? 6 : 11) }], { stroke: 'ink', weight: 1.2 }),
      ...(text === undefined ? [] : [label(xOf(value), y + 25, text, 12, { anchor: 'middle' })]),
    ]),
  ]
}

/** An arrow with a head at its end. */
export const arrow = (from: { x: number; y: number }, to: { x: number; y: number }, stroke: Role = 'ink'): Shape[] => {
  const angle = Math.atan2(to.y - from.y, to.x - from.x)
  const wing = (turn: number): { x: number; y: number } => ({ x: to.x - 10 * Math.cos(angle + turn), y: to.y - 10 * Math.sin(angle + turn) })
  return [line([from, to], { stroke, weight: 2 }), line([wing(0.45), to, wing(-0.45)], { stroke, weight: 2 })]
}

export const within = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high)
