import { rigSchema, type Rig } from '../../shared-logic/rig/rig'
import { faultsOf } from '../../shared-logic/sums/check-input'
import type { Quantity, UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { sayRefusal } from '../../shared-logic/words/say-refusal'
import { labelOf } from './label-of'
import { parentOf, valueAt, withValueAt } from './rig-paths'
import { sayIssue } from './say-issue'

/** A field as it is changed; its quantity says in which unit a limit is told. */
export interface ChangedField {
  readonly path: string
  readonly quantity?: Quantity | undefined
}

/** What was typed and could not be taken, with its reason: it stays in the field and no number rests on it. */
export interface Held {
  readonly field: ChangedField
  readonly value: unknown
  readonly problem: string
  /** The text itself could not be read; there is no value to try again. */
  readonly isUnread?: true
  /** Nothing is wrong with it: it is kept once its fellows are there too, such as the other wheel of the axle. */
  readonly isWaiting?: boolean
}
export type HeldFields = ReadonlyMap<string, Held>

export interface RigState {
  /** What is kept, or on its way to the desk. */
  readonly rig: Rig
  readonly held: HeldFields
}

/** Strings of the reader, and the day a brake test begun here is dated with. */
export interface Reader {
  readonly words: Words
  readonly units: UnitSystem
  readonly today: string
}

/** Parts of a rig that cannot be without something of their own. */
const begun = (rig: Rig, path: string, today: string): Rig => {
  if (path.startsWith('tieDown.') && rig.tieDown === undefined) return { ...rig, tieDown: { straps: [] } }
  return path.startsWith('brakeTest.') && rig.brakeTest === undefined ? { ...rig, brakeTest: { date: today } } : rig
}

type Tried = { readonly ok: true; readonly rig: Rig } | { readonly ok: false; readonly problem: string; readonly isWaiting?: boolean }

const isInFuture = ({ field, value }: Held, today: string): boolean => field.path.endsWith('.date') && typeof value === 'string' && value > today

/** Values into the rig, all at once: refused where a field may not hold its own, or where it cannot be right beside the others. */
const tryValues = (rig: Rig, changes: readonly Held[], { words, units, today }: Reader): Tried => {
  const [first] = changes
  const said = words.screens.sums.problems
  const late = changes.find((change) => isInFuture(change, today))
  if (late) return { ok: false, problem: say(said.future, { field: labelOf(words, late.field.path) }, units) }
  const wanted = changes.reduce<unknown>((so, { field, value }) => withValueAt(so, field.path, value), first ? begun(rig, first.field.path, today) : rig)
  const parsed = rigSchema.safeParse(wanted)
  if (!parsed.success) {
    const own = parsed.error.issues.find(({ path }) => changes.some(({ field }) => field.path === path.join('.')))
    const issue = own ?? parsed.error.issues[0]
    const at = issue?.path.join('.') ?? ''
    if (issue && valueAt(wanted, at) === undefined) return { ok: false, isWaiting: true, problem: say(said.missing, { field: labelOf(words, at) }, units) }
    return { ok: false, problem: sayIssue(words, issue, { label: labelOf(words, at), quantity: first?.field.quantity }, units) }
  }
  const before = new Set(faultsOf(rig).map(({ code, field }) => `${code} ${field}`))
  const fault = faultsOf(parsed.data).find(({ code, field }) => !before.has(`${code} ${field}`))
  return fault ? { ok: false, problem: sayRefusal(words, fault), isWaiting: fault.code === 'sums.half-missing' } : { ok: true, rig: parsed.data }
}

const fellowsOf = (open: HeldFields, path: string): Held[] => [...open.values()].filter(({ field, isUnread }) => isUnread !== true && parentOf(field.path) === parentOf(path))

/** With fellows, the sentence names what all of them still lack. */
const heldBy = (each: Held, alone: Tried, together: Tried): Held => {
  const told = !together.ok && together.isWaiting === true ? together : alone
  return told.ok ? each : { ...each, problem: told.problem, isWaiting: told.isWaiting === true }
}

/** Takes one change, and then again what was held before: a refused stem may be right once the boat is longer, one end of a strap once all of it is told. */
export const takeChange = ({ rig, held }: RigState, change: Held, reader: Reader): RigState => {
  const open = new Map([...held, [change.field.path, change]])
  let taken = rig
  for (let before = -1; before !== open.size;) {
    before = open.size
    for (const [path, each] of open) {
      if (each.isUnread) continue
      const alone = tryValues(taken, [each], reader)
      const fellows = !alone.ok && alone.isWaiting === true ? fellowsOf(open, path) : [each]
      const tried = fellows.length > 1 ? tryValues(taken, fellows, reader) : alone
      if (tried.ok) {
        taken = tried.rig
        for (const { field } of fellows) open.delete(field.path)
      } else open.set(path, heldBy(each, alone, tried))
    }
  }
  return { rig: taken, held: open }
}

/** The rig without what stands at the path, or without the group it belongs to where that cannot be without it; a row of a list stays as it was kept. */
const without = (rig: Rig, path: string): Rig => {
  for (let at = path; at.includes('.') && !/\.\d+$/.test(at); at = parentOf(at)) {
    const parsed = rigSchema.safeParse(withValueAt(rig, at, undefined))
    if (parsed.success) return parsed.data
  }
  return rig
}

/** The rig for the sums: without what is held, so that no number rests on it. */
export const rigForSums = ({ rig, held }: RigState): Rig => [...held.keys()].reduce(without, rig)
