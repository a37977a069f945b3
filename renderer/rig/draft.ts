import type { Tank } from '../../shared-logic/rig/boat'
import { rigSchema, type Rig } from '../../shared-logic/rig/rig'
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

/** A kept rig as the form shows it. */
export const draftOf = (rig: Rig): Draft => ({
  ...Object.fromEntries(flatten(rig, '')),
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
