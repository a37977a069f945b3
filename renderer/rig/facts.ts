import type { Rig } from '../../shared-logic/rig/rig'
import { formatQuantity } from '../../shared-logic/units/convert'
import type { UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'
import { draftOf, type Draft, type DraftValue } from './draft'
import { rigGroups, type GroupId, type RigField } from './fields'

/** One registered fact, as a person reads it. */
export interface Fact {
  readonly path: string
  readonly label: string
  readonly value: string
}

const sayValue = (field: RigField, value: DraftValue, words: Words, units: UnitSystem): string => {
  const options = words.fieldOptions[field.path]
  if (field.kind === 'quantity' && typeof value === 'number') return formatQuantity(field.quantity, value, units)
  if (typeof value === 'boolean') return value ? words.screens.rig.yes : words.screens.rig.no
  if (typeof value === 'object') {
    const contents = words.fieldOptions['boat.tanks.contents']
    return value.map((tank) => `${contents?.[tank.contents ?? ''] ?? ''} ${tank.capacityM3 === undefined ? '' : formatQuantity('volume', tank.capacityM3, units)}`.trim()).join(', ')
  }
  return options?.[String(value)] ?? String(value)
}

/** What is known of one part of the register. */
export interface FactGroup {
  readonly id: GroupId
  readonly facts: readonly Fact[]
}

/** The facts known of these parts, in the form's order; parts of which nothing is known are left out. */
export const factsOf = (rig: Rig, ids: readonly GroupId[], words: Words, units: UnitSystem): FactGroup[] => {
  const draft = draftOf(rig)
  const factOf = (field: RigField): Fact[] => {
    const value = draft[field.path]
    return value === undefined || field.path === 'name' ? [] : [{ path: field.path, label: words.fields[field.path] ?? field.path, value: sayValue(field, value, words, units) }]
  }
  return rigGroups.filter(({ id }) => ids.includes(id)).map(({ id, fields }) => ({ id, facts: fields.flatMap(factOf) })).filter(({ facts }) => facts.length > 0)
}

const isOpen = (draft: Draft) => (field: RigField): boolean => field.when?.(draft) !== false && draft[field.path] === undefined && field.path !== 'remarks' && field.path !== 'boat.tanks'

/** How many facts could still be registered; those of a boat count only where there is one. */
export const unknownCount = (rig: Rig): number => {
  const draft = draftOf(rig)
  const groups = rigGroups.filter((group) => rig.boat !== undefined || (group.id !== 'boat' && group.id !== 'engine'))
  return groups.flatMap((group) => group.fields).filter(isOpen(draft)).length
}
