/** One over the number of places within `reach` of each of `count` places in a line. */
const inverseCounts = (count: number, reach: number): Float64Array =>
  Float64Array.from({ length: count }, (_, place) => 1 / (Math.min(count - 1, place + reach) - Math.max(0, place - reach) + 1))

/** Along each row, by a running sum over a copy of the row with nothing before and behind it. */
const alongRows = (plane: Float32Array, width: number, height: number, reach: number): void => {
  const line = new Float32Array(width + 2 * reach + 1)
  const inverse = inverseCounts(width, reach)
  for (let start = 0; start < width * height; start += width) {
    line.set(plane.subarray(start, start + width), reach + 1)
    let sum = 0
    for (let place = reach + 1; place < 2 * reach + 1; place += 1) sum += line[place] ?? 0
    for (let column = 0; column < width; column += 1) {
      sum += (line[column + 2 * reach + 1] ?? 0) - (line[column] ?? 0)
      plane[start + column] = sum * (inverse[column] ?? 0)
    }
  }
}

/** Down the columns, a whole row at a time: the memory is read in its own order. */
const downColumns = (plane: Float32Array, width: number, height: number, reach: number): void => {
  const source = plane.slice()
  const nothing = new Float32Array(width)
  const rowOf = (row: number): Float32Array => (row < 0 || row >= height ? nothing : source.subarray(row * width, (row + 1) * width))
  const sums = new Float64Array(width)
  const inverse = inverseCounts(height, reach)
  for (let row = 0; row < reach; row += 1) rowOf(row).forEach((value, column) => { sums[column] = (sums[column] ?? 0) + value })
  for (let row = 0; row < height; row += 1) {
    const [entering, leaving] = [rowOf(row + reach), rowOf(row - reach - 1)]
    const by = inverse[row] ?? 0
    for (let column = 0, at = row * width; column < width; column += 1, at += 1) {
      const sum = (sums[column] ?? 0) + (entering[column] ?? 0) - (leaving[column] ?? 0)
      sums[column] = sum
      plane[at] = sum * by
    }
  }
}

/** Mean over a square of side 2 · reach + 1 round every pixel, shorter at the rim, by running sums; the plane given is overwritten. */
export const boxMean = (plane: Float32Array, width: number, height: number, reach: number): void => {
  if (reach < 1) return
  alongRows(plane, width, height, reach)
  downColumns(plane, width, height, reach)
}
