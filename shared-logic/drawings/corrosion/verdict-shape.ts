import type { Verdict } from '../../survey/verdict'
import type { Role, Shape } from '../drawing'
import { circle, label, line, outline } from '../strokes'

export const roleOfVerdict: Readonly<Record<Verdict, Role>> = { pass: 'pass', advisory: 'advisory', fail: 'fail', 'not seen': 'not seen', 'not applicable': 'not seen' }

const square = (x: number, y: number, half: number): { x: number; y: number }[] => [{ x: x - half, y: y - half }, { x: x + half, y: y - half }, { x: x + half, y: y + half }, { x: x - half, y: y + half }]
const diamond = (x: number, y: number, half: number): { x: number; y: number }[] => [{ x, y: y - half }, { x: x + half, y }, { x, y: y + half }, { x: x - half, y }]

/** The outline that stands for a verdict with room for a number: round for a pass, a diamond for an advisory, a square for a fail, a dashed ring where nothing was judged. */
const verdictOutline = (verdict: Verdict, x: number, y: number, r: number, weight: number): Shape => {
  const paint = { stroke: roleOfVerdict[verdict], fill: 'paper', weight } as const
  switch (verdict) {
    case 'pass':
      return circle(x, y, r, paint)
    case 'advisory':
      return outline(diamond(x, y, r * 1.32), paint)
    case 'fail':
      return outline(square(x, y, r * 0.92), paint)
    case 'not seen':
    case 'not applicable':
      return circle(x, y, r, { ...paint, dashed: true })
  }
}

/** A spot's number in the outline of its verdict. `size` of the figure, drawing units. */
export const numberInVerdict = (number: number, verdict: Verdict, x: number, y: number, size: number): Shape[] => {
  const figure = number > 99 ? size * 0.62 : number > 9 ? size * 0.88 : size
  return [verdictOutline(verdict, x, y, size * 0.82, size * 0.13), label(x, y + figure * 0.36, String(number), figure, { anchor: 'middle', bold: true })]
}

/** The verdict's outline without a number, for the legend: filled where a pass is, crossed where a fail is. */
export const verdictSample = (verdict: Verdict, x: number, y: number, r: number): Shape[] => [
  verdictOutline(verdict, x, y, r, r * 0.24),
  ...(verdict === 'fail' ? [line([{ x: x - r * 0.5, y: y - r * 0.5 }, { x: x + r * 0.5, y: y + r * 0.5 }], { stroke: 'fail', weight: r * 0.2 }), line([{ x: x + r * 0.5, y: y - r * 0.5 }, { x: x - r * 0.5, y: y + r * 0.5 }], { stroke: 'fail', weight: r * 0.2 })] : []),
]
