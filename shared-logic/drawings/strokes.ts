import type { Role, Shape } from './drawing'

type Paint = Pick<Extract<Shape, { kind: 'path' }>, 'stroke' | 'fill' | 'weight' | 'dashed'>
export interface Point {
  readonly x: number
  readonly y: number
}

const round = (value: number): number => Math.round(value * 10) / 10
const at = ({ x, y }: Point): string => `${round(x)} ${round(y)}`

export const path = (d: string, paint: Paint): Shape => ({ kind: 'path', d, ...paint })
export const line = (points: readonly Point[], paint: Paint = { stroke: 'ink' }): Shape =>
  path(points.map((point, index) => `${index === 0 ? 'M' : 'L'}${at(point)}`).join(' '), paint)
export const outline = (points: readonly Point[], paint: Paint): Shape =>
  path(`${points.map((point, index) => `${index === 0 ? 'M' : 'L'}${at(point)}`).join(' ')} Z`, paint)
export const circle = (x: number, y: number, r: number, paint: Paint): Shape => ({ kind: 'circle', x: round(x), y: round(y), r: round(r), ...paint })

/** A box with rounded corners; `x`, `y` its upper left. */
export const box = (x: number, y: number, width: number, height: number, paint: Paint, corner = 0): Shape => {
  const r = Math.min(corner, width / 2, height / 2)
  if (r === 0) return outline([{ x, y }, { x: x + width, y }, { x: x + width, y: y + height }, { x, y: y + height }], paint)
  const q = (cx: number, cy: number, ex: number, ey: number): string => `Q${at({ x: cx, y: cy })} ${at({ x: ex, y: ey })}`
  const [right, bottom] = [x + width, y + height]
  return path(
    [
      `M${at({ x: x + r, y })} L${at({ x: right - r, y })}`, q(right, y, right, y + r), `L${at({ x: right, y: bottom - r })}`, q(right, bottom, right - r, bottom),
      `L${at({ x: x + r, y: bottom })}`, q(x, bottom, x, bottom - r), `L${at({ x, y: y + r })}`, q(x, y, x + r, y), 'Z',
    ].join(' '),
    paint,
  )
}

export const label = (x: number, y: number, text: string, size: number, more: { anchor?: 'start' | 'middle' | 'end'; bold?: true; fill?: Role } = {}): Shape => ({
  kind: 'text', x: round(x), y: round(y), text, size, fill: more.fill ?? 'ink', ...(more.anchor && { anchor: more.anchor }), ...(more.bold && { bold: more.bold }),
})
