type Group = Readonly<Record<string, unknown>>
const isGroup = (value: unknown): value is Group => typeof value === 'object' && value !== null && !Array.isArray(value)
const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value)

/** What stands at a dotted path of the rig: 'loading.tanks.0.fill'. */
export const valueAt = (rig: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((at, name) => (isList(at) ? at[Number(name)] : isGroup(at) ? at[name] : undefined), rig)

const isRow = (name: string | undefined): boolean => name !== undefined && /^\d+$/.test(name)

const without = (group: Group, name: string): Group | undefined => {
  const left = Object.entries(group).filter(([key]) => key !== name)
  return left.length === 0 ? undefined : Object.fromEntries(left)
}

const placed = (at: unknown, [name, ...rest]: readonly string[], value: unknown): unknown => {
  if (name === undefined) return value
  if (isRow(name)) {
    const list = isList(at) ? at : []
    const row = Number(name)
    return Array.from({ length: Math.max(list.length, row + 1) }, (_, index) => (index === row ? (placed(list[index], rest, value) ?? {}) : (list[index] ?? {})))
  }
  const group = isGroup(at) ? at : {}
  const inner = placed(group[name], rest, value)
  return inner === undefined ? without(group, name) : { ...group, [name]: inner }
}

/** The rig with `value` at the path, not yet checked; `undefined` takes the field away, and a group that held nothing else with it. */
export const withValueAt = (rig: unknown, path: string, value: unknown): unknown => placed(rig, path.split('.'), value)

/** The path one step up: 'tieDown.straps.0.boat' of 'tieDown.straps.0.boat.heightM'. */
export const parentOf = (path: string): string => path.slice(0, Math.max(0, path.lastIndexOf('.')))
