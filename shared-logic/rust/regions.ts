import type { Mask } from '../measuring/pixels'

/** Runs of pixels side by side, by row, each joined to a region. */
export interface Runs {
  readonly count: number
  /** Row, first column and the column after the last: three numbers a run. */
  readonly place: Int32Array
  /** The run that stands for its region. */
  readonly region: Int32Array
}

const rootOf = (region: Int32Array, run: number): number => {
  let root = run
  while (region[root] !== root) root = region[root] ?? root
  for (let step = run; step !== root;) {
    const next = region[step] ?? root
    region[step] = root
    step = next
  }
  return root
}

/** Where the runs of each row begin, and the runs themselves: pixels valued `from` to `to`. */
const runsWhere = ({ width, height, data }: Mask, from: number, to: number): { place: Int32Array, firstOfRow: Int32Array, count: number } => {
  let place = new Int32Array(3 * 4096)
  const firstOfRow = new Int32Array(height + 1)
  let count = 0
  for (let row = 0; row < height; row += 1) {
    firstOfRow[row] = count
    for (let column = 0, at = row * width; column < width; column += 1, at += 1) {
      const value = data[at] ?? 0
      if (value < from || value > to) continue
      const first = column
      while (column < width && (data[at] ?? 0) >= from && (data[at] ?? 0) <= to) { column += 1; at += 1 }
      if (3 * count + 3 > place.length) { const larger = new Int32Array(place.length * 2); larger.set(place); place = larger }
      place[3 * count] = row
      place[3 * count + 1] = first
      place[3 * count + 2] = column
      count += 1
    }
  }
  firstOfRow[height] = count
  return { place, firstOfRow, count }
}

/** Runs of pixels valued `from` to `to`, joined where they touch from row to row; `corners` counts touching by a corner. */
export const runsJoined = (plane: Mask, [from, to]: readonly [number, number], corners: boolean): Runs => {
  const { place, firstOfRow, count } = runsWhere(plane, from, to)
  const region = Int32Array.from({ length: count }, (_, run) => run)
  const slack = corners ? 1 : 0
  for (let row = 1; row < plane.height; row += 1) {
    let above = firstOfRow[row - 1] ?? 0
    const aboveEnd = firstOfRow[row] ?? 0
    for (let run = aboveEnd; run < (firstOfRow[row + 1] ?? 0); run += 1) {
      const [left, right] = [place[3 * run + 1] ?? 0, place[3 * run + 2] ?? 0]
      while (above < aboveEnd && (place[3 * above + 2] ?? 0) + slack <= left) above += 1
      for (let other = above; other < aboveEnd && (place[3 * other + 1] ?? 0) < right + slack; other += 1) {
        const [one, two] = [rootOf(region, run), rootOf(region, other)]
        if (one !== two) region[Math.max(one, two)] = Math.min(one, two)
      }
    }
  }
  for (let run = 0; run < count; run += 1) region[run] = rootOf(region, run)
  return { count, place, region }
}

/** Adds up a number of every run over its region; the sum stands at the region's own run. */
export const overRegions = ({ count, region }: Runs, ofRun: (run: number) => number): Float64Array => {
  const sums = new Float64Array(count)
  for (let run = 0; run < count; run += 1) sums[region[run] ?? 0] = (sums[region[run] ?? 0] ?? 0) + ofRun(run)
  return sums
}

export const lengthOf = ({ place }: Runs, run: number): number => (place[3 * run + 2] ?? 0) - (place[3 * run + 1] ?? 0)

/** Sets the runs of the chosen regions. */
export const setRuns = (mask: Mask, runs: Runs, chosen: (region: number) => boolean): void => {
  for (let run = 0; run < runs.count; run += 1) {
    if (!chosen(runs.region[run] ?? 0)) continue
    const start = (runs.place[3 * run] ?? 0) * mask.width
    mask.data.fill(1, start + (runs.place[3 * run + 1] ?? 0), start + (runs.place[3 * run + 2] ?? 0))
  }
}
