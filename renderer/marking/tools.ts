import type { Mark } from '../../shared-logic/marking/marks'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { Sketch } from './sketch'

export const tools = ['move', 'arrow', 'circle', 'box', 'freehand', 'text', 'length', 'known'] as const
export type Tool = (typeof tools)[number]

/** Tools that draw between two points. */
const spans = ['arrow', 'circle', 'box', 'length', 'known'] as const
export type SpanTool = (typeof spans)[number]
export const isSpan = (tool: Tool): tool is SpanTool => spans.some((span) => span === tool)

export const toolKeys: Readonly<Record<Tool, string>> = { move: 'm', arrow: 'a', circle: 'c', box: 'b', freehand: 'f', text: 't', length: 'l', known: 'k' }

export const toolOfKey = (key: string): Tool | undefined => tools.find((tool) => toolKeys[tool] === key.toLowerCase())

/** What is drawn between the points so far; undefined while it would have no size. */
export const drawnMark = (tool: Tool, points: readonly PixelPoint[]): Mark | undefined => {
  const [from, ...rest] = points
  const to = rest.at(-1)
  if (from === undefined || to === undefined || points.every(([x, y]) => x === from[0] && y === from[1])) return undefined
  if (tool === 'freehand') return { kind: 'freehand', points: [...points] }
  if (!isSpan(tool)) return undefined
  return { kind: tool === 'known' ? 'length' : tool, from, to }
}

/** The sketch with what was drawn. A known length drawn anew has to be told anew how long it is. */
export const withDrawn = (sketch: Sketch, tool: Tool, mark: Mark): Sketch =>
  tool === 'known' && mark.kind === 'length' ? { ...sketch, known: { from: mark.from, to: mark.to, lengthM: undefined } } : { ...sketch, marks: [...sketch.marks, mark] }
