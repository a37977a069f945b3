import type { Tank } from '../../shared-logic/rig/boat'
import { rigSchema, sumsFields, type Rig } from '../../shared-logic/rig/rig'
import { rigGroups } from './fields'

/** A tank while it is described; `key` tells rows apart while they come and go. */
export interface TankDraft {
  readonly key: number
  readonly contents?: Tank['contents'] | undefined
  readonly capacityM3?: number | undefined
}

export type DraftValue = string | number | boolean | readonly TankDraft[]

/** The form's content, by dotted path; what is absent is not known. Texts as typed, quantities in SI. */
export type Draft = Readonly<Record<string, DraftValue | undefined>>

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null && !Array.isArray(value)
const isPlain = (value: unknown): value is string | number | boolean => ['string', 'number', 'boolean'].includes(typeof value)

const flatten = (value: Readonly<Record<string, unknown>>, before: string): [string, DraftValue][] =>
  Object.entries(value).flatMap(([name, inner]): [string, DraftValue][] => {
    const path = before === '' ? name : `${before}.${name}`
    if (isGroup(inner)) return flatten(inner, path)
    return isPlain(inner) ? [[path, inner]] : []
  })

/** The register's own part of a rig. */
const registered = (rig: Rig): Readonly<Record<string, unknown>> => Object.fromEntries(Object.entries(rig).filter(([name]) => !sumsFields.some((field) => field === name)))

/** A kept rig as the form shows it. */
export const draftOf = (rig: Rig): Draft => ({
  ...Object.fromEntries(flatten(registered(rig), '')),
  ...(rig.boat?.tanks && { 'boat.tanks': rig.boat.tanks.map((tank, key) => ({ key, ...tank })) }),
})

export const emptyDraft: Draft = {}

const known = (value: DraftValue | undefined): unknown => {
  if (typeof value === 'string') return value.trim() === '' ? undefined : value.trim()
  if (Array.isArray(value)) return value.length === 0 ? undefined : value.map(({ contents, capacityM3 }: TankDraft) => ({ contents, capacityM3 }))
  return value
}

type Tree = { [name: string]: unknown }

const place = (tree: Tree, path: string, value: unknown): void => {
  const names = path.split('.')
  const last = names.pop() ?? path
  let at = tree
  for (const name of names) {
    const next = at[name]
    const inner: Tree = isGroup(next) ? next : {}
    at[name] = inner
    at = inner
  }
  at[last] = value
}

/** The draft as the contract wants it, not yet checked; fields that are not asked are left out. */
export const candidateOf = (draft: Draft): unknown => {
  const tree: Tree = { trailer: {} }
  for (const field of rigGroups.flatMap((group) => group.fields)) {
    const value = field.when?.(draft) === false ? undefined : known(draft[field.path])
    if (value !== undefined) place(tree, field.path, value)
  }
  return tree
}

/** What is in each tank follows its tank: a kept one keeps its key in the form, a new one has none to follow. */
const tanksFollowing = (kept: Rig, draft: Draft): Rig['loading'] => {
  const { loading } = kept
  const rows = draft['boat.tanks']
  if (loading?.tanks === undefined || !Array.isArray(rows)) return loading
  const keptCount = kept.boat?.tanks?.length ?? 0
  const tanks = rows.map(({ key }: TankDraft) => (key < keptCount ? loading.tanks?.[key] : undefined) ?? {})
  return { ...loading, tanks: tanks.some((tank) => Object.keys(tank).length > 0) ? tanks : undefined }
}

/** The edited rig with what the form does not ask, as it was kept: the form never drops a weighing or a strap. */
export const withKept = (edited: Rig, kept: Rig | undefined, draft: Draft): Rig =>
  kept === undefined ? edited : rigSchema.parse({ ...Object.fromEntries(sumsFields.map((field) => [field, kept[field]])), ...edited, loading: tanksFollowing(kept, draft) })

/** The most of a rig that the draft already holds, for the drawing: what cannot be taken yet is left out. */
export const rigSoFar = (draft: Draft): Rig => {
  const named: Draft = { ...draft, name: typeof draft['name'] === 'string' && draft['name'].trim() !== '' ? draft['name'].slice(0, 80) : '…' }
  const first = rigSchema.safeParse(candidateOf(named))
  if (first.success) return first.data
  const bad = first.error.issues.map((issue) => issue.path.join('.'))
  const kept = Object.fromEntries(Object.entries(named).filter(([path]) => !bad.some((wrong) => wrong === path || wrong.startsWith(`${path}.`))))
  const second = rigSchema.safeParse(candidateOf(kept))
  return second.success ? second.data : { name: '…', trailer: {} }
}
