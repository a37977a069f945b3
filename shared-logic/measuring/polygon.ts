import type { PixelPoint } from './measurement'

type Edge = readonly [PixelPoint, PixelPoint]

/** The closed outline's edges, points that repeat the one before left out. */
export const edgesOf = (points: readonly PixelPoint[]): Edge[] =>
  points.flatMap((to, index): Edge[] => {
    const from = points.at(index - 1)
    return from === undefined || (from[0] === to[0] && from[1] === to[1]) ? [] : [[from, to]]
  })

/** Area by the shoelace formula, in the square of the points' unit; whichever way round. Means nothing for an outline that crosses itself. */
export const polygonArea = (points: readonly PixelPoint[]): number => {
  // From the first point on, so that a small outline far from the corner keeps its digits.
  const [originX, originY] = points[0] ?? [0, 0]
  return Math.abs(edgesOf(points).reduce((sum, [[x1, y1], [x2, y2]]) => sum + (x1 - originX) * (y2 - originY) - (x2 - originX) * (y1 - originY), 0)) / 2
}

/** Twice the signed area of the triangle: its sign tells on which side of a–b the point lies. */
export const turnOf = ([ax, ay]: PixelPoint, [bx, by]: PixelPoint, [cx, cy]: PixelPoint): number => (bx - ax) * (cy - ay) - (cx - ax) * (by - ay)

const liesWithin = (from: PixelPoint, to: PixelPoint, [x, y]: PixelPoint): boolean =>
  x >= Math.min(from[0], to[0]) && x <= Math.max(from[0], to[0]) && y >= Math.min(from[1], to[1]) && y <= Math.max(from[1], to[1])

const meet = ([a, b]: Edge, [c, d]: Edge): boolean => {
  const [ofC, ofD, ofA, ofB] = [turnOf(a, b, c), turnOf(a, b, d), turnOf(c, d, a), turnOf(c, d, b)]
  if (((ofC > 0 && ofD < 0) || (ofC < 0 && ofD > 0)) && ((ofA > 0 && ofB < 0) || (ofA < 0 && ofB > 0))) return true
  return (ofC === 0 && liesWithin(a, b, c)) || (ofD === 0 && liesWithin(a, b, d)) || (ofA === 0 && liesWithin(c, d, a)) || (ofB === 0 && liesWithin(c, d, b))
}

/** Whether the closed outline crosses or touches itself anywhere but from edge to next edge. */
export const crossesItself = (points: readonly PixelPoint[]): boolean => {
  const edges = edgesOf(points)
  return edges.some((edge, index) => edges.slice(index + 2).some((other, further) => !(index === 0 && further === edges.length - 3) && meet(edge, other)))
}

/** Whether the point lies inside the closed outline. On the border either may be said. */
export const contains = (points: readonly PixelPoint[], [x, y]: PixelPoint): boolean =>
  edgesOf(points).filter(([[x1, y1], [x2, y2]]) => y1 > y !== y2 > y && x < x1 + ((y - y1) * (x2 - x1)) / (y2 - y1)).length % 2 === 1

/** How far a point lies from a stretch of line; its two ends may be one. */
export const distanceToEdge = ([x, y]: PixelPoint, [x1, y1]: PixelPoint, [x2, y2]: PixelPoint): number => {
  const square = (x2 - x1) ** 2 + (y2 - y1) ** 2
  const along = square === 0 ? 0 : Math.max(0, Math.min(1, ((x - x1) * (x2 - x1) + (y - y1) * (y2 - y1)) / square))
  return Math.hypot(x - x1 - along * (x2 - x1), y - y1 - along * (y2 - y1))
}

/** How far the point lies from the outline's border. */
export const distanceToBorder = (points: readonly PixelPoint[], point: PixelPoint): number =>
  Math.min(...edgesOf(points).map(([from, to]) => distanceToEdge(point, from, to)))
