import type { Rig } from '../../shared-logic/rig/rig'

type Group = Readonly<Record<string, unknown>>
const isGroup = (value: unknown): value is Group => typeof value === 'object' && value !== null && !Array.isArray(value)
const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value)

/** What stands at a dotted path of the rig: 'loading.tanks.0.fill'. */
export const valueAt = (rig: Rig, path: string): unknown =>
  path.split('.').reduce<unknown>((at, name) => (isList(at) ? at[Number(name)] : isGroup(at) ? at[name] : undefined), rig)

const isRow = (name: string | undefined): boolean => name !== undefined && /^\d+$/.test(name)

const placed = (at: unknown, [name, ...rest]: readonly string[], value: unknown): unknown => {
  if (name === undefined) return value
  if (isRow(name)) {
    const list = isList(at) ? at : []
    const row = Number(name)
    return Array.from({ length: Math.max(list.length, row + 1) }, (_, index) => (index === row ? placed(list[index], rest, value) : (list[index] ?? {})))
  }
  const group = isGroup(at) ? at : {}
  const inner = placed(group[name], rest, value)
  return inner === undefined ? Object.fromEntries(Object.entries(group).filter(([key]) => key !== name)) : { ...group, [name]: inner }
}

/** The rig with `value` at the path, not yet checked; `undefined` takes the field away. */
export const withValueAt = (rig: Rig, path: string, value: unknown): unknown => placed(rig, path.split('.'), value)
