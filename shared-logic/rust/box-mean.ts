/** Mean over a square of side 2 · reach + 1 round every pixel, shorter at the rim, by running sums; the plane given is overwritten. */
export const boxMean = (plane: Float32Array, width: number, height: number, reach: number): void => {
  if (reach < 1) return
  const line = new Float32Array(Math.max(width, height))
  const alongLine = (start: number, step: number, count: number): void => {
    let sum = 0
    let inside = 0
    for (let index = 0; index < count; index += 1) line[index] = plane[start + index * step] ?? 0
    for (let index = 0; index < Math.min(reach, count); index += 1, inside += 1) sum += line[index] ?? 0
    for (let index = 0; index < count; index += 1) {
      if (index + reach < count) { sum += line[index + reach] ?? 0; inside += 1 }
      if (index - reach - 1 >= 0) { sum -= line[index - reach - 1] ?? 0; inside -= 1 }
      plane[start + index * step] = sum / inside
    }
  }
  for (let row = 0; row < height; row += 1) alongLine(row * width, 1, width)
  acrossRows(plane, width, height, reach)
}

/** Down the picture, a whole row at a time: the memory is read in its own order. */
const acrossRows = (plane: Float32Array, width: number, height: number, reach: number): void => {
  const sums = new Float64Array(width)
  const source = plane.slice()
  let inside = 0
  const addRow = (row: number, sign: 1 | -1): void => {
    if (row < 0 || row >= height) return
    inside += sign
    for (let column = 0, at = row * width; column < width; column += 1, at += 1) sums[column] = (sums[column] ?? 0) + sign * (source[at] ?? 0)
  }
  for (let row = 0; row < reach; row += 1) addRow(row, 1)
  for (let row = 0; row < height; row += 1) {
    addRow(row + reach, 1)
    addRow(row - reach - 1, -1)
    for (let column = 0, at = row * width; column < width; column += 1, at += 1) plane[at] = (sums[column] ?? 0) / inside
  }
}
