/** Rows under one another in columns as wide as their widest cell, two spaces between; the last one runs on. */
export const columns = (rows: readonly (readonly string[])[]): string[] => {
  const widths: number[] = []
  for (const row of rows) row.forEach((cell, index) => (widths[index] = Math.max(widths[index] ?? 0, cell.length)))
  return rows.map((row) => row.map((cell, index) => (index === row.length - 1 ? cell : cell.padEnd(widths[index] ?? 0))).join('  ').trimEnd())
}

/** Fills the gaps of a line of the words. */
export const fill = (line: string, values: Readonly<Record<string, string | number>>): string =>
  line.replaceAll(/\{(\w+)\}/g, (gap, name: string) => String(values[name] ?? gap))
