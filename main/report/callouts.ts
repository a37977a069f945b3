import type { PlanMark } from '../../shared-logic/report/document'
import type { Fitted, Frame } from './drawing'
import { markRadius } from './shapes'

/** Marks in a row, and from one mark to the next. */
export const perRow = 3
export const step = markRadius * 2 + 3
const between = 2

/** The numbers of one place, beside the drawing and led to it. */
export interface Callout {
  /** The numbers drawn; `more` are counted only, where the page has no room for all. */
  readonly numbers: readonly number[]
  readonly more: number
  readonly from: { readonly x: number; readonly y: number }
  readonly height: number
  readonly top: number
}

const calloutOf = ({ numbers, x, y }: PlanMark, fitted: Fitted, limit: number): Callout => {
  const shown = numbers.length > limit ? numbers.slice(0, limit - 1) : numbers
  const rows = Math.ceil(Math.min(numbers.length, limit) / perRow)
  return { numbers: shown, more: numbers.length - shown.length, from: fitted.at(x, y), height: rows * step, top: 0 }
}

const heightOf = (callouts: readonly Callout[]): number => callouts.reduce((sum, { height }) => sum + height + between, 0)

/** Moves callouts apart, down first and then up, so that none covers another and all stay in the frame; where even so they are too many, they close up. */
const spread = (callouts: readonly Callout[], frame: Frame): Callout[] => {
  const ordered = callouts.toSorted((a, b) => a.from.y - b.from.y)
  const total = heightOf(ordered)
  if (total > frame.height) {
    const pitch = (frame.height - step) / Math.max(ordered.length - 1, 1)
    return ordered.map((callout, index) => ({ ...callout, top: frame.y + index * pitch }))
  }
  let floor = frame.y
  const down = ordered.map((callout) => {
    const top = Math.max(callout.from.y - callout.height / 2, floor)
    floor = top + callout.height + between
    return { ...callout, top }
  })
  let ceiling = frame.y + frame.height
  return down.toReversed().map((callout) => {
    const top = Math.min(callout.top, ceiling - callout.height)
    ceiling = top - between
    return { ...callout, top }
  })
}

const load = (list: readonly PlanMark[]): number => list.reduce((sum, { numbers }) => sum + Math.ceil(numbers.length / perRow), 0)

/** Marks of the left half go left, of the right half right; those of the middle where there is more room. */
const bySide = (marks: readonly PlanMark[]): { left: PlanMark[]; right: PlanMark[] } => {
  const sides: { left: PlanMark[]; right: PlanMark[] } = { left: [], right: [] }
  for (const mark of marks.toSorted((a, b) => Math.abs(b.x) - Math.abs(a.x))) {
    const left = mark.x < -1 || (mark.x <= 1 && load(sides.left) <= load(sides.right))
    if (left) sides.left.push(mark)
    else sides.right.push(mark)
  }
  return sides
}

/** All numbers of each place where they fit; else one row a place, with the rest counted. */
const placed = (marks: readonly PlanMark[], fitted: Fitted, frame: Frame): Callout[] => {
  const all = marks.map((mark) => calloutOf(mark, fitted, Number.POSITIVE_INFINITY))
  return spread(heightOf(all) <= frame.height ? all : marks.map((mark) => calloutOf(mark, fitted, perRow)), frame)
}

/** Where the numbers stand on either side of the drawing. */
export const calloutsOf = (marks: readonly PlanMark[], fitted: Fitted, frame: Frame): { left: Callout[]; right: Callout[] } => {
  const { left, right } = bySide(marks)
  return { left: placed(left, fitted, frame), right: placed(right, fitted, frame) }
}
