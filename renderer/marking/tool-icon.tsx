import { markLines, knownLines } from '../../shared-logic/marking/mark-lines'
import type { Mark } from '../../shared-logic/marking/marks'
import type { Shape } from '../../shared-logic/drawings/drawing'
import { DrawingShapes } from '../drawing/drawing-shapes'
import style from './marking.module.css'
import type { Tool } from './tools'

/** Px of an icon to a point on the page: as heavy as the marks themselves are on a photograph. */
const unit = 1.3

const samples: Readonly<Record<Exclude<Tool, 'move' | 'text' | 'known'>, Mark>> = {
  arrow: { kind: 'arrow', from: [5, 23], to: [23, 5] },
  circle: { kind: 'circle', from: [4, 6], to: [24, 22] },
  box: { kind: 'box', from: [5, 6], to: [23, 22] },
  freehand: { kind: 'freehand', points: [[4, 18], [9, 8], [14, 16], [19, 20], [24, 9]] },
  length: { kind: 'length', from: [4, 14], to: [24, 14] },
}

const letter: readonly Shape[] = [
  { kind: 'path', d: 'M4 5h20v18h-20Z', fill: 'casing', stroke: 'mark', weight: 1 },
  { kind: 'path', d: 'M9 10h10M14 10v9', stroke: 'mark', weight: 2 },
]
const hand: readonly Shape[] = [
  { kind: 'path', d: 'M14 3v22M3 14h22M11 6l3 -3l3 3M11 22l3 3l3 -3M6 11l-3 3l3 3M22 11l3 3l-3 3', stroke: 'casing', weight: 3.4 },
  { kind: 'path', d: 'M14 3v22M3 14h22M11 6l3 -3l3 3M11 22l3 3l3 -3M6 11l-3 3l3 3M22 11l3 3l-3 3', stroke: 'mark', weight: 1.3 },
]

const shapesOf = (tool: Tool): readonly Shape[] => {
  if (tool === 'move') return hand
  if (tool === 'text') return letter
  return tool === 'known' ? knownLines({ from: [3, 14], to: [25, 14] }, unit) : markLines(samples[tool], unit)
}

/** What the tool draws, as it looks on the photograph. */
export const ToolIcon = ({ tool }: { readonly tool: Tool }) => (
  <svg viewBox="0 0 28 28" className={style.icon} aria-hidden="true"><DrawingShapes shapes={shapesOf(tool)} /></svg>
)
